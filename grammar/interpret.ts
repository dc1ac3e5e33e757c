import { type Atom, problem, type Word } from './atoms.ts';
import { descriptionProblems } from './describe.ts';
import { emptyQuantity } from './empty-quantity.ts';
import { fits, isLengthLike, isMilitaryTime } from './fits.ts';
import { nearWords } from './near.ts';
import { nameNumbers } from './numbered-names.ts';
import { type RawLine, readRawLine } from './raw-line.ts';
import { remembered } from './remembered.ts';
import type { Columns } from './span.ts';
import { type Row, rowById, type Slot } from './table.ts';
import { type Description, type Pieces, readDescription, writeDescription } from './terms/description.ts';
import { matchAt, nearest, normalise } from './terms/index.ts';
import { doubtsWord, type Piece } from './terms/pieces.ts';
import type { ListId, Term } from './terms/term.ts';
import type { DescriptionValue, Doubt, Interval, Item, Problem, Product, Quantity, Value } from './tree.ts';
import { units } from './units.ts';

/** What a line says, by the row of the table that reads it. */
export interface Interpreted {
  readonly depths: Interval | Quantity | null;
  readonly items: readonly Item[];
  readonly problems: readonly Problem[];
}

const unitNames = units.map((unit) => unit.id);
const unitsInSmall = new Map(unitNames.map((id) => [id.toLowerCase(), id]));

interface Label extends Columns {
  readonly slot: Slot;
  readonly length: number;
  readonly term: Term | null;
  readonly written: string;
}

const isWord = (atom: Atom | undefined): atom is Word => atom?.kind === 'word';

const isValue = (atom: Atom): atom is Exclude<Atom, { kind: 'word' | 'mark' | 'symbol' | 'bad' }> =>
  atom.kind !== 'word' && atom.kind !== 'mark' && atom.kind !== 'symbol' && atom.kind !== 'bad';

const between = (a: Columns, b: Columns): Columns => ({ start: a.start, end: b.end });

const bottomQuantity = (at: Word): Quantity => ({ ...emptyQuantity(at), td: true, figure: at.text });

const isBottom = (atom: Atom | undefined): atom is Word => isWord(atom) && atom.text.toLowerCase() === 'td';

interface LabelEntry {
  readonly words: readonly string[];
  readonly slot: Slot;
}

/** The labels of a row by their first word, the longest first. */
const labelsOf = remembered((row: Row): ReadonlyMap<string, readonly LabelEntry[]> => {
  const index = new Map<string, LabelEntry[]>();
  for (const slot of row.slots)
    for (const label of slot.labels) {
      const words = normalise(label).split(' ');
      const first = words[0] ?? '';
      index.set(
        first,
        [...(index.get(first) ?? []), { words, slot }].sort((a, b) => b.words.length - a.words.length),
      );
    }
  return index;
});

/** The lists whose terms a row takes. */
export const listsOf = remembered((row: Row): readonly ListId[] => [
  ...new Set(row.slots.flatMap((slot) => slot.accepts.flatMap((a) => (a.kind === 'terms' ? a.lists : [])))),
]);

const hasList = (slot: Slot, list: ListId): boolean =>
  slot.accepts.some((each) => each.kind === 'terms' && each.lists.includes(list));

const accepts = (slot: Slot, kind: Slot['accepts'][number]['kind']): boolean =>
  slot.accepts.some((each) => each.kind === kind);

/** True where the number behind a depth may be the row's first value, as in `7.2 254` of a hole. */
const expectsBareNumber = (row: Row): boolean => row.slots.some((slot) => slot.expected && slot.bare !== null);

/** A run of words, with glued hyphens between them as blanks. */
interface WordRun {
  readonly words: readonly string[];
  /** The index of the atom that each word is. */
  readonly atoms: readonly number[];
}

/** Standards and grades of steel pipe that no other word looks like; and what may stand behind them. */
const gradeWord = /^(?:S?A(?:53|106|139|252|500|589)[A-E]?|API|X(?:42|46|52|56|60|65|70)|[HJKNLP](?:40|55|80|110))$/i;
const gradeTail = /^(?:gr\.?|grade|5L|5CT|[A-E]|X\d\d|[HJKNLP]\d\d\d?)$/i;

class LineReader {
  private readonly items: Item[] = [];
  private readonly problems: Problem[] = [];
  private readonly filled = new Map<string, Columns>();
  private readonly unknowns: Columns[] = [];
  private depths: Interval | Quantity | null = null;
  private at = 0;

  constructor(
    private readonly row: Row,
    private readonly raw: RawLine,
    private readonly atoms: readonly Atom[],
  ) {}

  read(): Interpreted {
    this.readDepths();
    while (this.at < this.atoms.length) this.readOne();
    this.fillUnknowns();
    this.weighAll();
    if (this.row.depths !== 'none' && this.row.depths !== 'optional' && this.depths === null) this.missingDepth();
    return { depths: this.depths, items: this.items, problems: this.problems };
  }

  private readDepths(): void {
    const { depths } = this.row;
    const first = this.atoms[0];
    if (depths === 'none' || !first) return;
    if (isBottom(first) && depths !== 'interval') {
      this.takeDepths(bottomQuantity(first), 1);
      return;
    }
    if (first.kind === 'unknown' && depths !== 'optional') {
      this.takeDepths(emptyQuantity(first), 1);
      return;
    }
    if (first.kind === 'interval') {
      if (depths === 'depth')
        this.problems.push(problem('unexpected-depth', first, this.written(first), [], { wanted: 'depth' }));
      this.takeDepths(first, 1);
      return;
    }
    if (first.kind !== 'quantity' || !isLengthLike(first)) return;
    if (depths === 'interval') this.readLooseInterval(first);
    else this.takeDepths(first, 1);
  }

  /** `0 12 clay`: two depths with no dash between them. */
  private readLooseInterval(first: Quantity): void {
    const second = this.atoms[1];
    const third = this.atoms[2];
    const pairs = this.row.where === 'depth-line' && second?.kind === 'quantity' && isLengthLike(second);
    const enough = !expectsBareNumber(this.row) || (third !== undefined && third.kind === 'quantity');
    if (this.atoms.some((each) => each.kind === 'bad')) {
      this.takeDepths(first, 1);
      return;
    }
    if (!pairs || !enough) {
      const meant = [`- ${this.written(first)}`];
      this.problems.push(
        problem('missing-depth', first, this.written(first), this.row.where === 'depth-line' ? meant : [], {
          wanted: 'interval',
        }),
      );
      this.takeDepths(first, 1);
      return;
    }
    const at = between(first, second);
    this.problems.push(
      problem('interval-without-dash', at, this.written(at), [`${this.written(first)} - ${this.written(second)}`]),
    );
    const from = first.unit === null ? { ...first, unit: second.unit } : first;
    this.takeDepths({ kind: 'interval', from, to: second, dash: { start: first.end, end: first.end }, ...at }, 2);
  }

  private takeDepths(value: Interval | Quantity, length: number): void {
    this.at = length;
    this.depths = this.withDatum(value);
  }

  /** `5.65 toc`: a level with its datum. */
  private withDatum<T extends Interval | Quantity>(value: T): T {
    const next = this.atoms[this.at];
    if (!isWord(next)) return value;
    const datum = next.text.toLowerCase();
    if (datum !== 'toc' && datum !== 'bgs') return value;
    if (value.kind === 'interval') return value;
    this.at += 1;
    return { ...value, datum, end: next.end };
  }

  private maybeLevel(slot: Slot, value: Value): Value {
    return value.kind === 'quantity' && slot.bare === 'depth' ? this.withDatum(value) : value;
  }

  /** Silent where a depth is there but cannot be read, which has been said. */
  private missingDepth(): void {
    if (this.atoms.some((each) => each.kind === 'bad')) return;
    const interval = this.atoms.find((each) => each.kind === 'interval');
    const at = interval ?? this.raw.first ?? this.whole();
    const wanted = this.row.depths === 'interval' ? 'interval' : 'depth';
    this.problems.push(problem('missing-depth', at, this.written(at), [], { wanted }));
  }

  private whole(): Columns {
    const [first, last] = [this.raw.atoms[0], this.raw.atoms[this.raw.atoms.length - 1]];
    return { start: first?.start ?? 0, end: last?.end ?? 0 };
  }

  private readOne(): void {
    const atom = this.atoms[this.at];
    if (!atom) return;
    if (atom.kind === 'bad') {
      this.problems.push(atom.problem);
      this.at += 1;
    } else if (atom.kind === 'mark') {
      const label = atom.mark === 'at' ? this.labelAt() : null;
      if (!label || !this.readLabelled(label)) this.at += 1;
    } else if (atom.kind === 'symbol') {
      this.problems.push(problem('no-place', atom, this.written(atom)));
      this.at += 1;
    } else if (atom.kind === 'word') this.readWord(atom);
    else this.readValue(atom);
  }

  private readWord(atom: Word): void {
    const label = this.labelAt();
    if (label && this.readLabelled(label)) return;
    const run = this.runAt(this.at);
    const match = matchAt(run.words, 0, listsOf(this.row));
    if (match) {
      const slot = this.slotForTerm(match.sense.list);
      const last = this.atoms[run.atoms[match.length - 1] ?? this.at] ?? atom;
      if (slot) {
        this.add(slot, { kind: 'term', list: match.sense.list, term: match.sense.term, ...between(atom, last) }, null);
      } else {
        const at = between(atom, last);
        this.problems.push(problem('second-value', at, this.written(at), [], { list: match.sense.list }));
      }
      this.at = (run.atoms[match.length - 1] ?? this.at) + 1;
      return;
    }
    if (!label && this.readGrade(atom)) return;
    const text = this.row.slots.find(
      (slot) => accepts(slot, 'text') && slot.labelled === 'never' && !this.filled.has(slot.slot),
    );
    if (text) {
      this.readText(text, null);
      return;
    }
    if (label)
      this.problems.push(
        problem('missing-value', label, label.written, [], { slot: label.slot.slot, doc: label.slot.doc }),
      );
    else this.unknownWord(atom);
    this.at += label?.length ?? 1;
  }

  /** `A53 B`: a grade of pipe says by itself what it is. */
  private readGrade(atom: Word): boolean {
    const slot = this.row.slots.find((each) => each.slot === 'grade' && !this.filled.has(each.slot));
    if (!slot || !gradeWord.test(atom.text)) return false;
    let last = atom;
    this.at += 1;
    for (let next = this.atoms[this.at]; isWord(next) && gradeTail.test(next.text); next = this.atoms[this.at]) {
      last = next;
      this.at += 1;
    }
    const at = between(atom, last);
    this.add(slot, { kind: 'text', text: this.written(at), ...at }, null);
    return true;
  }

  private unknownWord(atom: Word): void {
    const near = nearest(atom.text, listsOf(this.row), 3).map((each) => each.term.name);
    this.problems.push(problem('unknown-term', atom, this.raw.text.slice(atom.start, atom.end), near));
  }

  /** The words from here on, across glued hyphens. */
  private runAt(from: number): WordRun {
    const words: string[] = [];
    const atoms: number[] = [];
    for (let k = from; k < this.atoms.length; k++) {
      const atom = this.atoms[k];
      if (isWord(atom)) {
        words.push(atom.text.replace(/\.$/, ''));
        atoms.push(k);
      } else if (!this.isHyphen(k)) break;
    }
    return { words, atoms };
  }

  private isHyphen(k: number): boolean {
    const [before, dash, after] = [this.atoms[k - 1], this.atoms[k], this.atoms[k + 1]];
    return (
      dash?.kind === 'mark' &&
      dash.mark === 'dash' &&
      isWord(before) &&
      isWord(after) &&
      before.end === dash.start &&
      dash.end === after.start
    );
  }

  private labelAt(): Label | null {
    const first = this.atoms[this.at];
    if (!first) return null;
    const run = isWord(first) ? this.runAt(this.at) : { words: [this.written(first)], atoms: [this.at] };
    const head = normalise(run.words[0] ?? '');
    for (const { words, slot } of labelsOf(this.row).get(head) ?? []) {
      if (!words.every((word, k) => word === normalise(run.words[k] ?? ''))) continue;
      if (!slot.many && this.filled.has(slot.slot)) continue;
      return this.label(slot, run, words.length, null);
    }
    for (const slot of this.row.slots) {
      const match = slot.labelList ? matchAt(run.words, 0, [slot.labelList]) : null;
      if (match) return this.label(slot, run, match.length, match.sense.term);
    }
    return null;
  }

  private label(slot: Slot, run: WordRun, words: number, term: Term | null): Label {
    const last = run.atoms[words - 1] ?? this.at;
    const at = between(this.atoms[this.at] ?? { start: 0, end: 0 }, this.atoms[last] ?? { start: 0, end: 0 });
    return { slot, length: last - this.at + 1, term, written: this.written(at), ...at };
  }

  /** Reads what follows a label; false where nothing that fits does. */
  private readLabelled(label: Label): boolean {
    const { slot } = label;
    const start = this.at;
    this.at += label.length;
    if (accepts(slot, 'text')) {
      if (this.at < this.atoms.length && this.atoms[this.at]?.kind !== 'mark') {
        this.readText(slot, label);
        return true;
      }
      this.at = start;
      return false;
    }
    const next = this.atoms[this.at];
    if (next?.kind === 'unknown') {
      this.at += 1;
      this.add(slot, emptyQuantity(next), label);
      return true;
    }
    if (next && isValue(next)) {
      const value = fits(slot, next);
      if (value) {
        this.at += 1;
        this.add(slot, this.maybeLevel(slot, value), label);
        return true;
      }
    }
    if (accepts(slot, 'flag')) {
      this.add(slot, { kind: 'flag', start: label.start, end: label.end }, null);
      return true;
    }
    this.at = start;
    return false;
  }

  /** The words up to the next comma, kept as written. */
  private readText(slot: Slot, label: Label | null): void {
    const first = this.atoms[this.at];
    if (!first) return;
    let last = first;
    while (this.at < this.atoms.length) {
      const atom = this.atoms[this.at];
      if (!atom || (atom.kind === 'mark' && atom.mark === 'comma')) break;
      last = atom;
      this.at += 1;
    }
    const at = between(first, last);
    const text = first.kind === 'text' && first === last ? first.text : this.raw.text.slice(at.start, at.end);
    this.add(slot, { kind: 'text', text, ...at }, label);
  }

  private slotForTerm(list: ListId): Slot | null {
    return this.row.slots.find((slot) => hasList(slot, list) && (slot.many || !this.filled.has(slot.slot))) ?? null;
  }

  private readValue(atom: Exclude<Atom, Word | { kind: 'mark' | 'symbol' | 'bad' }>): void {
    if (atom.kind === 'unknown') {
      this.unknowns.push(atom);
      this.at += 1;
      return;
    }
    if (this.takesDepths(atom)) return;
    if (this.hasBrokenUnit(atom)) return;
    const after = this.labelAfter(atom);
    if (after) return;
    const list = this.row.slots.find((slot) => accepts(slot, 'list'));
    if (list && (atom.kind === 'quantity' || atom.kind === 'product')) {
      this.readList(list);
      return;
    }
    if (this.row.id === 'test.line' && atom.kind === 'quantity' && isMilitaryTime(atom)) {
      const { figure } = atom;
      this.at += 1;
      this.problems.push(problem('elapsed-time-form', atom, figure, [`${figure.slice(0, 2)}:${figure.slice(2)}`]));
      this.filled.set('elapsed', atom);
      return;
    }
    const open = (slot: Slot): boolean => slot.labelled !== 'must' && (slot.many || !this.filled.has(slot.slot));
    for (const slot of this.row.slots) {
      if (!open(slot)) continue;
      const value = fits(slot, atom);
      if (!value) continue;
      this.at += 1;
      this.add(slot, this.maybeLevel(slot, value), null);
      return;
    }
    this.at += 1;
    if (!this.hasUnknownUnit(atom)) this.noPlace(atom);
  }

  /** `1 L/mn`: a unit that goes on behind a stroke, to no unit that is known. */
  private hasBrokenUnit(atom: Atom): boolean {
    const [stroke, word] = [this.atoms[this.at + 1], this.atoms[this.at + 2]];
    if (atom.kind !== 'quantity' || !atom.unitAt || !isWord(word) || stroke?.kind !== 'mark') return false;
    if (this.written(stroke) !== '/' || stroke.start !== atom.end || word.start !== stroke.end) return false;
    const at = between(atom.unitAt, word);
    const written = this.written(at);
    const near = nearWords(written.toLowerCase(), [...unitsInSmall.keys()], 1).flatMap(
      (small) => unitsInSmall.get(small) ?? [],
    );
    const number = this.raw.text.slice(atom.start, atom.unitAt.start).trim();
    this.problems.push(problem('unknown-unit', at, written, near.slice(0, 3), { number }));
    this.at += 3;
    return true;
  }

  /** `21 mn` where a bare number has no place: the word after it was meant for its unit. */
  private hasUnknownUnit(atom: Atom): boolean {
    const word = this.atoms[this.at];
    if (atom.kind !== 'quantity' || atom.unit !== null || !isWord(word)) return false;
    if (this.labelAt() || matchAt(this.runAt(this.at).words, 0, listsOf(this.row))) return false;
    const near = nearWords(word.text.toLowerCase(), unitNames, 1).slice(0, 3);
    this.problems.push(problem('unknown-unit', word, word.text, near, { number: this.written(atom) }));
    this.at += 1;
    return true;
  }

  /** An interval that stands later on the line still is its depths, where they are missing. */
  private takesDepths(atom: Atom): boolean {
    if (this.depths !== null || atom.kind !== 'interval' || atom.from === null) return false;
    if (this.row.depths !== 'interval' && this.row.depths !== 'either') return false;
    this.depths = atom;
    this.at += 1;
    return true;
  }

  private labelAfter(atom: Atom): boolean {
    const following = this.atoms[this.at + 1];
    if (!isWord(following) || !isValue(atom)) return false;
    const word = normalise(following.text);
    const slot = this.row.slots.find(
      (each) => each.labelAfter && each.labels.includes(word) && !this.filled.has(each.slot),
    );
    const value = slot ? fits(slot, atom) : null;
    if (!slot || !value) return false;
    const label = { slot, length: 1, term: null, written: following.text, start: following.start, end: following.end };
    this.at += 2;
    this.add(slot, value, label);
    return true;
  }

  private readList(slot: Slot): void {
    const values: (Quantity | Product)[] = [];
    const first = this.atoms[this.at];
    while (this.at < this.atoms.length) {
      const atom = this.atoms[this.at];
      if (atom?.kind === 'mark' && atom.mark === 'comma') {
        this.at += 1;
        continue;
      }
      const value = atom && isValue(atom) ? fits(slot, atom) : null;
      const unknown = atom?.kind === 'unknown' ? emptyQuantity(atom) : null;
      if (value?.kind === 'quantity' || value?.kind === 'product') values.push(value);
      else if (unknown) values.push(unknown);
      else break;
      this.at += 1;
    }
    const last = values[values.length - 1];
    if (first && last) this.add(slot, { kind: 'list', values, ...between(first, last) }, null);
    else {
      this.at += 1;
      if (first) this.noPlace(first);
    }
  }

  /** A value that no slot takes: told apart by why. */
  private noPlace(atom: Atom): void {
    const written = this.written(atom);
    if (atom.kind === 'hash-number') {
      this.problems.push(problem('slot-word-missing', atom, written, [`slot ${written}`]));
      return;
    }
    if (atom.kind === 'grading') {
      this.problems.push(problem('bad-ratio', atom, written));
      return;
    }
    if (atom.kind === 'moment' && this.row.id === 'test.line') {
      const [hours = '', minutes = ''] = written.split(':');
      this.filled.set('elapsed', atom);
      this.problems.push(
        problem(
          'elapsed-time-form',
          atom,
          written,
          [`${hours}h${minutes}`, `0${written}`, `${hours} min ${minutes} s`].slice(0, 2),
        ),
      );
      return;
    }
    const filled = this.row.slots.find((slot) => this.filled.has(slot.slot) && isValue(atom) && fits(slot, atom));
    if (filled) {
      this.problems.push(problem('second-value', atom, written, [], { slot: filled.slot, doc: filled.doc }));
      return;
    }
    const labelled = this.row.slots.filter((slot) => slot.labelled === 'must' && isValue(atom) && fits(slot, atom));
    if (labelled.length > 0) {
      const meant = labelled.flatMap((slot) => slot.labels.slice(0, 1)).map((label) => `${label} ${written}`);
      this.problems.push(
        problem('missing-label', atom, written, meant, {
          labels: labelled.flatMap((s) => s.labels.slice(0, 1)).join(', '),
        }),
      );
      return;
    }
    const measured = atom.kind === 'quantity' || atom.kind === 'product' || atom.kind === 'interval';
    const unit = atom.kind === 'quantity' ? atom.unit : null;
    if (measured && unit)
      this.problems.push(problem('wrong-kind', atom, written, [], { dimension: unit.dimension, unit: unit.id }));
    else this.problems.push(problem('no-place', atom, written));
  }

  /** `400 kg` where no bags are counted is no mass of one bag, but of all that was placed. */
  private weighAll(): void {
    if (!this.filled.has('bag-mass') || this.filled.has('bags') || this.filled.has('mass')) return;
    const at = this.items.findIndex(({ slot }) => slot === 'bag-mass');
    const item = this.items[at];
    if (item) this.items[at] = { ...item, slot: 'mass' };
  }

  private fillUnknowns(): void {
    for (const at of this.unknowns) {
      const slot = this.row.slots.find((each) => each.expected && !this.filled.has(each.slot));
      if (slot) this.add(slot, { kind: 'unknown', ...at }, null);
      else this.problems.push(problem('no-place', at, '?'));
    }
  }

  private add(slot: Slot, value: Value, label: Label | null): void {
    const start = Math.min(label?.start ?? value.start, value.start);
    const end = Math.max(label?.end ?? value.end, value.end);
    this.filled.set(slot.slot, { start, end });
    const written = label ? { start: label.start, end: label.end, written: label.written, term: label.term } : null;
    this.items.push({ slot: slot.slot, label: written, value, start, end });
  }

  private written(at: Columns): string {
    return this.raw.text.slice(at.start, at.end);
  }
}

const pieceKind = (atom: Atom): Piece['kind'] | null => {
  if (atom.kind === 'word') return 'word';
  if (atom.kind === 'text') return 'name';
  if (atom.kind === 'symbol') return 'symbol';
  if (atom.kind === 'unknown') return 'doubt';
  if (atom.kind !== 'mark') return null;
  if (atom.mark === 'bracket') return 'comma';
  return atom.mark === 'other' || atom.mark === 'at' ? null : atom.mark;
};

const isClassSymbol = (text: string): boolean =>
  /^[A-Z]{2}(-[A-Z]{2})?$/.test(text) && matchAt([text], 0, ['class-symbol']) !== null;

/** The words of a description as pieces; a class symbol counts in capitals on a line that also has small letters. */
function piecesOf(raw: RawLine, atoms: readonly Atom[]): Piece[] {
  const smallLetters = /[a-z]/.test(raw.plain);
  const pieces: Piece[] = [];
  let last = -1;
  for (const atom of atoms) {
    const kind = pieceKind(atom);
    if (kind === null) continue;
    const text = atom.kind === 'symbol' ? atom.text : raw.text.slice(atom.start, atom.end);
    const symbol = kind === 'word' && smallLetters && isClassSymbol(text);
    pieces.push({ kind: symbol ? 'symbol' : kind, text, start: atom.start, end: atom.end, glued: last === atom.start });
    last = atom.end;
  }
  return pieces;
}

const isMeasure = (atom: Atom | undefined): boolean => atom?.kind === 'quantity' || atom?.kind === 'unknown';

/** The number of atoms of a label that stands before a value; 0 where none does. */
function labelLength(row: Row, raw: RawLine, atoms: readonly Atom[], from: number): number {
  const textOf = (atom: Atom | undefined): string => (atom ? normalise(raw.plain.slice(atom.start, atom.end)) : '');
  const first = atoms[from];
  const entries = labelsOf(row).get(isWord(first) ? normalise(first.text) : textOf(first));
  if (!entries) return 0;
  const found = entries.find(
    ({ words }) => words.every((word, k) => word === textOf(atoms[from + k])) && isMeasure(atoms[from + words.length]),
  );
  return found?.words.length ?? 0;
}

const isComma = (atom: Atom): boolean => atom.kind === 'mark' && atom.mark === 'comma';

const saysSomething = ({ kind }: Atom): boolean => kind === 'word' || kind === 'text' || kind === 'symbol';

/** Takes the description out of a strata line's atoms; what is left are its values and their labels. */
function splitDescription(row: Row, raw: RawLine, atoms: readonly Atom[]): { described: Atom[]; rest: Atom[] } {
  const described: Atom[] = [];
  const rest: Atom[] = [];
  for (let k = 0; k < atoms.length; k++) {
    const atom = atoms[k];
    if (!atom) continue;
    const words = isComma(atom) ? 0 : labelLength(row, raw, atoms, k);
    if (words > 0) {
      rest.push(...atoms.slice(k, k + words + 1));
      k += words;
    } else if (pieceKind(atom) === null || (atom.kind === 'unknown' && k === 0)) rest.push(atom);
    else described.push(atom);
  }
  if (described.some(saysSomething)) return { described, rest };
  return { described: [], rest: atoms.filter((atom) => atom.kind === 'unknown' || rest.includes(atom)) };
}

/** The pieces of a strata line's description, read from its text. */
class WrittenPieces implements Pieces {
  readonly #text: string;
  readonly #from: number;

  constructor(text: string, from: number) {
    this.#text = text;
    this.#from = from;
  }

  get pieces(): readonly Piece[] {
    return strataParts(rowById('strata.line'), readRawLine(this.#text), this.#from).pieces;
  }
}

/** A description in its slot; its long form is written when someone asks for it. */
class ReadDescriptionValue implements DescriptionValue {
  readonly kind = 'description';
  readonly description: Description;
  readonly doubts: readonly Doubt[];
  readonly start: number;
  readonly end: number;
  readonly #written: Pieces;

  constructor(description: Description, written: Pieces, doubts: readonly Doubt[], { start, end }: Columns) {
    this.description = description;
    this.doubts = doubts;
    this.#written = written;
    this.start = start;
    this.end = end;
  }

  get long(): string {
    return writeDescription(this.description, this.#written.pieces);
  }
}

const noDoubts: readonly Doubt[] = [];

function doubtsOf(pieces: readonly Piece[]): readonly Doubt[] {
  if (pieces.every(({ kind }) => kind !== 'doubt')) return noDoubts;
  return pieces.flatMap(({ kind, start, end }, at): Doubt[] =>
    kind === 'doubt' ? [{ about: doubtsWord(pieces, at) ? 'word' : 'more', start, end }] : [],
  );
}

/** A layer has most often nothing beside its depths and its description. */
function onlyDepths(rest: readonly Atom[]): Interpreted | null {
  const [first] = rest;
  return rest.length === 1 && first?.kind === 'interval' ? { depths: first, items: [], problems: [] } : null;
}

/** A layer's line taken apart: the pieces of its description, and its values with their labels. */
function strataParts(row: Row, raw: RawLine, from: number): { pieces: readonly Piece[]; rest: readonly Atom[] } {
  const { described, rest } = splitDescription(row, raw, nameNumbers(raw.text, splitGlued(raw.atoms.slice(from))));
  return { pieces: piecesOf(raw, described), rest };
}

function interpretStrata(row: Row, raw: RawLine, from: number): Interpreted {
  const { pieces, rest } = strataParts(row, raw, from);
  const interpreted = onlyDepths(rest) ?? new LineReader(row, raw, rest).read();
  const { problems } = interpreted;
  const [first, last] = [pieces.find((p) => p.kind !== 'comma'), pieces.findLast((p) => p.kind !== 'comma')];
  if (!first || !last) return interpreted;
  const written = new WrittenPieces(raw.text, from);
  const description = readDescription(pieces, written);
  const at = between(first, last);
  const value = new ReadDescriptionValue(description, written, doubtsOf(pieces), at);
  const item: Item = { slot: 'description', label: null, value, ...at };
  const others = interpreted.items.filter((each) => each.slot !== 'description');
  return {
    depths: interpreted.depths,
    items: [item, ...others],
    problems: description.unknown.length === 0 ? problems : [...problems, ...descriptionProblems(description)],
  };
}

/** The words `sch40` and `sdr26` as their label and number; a `+` between two flushes stays a mark. */
const glued = /^(sch|sdr|dr)(\d+(?:\.\d+)?)$/i;

function splitGlued(atoms: readonly Atom[]): readonly Atom[] {
  if (!atoms.some((atom) => atom.kind === 'word' && glued.test(atom.text))) return atoms;
  return atoms.flatMap((atom): Atom[] => {
    const found = atom.kind === 'word' ? glued.exec(atom.text) : null;
    if (!found || atom.kind !== 'word') return [atom];
    const [, label = '', figure = ''] = found;
    const middle = atom.start + label.length;
    return [
      { kind: 'word', text: label, start: atom.start, end: middle },
      {
        ...emptyQuantity({ start: middle, end: atom.end }),
        number: Number(figure),
        figure,
        decimals: figure.split('.')[1]?.length ?? 0,
      },
    ];
  });
}

/** `1200 bucket auger`: a word that would count bags, and begins a term of the line. */
function splitCounts(row: Row, raw: RawLine, atoms: readonly Atom[]): readonly Atom[] {
  if (!atoms.some((atom) => atom.kind === 'quantity' && atom.unit?.dimension === 'count')) return atoms;
  return atoms.flatMap((atom, at): Atom[] => {
    const next = atoms[at + 1];
    if (atom.kind !== 'quantity' || atom.unit?.dimension !== 'count' || !atom.unitAt || !isWord(next)) return [atom];
    const { start, end } = atom.unitAt;
    const text = raw.text.slice(start, end);
    if ((matchAt([text, next.text], 0, listsOf(row))?.length ?? 0) < 2) return [atom];
    const number: Quantity = {
      ...atom,
      unit: null,
      unitAt: null,
      end: atom.start + raw.text.slice(atom.start, start).trimEnd().length,
    };
    return [number, { kind: 'word', text, start, end }];
  });
}

/** Reads the atoms of a line, from `from` on, by a row of the table. */
export function interpret(row: Row, raw: RawLine, from: number): Interpreted {
  if (row.id === 'strata.line') return interpretStrata(row, raw, from);
  return new LineReader(row, raw, splitCounts(row, raw, splitGlued(raw.atoms.slice(from)))).read();
}
