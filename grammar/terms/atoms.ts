import type { Sense } from './index.ts';
import { descriptionLists, isNear, longForm, matchAt } from './index.ts';
import { doubtsWord, type Piece } from './pieces.ts';
import type { ListId, Term } from './term.ts';

/** A term within an atom. */
export interface Mention {
  readonly list: ListId;
  readonly term: Term;
  readonly adjective: boolean;
  readonly start: number;
  readonly end: number;
}

export type AtomKind =
  | 'material'
  | 'adjective'
  | 'colour'
  | 'quality'
  | 'amount'
  | 'degree'
  | 'layer'
  | 'link'
  | 'filler'
  | 'symbol'
  | 'name'
  | 'unknown';

/** A word or a group of words that is read, and written, as one. */
export interface Atom {
  readonly kind: AtomKind;
  /** As the long form has it; as written for names, unknown words and fillers. */
  readonly text: string;
  /** The texts of the single terms and links that make up a group; `text` alone where it is none. */
  readonly members: readonly string[];
  readonly mentions: readonly Mention[];
  readonly start: number;
  readonly end: number;
  /** True where a comma, a bracket or a dash parts it from the atom before. */
  readonly parted: boolean;
  /** True where a dash without blanks joins it to the atom before. */
  readonly hyphened: boolean;
}

export const links = new Map([
  ['and', 'and'],
  ['plus', 'and'],
  ['to', 'to'],
  ['or', 'or'],
]);

const fillers = new Set([
  ...[
    'a',
    'an',
    'the',
    'of',
    'in',
    'on',
    'at',
    'from',
    'by',
    'for',
    'into',
    'under',
    'over',
    'below',
    'then',
    'is',
    'it',
  ],
  ...['are', 'but', 'as', 'has', 'have', 'than', 'through', 'between', 'near', 'also', 'still', 'tends'],
  ...[
    'after',
    'before',
    'etc',
    'about',
    'approx',
    'number',
    'within',
    'up',
    'down',
    'out',
    'off',
    'its',
    'this',
    'where',
  ],
]);

const unitWords = new Set(['formation', 'fm', 'group', 'grp', 'member', 'mbr', 'system', 'series', 'horizon']);

const positionWords = new Set(['upper', 'lower', 'middle', 'top']);

const hasLetter = (text: string): boolean => /\p{L}/u.test(text);

const isCapitalised = (text: string): boolean => /^[\p{Lu}][\p{L}'’.]*\p{Ll}/u.test(text);

const classSymbol = /^(?:G[WPMC]|S[WPMC]|[MCO][LH]|PT)(?:-(?:G[MC]|S[MC]|ML))?$/;

export const kindOfSense = ({ list, adjective }: Sense): AtomKind => {
  if (list === 'material') return adjective ? 'adjective' : 'material';
  if (list === 'colour' || list === 'shade') return 'colour';
  if (list === 'amount' || list === 'degree' || list === 'layer') return list;
  return list === 'formation' ? 'name' : 'quality';
};

const mostKept = 5000;
const slips = new Map<string, boolean>();

/** True for a word one letter away from a term, so that `Caly` is clay misspelt and no name of a place. */
const isSlip = (word: string): boolean => {
  const known = slips.get(word);
  if (known !== undefined) return known;
  if (slips.size >= mostKept) slips.clear();
  const slip = isNear(word, descriptionLists);
  slips.set(word, slip);
  return slip;
};

const rockUnits = /^(?:Shales?|Limestones?|Sandstones?|Siltstones?|Mudstones?|Dolomites?|Dolostones?|Granites?|Beds?)$/;

const colours: readonly ListId[] = ['colour', 'shade'];

/** `Caly Shale` names a unit of rock; `Gery Shale` is a colour misspelt. */
const namesRock = (word: string, next: string): boolean => rockUnits.test(next) && !isNear(word, colours);

const kindOfStranger = (word: string, next: string | undefined): AtomKind => {
  const key = word.toLowerCase().replaceAll('.', '');
  if (fillers.has(key)) return 'filler';
  if (unitWords.has(key) || positionWords.has(key)) return 'filler';
  if (classSymbol.test(word)) return 'symbol';
  if (!hasLetter(word)) return 'unknown';
  if (next !== undefined && unitWords.has(next.toLowerCase().replaceAll('.', ''))) return 'name';
  if (!isCapitalised(word)) return 'unknown';
  return !isSlip(word) || (next !== undefined && namesRock(word, next)) ? 'name' : 'unknown';
};

/** Words that blanks or glued dashes join, beside the pieces that they come from. */
export interface Run {
  readonly words: string[];
  readonly pieces: Piece[];
  readonly hyphened: boolean[];
}

const isHyphen = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.kind === 'dash' && pieces[at].glued && pieces[at + 1]?.kind === 'word' && pieces[at + 1]?.glued === true;

export const runFrom = (pieces: readonly Piece[], at: number): { run: Run; next: number } => {
  const run: Run = { words: [], pieces: [], hyphened: [] };
  let next = at;
  let hyphened = false;
  for (let piece = pieces[next]; piece !== undefined; piece = pieces[next]) {
    if (piece.kind === 'word' || piece.kind === 'and') {
      run.words.push(piece.kind === 'and' ? 'and' : piece.text);
      run.pieces.push(piece);
      run.hyphened.push(hyphened);
      hyphened = false;
    } else if (run.words.length > 0 && isHyphen(pieces, next)) hyphened = true;
    else break;
    next += 1;
  }
  return { run, next };
};

export const asWritten = (run: Run, at: number, length: number): string => {
  let text = run.words[at] ?? '';
  for (let step = at + 1; step < at + length; step += 1) text += `${run.hyphened[step] ? '-' : ' '}${run.words[step]}`;
  return text;
};

type Place = Pick<Atom, 'start' | 'end' | 'parted' | 'hyphened'>;

const placeIn = (run: Run, at: number, length: number, parted: boolean): Place => ({
  start: run.pieces[at]?.start ?? 0,
  end: run.pieces[at + length - 1]?.end ?? 0,
  parted: at === 0 ? parted : run.hyphened[at] === true,
  hyphened: run.hyphened[at] === true,
});

const atomAt = (place: Place, kind: AtomKind, text: string, mentions: readonly Mention[]): Atom => ({
  kind,
  text,
  members: [text],
  mentions,
  start: place.start,
  end: place.end,
  parted: place.parted,
  hyphened: place.hyphened,
});

const knownAtom = (sense: Sense, written: string, place: Place): Atom => {
  const { list, term, adjective } = sense;
  const kind = kindOfSense(sense);
  const text = kind === 'name' ? written : longForm(sense);
  return atomAt(place, kind, text, [{ list, term, adjective, start: place.start, end: place.end }]);
};

/** What a word is that no list knows, by itself and by the word behind it. */
export const strangerKindAt = (run: Run, at: number): AtomKind =>
  kindOfStranger(run.words[at] ?? '', run.hyphened[at + 1] ? undefined : run.words[at + 1]);

const strangerAtom = (run: Run, at: number, place: Place): Atom =>
  atomAt(place, strangerKindAt(run, at), run.words[at] ?? '', []);

const strangerKinds = new Set<AtomKind | undefined>(['unknown', 'name', 'filler']);

/** A dash within a name, a range of figures or a word that no list knows is a part of it; between words it is a comma. */
const pushInRun = (atoms: Atom[], atom: Atom): void => {
  const within = atom.hyphened && strangerKinds.has(atom.kind) && strangerKinds.has(atoms.at(-1)?.kind);
  atoms.push(within ? { ...atom, parted: false } : atom);
};

const atomsOfRun = (run: Run, parted: boolean, atoms: Atom[]): void => {
  let at = 0;
  while (at < run.words.length) {
    const link = links.get((run.words[at] ?? '').toLowerCase());
    const found = link === undefined ? matchAt(run.words, at, descriptionLists) : null;
    const length = found?.length ?? 1;
    const place = placeIn(run, at, length, parted);
    if (link !== undefined) atoms.push(atomAt(place, 'link', link, []));
    else if (found === null) pushInRun(atoms, strangerAtom(run, at, place));
    else pushInRun(atoms, knownAtom(found.sense, asWritten(run, at, length), place));
    at += length;
  }
};

const withSense = (): Sense | null => matchAt(['with'], 0, ['amount'])?.sense ?? null;

/** A name without its quotes. */
export const unquoted = ({ text }: Piece): string => text.replace(/^"|"$/g, '');

/** A class symbol without its brackets. */
export const symbolText = ({ text }: Piece): string => text.replace(/^\(|\)$/g, '');

const markAtom = (piece: Piece, parted: boolean): Atom | null => {
  const place = { start: piece.start, end: piece.end, parted, hyphened: false };
  if (piece.kind === 'symbol') {
    return atomAt(place, 'symbol', symbolText(piece), []);
  }
  if (piece.kind === 'name') return atomAt(place, 'name', piece.text, []);
  const sense = piece.kind === 'with' ? withSense() : null;
  return sense === null ? null : knownAtom(sense, 'with', place);
};

const doubtful = (atom: Atom): Atom => ({
  ...atom,
  text: `${atom.text}?`,
  members: atom.members.map((member, at) => (at === atom.members.length - 1 ? `${member}?` : member)),
});

/** Puts the question mark to the word that it doubts. */
const takeDoubt = (atoms: Atom[], pieces: readonly Piece[], at: number): void => {
  const last = atoms.at(-1);
  if (last && doubtsWord(pieces, at)) atoms[atoms.length - 1] = doubtful(last);
};

/** One atom for each term, link, symbol, name and unknown word, in the written order. */
export const singleAtoms = (pieces: readonly Piece[]): readonly Atom[] => {
  const atoms: Atom[] = [];
  let parted = false;
  let at = 0;
  for (let piece = pieces[at]; piece !== undefined; piece = pieces[at]) {
    if (piece.kind === 'word' || piece.kind === 'and') {
      const { run, next } = runFrom(pieces, at);
      atomsOfRun(run, parted, atoms);
      at = next;
      parted = false;
      continue;
    }
    if (piece.kind === 'doubt') {
      takeDoubt(atoms, pieces, at);
      at += 1;
      continue;
    }
    const atom = markAtom(piece, parted);
    if (atom !== null) atoms.push(atom);
    parted = atom === null;
    at += 1;
  }
  return atoms;
};

const isColour = (atom: Atom | undefined): boolean => atom?.kind === 'colour';

const isMediumShade = (atoms: readonly Atom[], at: number): boolean => {
  const atom = atoms[at];
  if (atom?.kind !== 'quality' || atom.text !== 'medium') return false;
  const before = atoms[at - 1];
  if (before?.kind === 'link' && !before.parted && !atom.parted && atoms[at - 2]?.kind === 'quality') return false;
  const next = atoms[at + 1];
  if (isColour(next)) return next?.parted === false;
  return next?.kind === 'link' && !next.parted && isColour(atoms[at + 2]) && atoms[at + 2]?.parted === false;
};

const isHue = (atom: Atom): boolean => atom.mentions[0]?.list === 'colour' && !/ish$|coloured$| /.test(atom.text);

const joinedTo = (before: Atom, after: Atom): string => (isHue(before) && isHue(after) ? '-' : ' ');

/** Where a group that `fits` ends: members side by side, or with a link between them. */
const groupEnd = (
  atoms: readonly Atom[],
  at: number,
  fits: (at: number) => boolean,
  sideBySide: (after: Atom) => boolean,
): number => {
  let end = at + 1;
  for (;;) {
    const next = atoms[end];
    if (next === undefined) return end;
    if (fits(end) && sideBySide(next)) end += 1;
    else if (next.kind === 'link' && !next.parted && atoms[end + 1]?.parted === false && fits(end + 1)) end += 2;
    else return end;
  }
};

const merged = (kind: AtomKind, group: readonly Atom[], text: string): Atom => {
  const first = group[0] as Atom;
  const end = group.at(-1)?.end ?? first.end;
  const members = group.flatMap((atom) => atom.members);
  return { ...first, kind, text, members, end, mentions: group.flatMap((atom) => atom.mentions) };
};

const textOf = (group: readonly Atom[], join: (before: Atom, after: Atom) => string): string =>
  group.map((atom, at) => (at === 0 ? atom.text : `${join(group[at - 1] as Atom, atom)}${atom.text}`)).join('');

const colourGroup = (atoms: readonly Atom[], at: number): number => {
  const fits = (place: number): boolean => isColour(atoms[place]) || isMediumShade(atoms, place);
  return fits(at) ? groupEnd(atoms, at, fits, (after) => !after.parted || after.hyphened) : at;
};

const isGraded = (atom: Atom | undefined): boolean => atom?.kind === 'quality' || atom?.kind === 'adjective';

/** Where a quality or an adjective ends that begins here, with its words of degree and what a link ties to it. */
const qualityEnd = (atoms: readonly Atom[], at: number): number => {
  let end = at;
  while (atoms[end]?.kind === 'degree' && atoms[end + 1]?.parted === false) end += 1;
  if (!isGraded(atoms[end])) return at;
  const next = atoms[end + 1];
  if (next?.kind !== 'link' || next.parted || atoms[end + 2]?.parted !== false) return end + 1;
  if (isMediumShade(atoms, end + 2)) return end + 1;
  const further = qualityEnd(atoms, end + 2);
  return further > end + 2 ? further : end + 1;
};

const blank = (): string => ' ';

const qualityAtom = (group: readonly Atom[]): Atom => {
  const kind = group.some((atom) => atom.kind === 'quality') ? 'quality' : 'adjective';
  return group.length === 1 ? (group[0] as Atom) : merged(kind, group, textOf(group, blank));
};

/** Puts single atoms together: colours grouped to one, qualities with their words of degree. */
export const groupedAtoms = (single: readonly Atom[]): readonly Atom[] => {
  const atoms: Atom[] = [];
  let at = 0;
  for (let atom = single[at]; atom !== undefined; atom = single[at]) {
    const colourTo = colourGroup(single, at);
    const to = colourTo > at ? colourTo : qualityEnd(single, at);
    const group = single.slice(at, Math.max(to, at + 1));
    if (colourTo > at) atoms.push(merged('colour', group, textOf(group, joinedTo)));
    else atoms.push(to > at ? qualityAtom(group) : atom);
    at = Math.max(to, at + 1);
  }
  return atoms;
};
