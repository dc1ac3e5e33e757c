import { type Columns, type Span, spanAt } from '../../grammar/span.ts';
import { type Accepts, type Row, type Slot, strings } from '../../grammar/table.ts';
import type { Line } from '../../grammar/tree.ts';
import { unitById } from '../../grammar/units.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Edit } from '../rules/rule.ts';
import { bodyRowOf } from './amounts.ts';
import { homeUnits } from './home-units.ts';
import { placeInside } from './position.ts';

/** A piece that was put into a line for one item, and that nobody has written over yet. */
export interface Offered extends Columns {
  readonly slot: string;
}

/** Where the cursor goes for the next item that a line lacks, and what is put in for it. */
export interface NextItem {
  readonly edits: readonly Edit[];
  /** What is selected once the edits are made. */
  readonly select: Span;
  /** True where terms are waited for, so that they may be shown. */
  readonly suggest: boolean;
  readonly offered: Offered | null;
}

/** What is most often said of a thing, in the order in which it is said, beside what the table expects of every line. */
const usual: Readonly<Record<string, readonly string[]>> = {
  'hole.line': ['diameter', 'method'],
  drilling: ['flush', 'air-rate', 'pressure', 'pipe'],
  'drilling.line': ['time', 'flush'],
  casing: ['material', 'size', 'joint'],
  liner: ['material', 'size', 'joint'],
  screen: ['material', 'size', 'slot'],
  grout: ['material', 'volume', 'bags', 'water-cement', 'placement', 'placed'],
  seal: ['material', 'volume', 'bags', 'placement', 'placed'],
  pack: ['grading', 'material', 'volume', 'bags'],
  'abandonment.line': ['material', 'volume', 'bags', 'placement'],
  'water.line': ['kind', 'rate'],
  level: ['date'],
  test: ['method', 'rate', 'intake', 'start'],
  disinfection: ['strength', 'contact', 'date'],
  development: ['method', 'time', 'result', 'date'],
  pump: ['kind', 'power', 'set'],
  flowing: ['rate', 'shut-in', 'control', 'date'],
  hydrofracture: ['pressure', 'before', 'after'],
  cap: ['kind'],
  shoe: ['kind'],
};

const slotsAskedFor = (row: Row): readonly Slot[] => {
  const names = usual[row.id] ?? row.slots.filter(({ expected }) => expected).map(({ slot }) => slot);
  return names.flatMap((name) => row.slots.filter(({ slot }) => slot === name));
};

/** What a line still lacks of what is asked of it, in the order in which it is said. */
export const lackedBy = (line: Line, row: Row, offered: Offered | null): readonly Slot[] => {
  const asked = slotsAskedFor(row);
  const from = asked.findIndex(({ slot }) => slot === offered?.slot) + 1;
  return asked.slice(from).filter(({ slot }) => !line.items.some((item) => item.slot === slot));
};

interface Piece {
  readonly text: string;
  /** What is written over, within the text. */
  readonly open: Columns;
  readonly suggest: boolean;
}

const pieceOf = (before: string, question: string, after: string, suggest: boolean): Piece => ({
  text: before + question + after,
  open: { start: before.length, end: before.length + question.length },
  suggest,
});

const dimensionOf = (accepts: readonly Accepts[]): Accepts['kind'] | null => accepts[0]?.kind ?? null;

/** The unit in which a thing is most often given, in metric files and in those of feet, where it is not the first of its kind. */
const commonUnits: Readonly<Record<string, readonly [string, string]>> = {
  rate: ['L/min', 'gpm'],
  total: ['L/min', 'gpm'],
  before: ['L/min', 'gpm'],
  after: ['L/min', 'gpm'],
  'air-rate': ['m3/min', 'cfm'],
  contact: ['h', 'h'],
  time: ['min', 'min'],
  pressure: ['kPa', 'psi'],
  'shut-in': ['kPa', 'psi'],
};

/** The unit that a number of this slot cannot do without. */
function unitNeeded(slot: Slot, { log }: Snapshot): string {
  const [first] = slot.accepts;
  if (first?.kind === 'bags') return ' bags';
  if (first?.kind !== 'quantity' || slot.bare !== null) return '';
  const common = commonUnits[slot.slot]?.[unitById(log.units.depth)?.system === 'us' ? 1 : 0];
  const unit = common ?? homeUnits(first.dimension, log.units)[0]?.id;
  return unit === undefined ? '' : ` ${unit}`;
}

const takesWord = (slot: Slot): boolean => ['terms', 'description', 'text'].includes(dimensionOf(slot.accepts) ?? '');
const takesMoment = (slot: Slot): boolean => slot.accepts.some(({ kind }) => kind === 'moment' || kind === 'period');

/** A word or a date is typed or chosen; for a number its unit and label stand ready around a question mark. */
function pieceFor(slot: Slot, snapshot: Snapshot): Piece {
  if (takesWord(slot) || takesMoment(slot) || dimensionOf(slot.accepts) === 'grading') return pieceOf('', '', '', true);
  const label = slot.labelled === 'must' ? `${slot.labels[0] ?? ''} ` : '';
  return pieceOf(label, '?', unitNeeded(slot, snapshot), false);
}

const partedByBlanks = new Set([...strings, 'hole.line', 'drilling.line', 'test.line', 'drilling']);

function separatorFor(line: Line, row: Row): string {
  if (line.items.length === 0) return ' ';
  return partedByBlanks.has(row.id) ? ' ' : ', ';
}

/** Where the items of a line end: before its remark and its comment. */
function endOfItems({ text, remark, comment, allow }: Line): number {
  const tails = [remark, comment, allow].flatMap((each) => (each === null ? [] : [each.start]));
  const end = Math.min(text.length, ...tails);
  return text.slice(0, end).replace(/[\s,;#]+$/, '').length;
}

/** True in a remark or a comment, of which nothing is lacking. */
const isInTail = (line: Line, column: number): boolean => /[;#]/.test(line.text.slice(endOfItems(line), column));

const loneQuestion = /(?<![^\s,–—-])\?(?![^\s,])/g;

/** The next fact that the line asks for with a question mark of its own. */
function nextQuestion(line: Line, from: number): Columns | null {
  const found = [...line.text.slice(0, endOfItems(line)).matchAll(loneQuestion)].find(({ index }) => index >= from);
  return found === undefined ? null : { start: found.index, end: found.index + 1 };
}

const lacksDepths = (line: Line, row: Row): boolean =>
  line.depths === null && row.depths !== 'none' && row.depths !== 'optional';

/** Puts a piece at the end of the items, in the place of one that was offered and not taken. */
function offer(number: number, line: Line, row: Row, slot: Slot, piece: Piece, taken: Offered | null): NextItem {
  const isFirst = taken !== null && line.items.every(({ start }) => start >= taken.start);
  const separator = isFirst ? ' ' : separatorFor(line, row);
  const start = taken?.start ?? endOfItems(line);
  const end = taken?.end ?? start + (/^[\s,]*/.exec(line.text.slice(start))?.[0].length ?? 0);
  const hasTail = line.text.slice(end).trim() !== '';
  const text = `${separator}${piece.text}${hasTail ? '  ' : ''}`;
  const at = start + separator.length;
  return {
    edits: [{ span: spanAt(number, { start, end }), text }],
    select: spanAt(number, { start: at + piece.open.start, end: at + piece.open.end }),
    suggest: piece.suggest,
    offered: { slot: slot.slot, start, end: start + text.length },
  };
}

function withdrawn(number: number, line: Line, { start, end }: Offered): NextItem {
  const tail = line.text.slice(end).trim() === '' ? '' : '  ';
  const at = spanAt(number, { start, end: start });
  return { edits: [{ span: spanAt(number, { start, end }), text: tail }], select: at, suggest: false, offered: null };
}

function depthsAsked(number: number, line: Line, row: Row): NextItem {
  const text = row.depths === 'interval' ? ' ? - ?' : ' ?';
  const start = line.keyword?.end ?? 0;
  return {
    edits: [{ span: spanAt(number, { start, end: start }), text }],
    select: spanAt(number, { start: start + 1, end: start + 2 }),
    suggest: false,
    offered: null,
  };
}

/**
 * The next item that a line lacks, the cursor or the selection standing on it: a question mark further on, then its
 * depths, then what is usually said of such a thing. An item that was offered before and not written over gives way.
 * Null where the line lacks nothing more.
 */
export function nextItem(snapshot: Snapshot, selected: Span, taken: Offered | null): NextItem | null {
  const at = placeInside(snapshot.lines, { line: selected.line, column: selected.end });
  const line = at === null ? undefined : snapshot.tree.lines[at.line];
  if (at === null || line === undefined) return null;
  const row = bodyRowOf(line);
  if (row === null || row.body !== 'items' || isInTail(line, at.column)) return null;
  const question = taken === null ? nextQuestion(line, at.column) : null;
  if (question !== null) return { edits: [], select: spanAt(at.line, question), suggest: false, offered: null };
  if (lacksDepths(line, row)) return line.keyword === null ? null : depthsAsked(at.line, line, row);
  const [slot] = lackedBy(line, row, taken);
  if (slot !== undefined) return offer(at.line, line, row, slot, pieceFor(slot, snapshot), taken);
  return taken === null ? null : withdrawn(at.line, line, taken);
}
