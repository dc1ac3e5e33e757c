import type { Atom } from './atoms.ts';
import type { Description } from './description.ts';
import { descriptionLists, matchAt } from './index.ts';
import { doubtsWord, type Piece } from './pieces.ts';
import type { Segment } from './segments.ts';
import { hasOwnQualities, isFrozen, isSeen, materialOf } from './segments.ts';

const markBefore = (atom: Atom): string => {
  if (atom.parted) return ', ';
  return atom.hyphened ? '-' : ' ';
};

const wordsOf = (atoms: readonly Atom[]): string =>
  atoms.map((atom, at) => (at === 0 ? atom.text : `${markBefore(atom)}${atom.text}`)).join('');

const blankBefore = (atom: Atom): Atom =>
  atom.parted || atom.hyphened ? { ...atom, parted: false, hyphened: false } : atom;

const commaBefore = (atom: Atom): Atom => ({ ...atom, parted: true });

const atomsOfSegment = ({ lead, atoms }: Segment): readonly Atom[] => {
  const [first, ...rest] = atoms;
  if (lead === null || first === undefined) return lead === null ? atoms : [lead];
  return [lead, blankBefore(first), ...rest];
};

const isTrait = (segment: Segment): boolean => segment.kind === 'colour' || segment.kind === 'quality';

/** Where the materials end that follow the head directly and have no colour or quality of their own. */
const headRunEnd = (segments: readonly Segment[], head: number): number => {
  let end = head + 1;
  for (let next = segments[end]; next?.kind === 'phrase' && !hasOwnQualities(next); next = segments[end]) end += 1;
  return end;
};

const hasColour = (segment: Segment): boolean => segment.atoms.some((atom) => atom.kind === 'colour');

const coloursOnBothSides = (segments: readonly Segment[], head: number): boolean => {
  const coloured = (segment: Segment, at: number): boolean =>
    segment.kind === 'colour' || (at === head && hasColour(segment));
  const first = segments.findIndex(coloured);
  const last = segments.findLastIndex(coloured);
  return segments.slice(first + 1, Math.max(last, 0)).some(({ kind }) => kind === 'bound' || kind === 'phrase');
};

/** True where a colour or a quality could belong to either of two materials, so that nothing may move. */
const isAmbiguous = (segments: readonly Segment[], head: number): boolean => {
  const others = segments.filter((segment, at) => segment.kind === 'phrase' && at !== head);
  if (others.some(hasOwnQualities) || coloursOnBothSides(segments, head)) return true;
  const apart = segments.findIndex(({ kind }, at) => at >= headRunEnd(segments, head) && kind === 'phrase');
  if (apart < 0) return false;
  const headHasTraits = segments.some((segment, at) =>
    at === head ? hasOwnQualities(segment) : at < apart && isTrait(segment),
  );
  return headHasTraits && segments.slice(apart + 1).some(isTrait);
};

/** The stretch between barriers that holds a segment. */
const blockAround = (segments: readonly Segment[], at: number): readonly [number, number] => {
  let from = at;
  let to = at + 1;
  while (from > 0 && segments[from - 1]?.kind !== 'barrier') from -= 1;
  while (to < segments.length && segments[to]?.kind !== 'barrier') to += 1;
  return [from, to];
};

const takesAdjectives = (head: Segment): boolean =>
  !isFrozen(head) && (materialOf(head)?.mentions.every(({ term }) => isSeen(term)) ?? false);

/** The adjectives that stand apart from the head and yet can only be meant for it. */
const looseAdjectives = (block: readonly Segment[], head: number): readonly Segment[] => {
  if (headRunEnd(block, head) > head + 1 || !takesAdjectives(block[head] as Segment)) return [];
  const stop = block.findIndex(({ kind }, at) => at > head && (kind === 'phrase' || kind === 'bound'));
  return block.filter(
    ({ kind, lead }, at) => kind === 'adjective' && lead === null && (at < head || stop < 0 || at < stop),
  );
};

const withAdjectives = (head: Segment, adjectives: readonly Segment[]): Segment => {
  const noun = head.atoms.findIndex((atom) => atom.kind === 'material');
  const moved = adjectives.flatMap((segment) => segment.atoms);
  return { ...head, atoms: [...head.atoms.slice(0, noun), ...moved, ...head.atoms.slice(noun)] };
};

interface Layout {
  readonly head: Atom[];
  readonly colours: (readonly Atom[])[];
  readonly rest: (readonly Atom[])[];
}

const isTraitAtom = (atom: Atom): boolean => atom.kind === 'colour' || atom.kind === 'quality';

/** The head's own colours and qualities leave it, unless an unknown word holds them. */
const layHead = (layout: Layout, head: Segment): void => {
  const frozen = isFrozen(head);
  const kept = frozen ? head.atoms : head.atoms.filter((atom) => !isTraitAtom(atom)).map(blankBefore);
  layout.head.push(...atomsOfSegment({ ...head, atoms: kept }));
  for (const atom of frozen ? [] : head.atoms.filter(isTraitAtom)) {
    (atom.kind === 'colour' ? layout.colours : layout.rest).push([atom]);
  }
};

const lastPhraseBefore = (block: readonly Segment[], head: number, at: number): number =>
  block.findLastIndex(({ kind }, place) => place >= head && place < at && kind === 'phrase');

/** Lays a material that a link ties to the one before: to the head, to the text that ends in that one, or as a text of its own. */
const layTied = (layout: Layout, segment: Segment, toHead: boolean, toLast: boolean): void => {
  const atoms = atomsOfSegment(segment).map((atom, at) => (at === 0 ? blankBefore(atom) : atom));
  const last = toLast ? layout.rest.pop() : [];
  if (toHead) layout.head.push(...atoms);
  else layout.rest.push([...(last ?? []), ...atoms]);
};

const layPartner = (layout: Layout, segment: Segment): void => {
  if (segment.lead !== null) layTied(layout, segment, true, false);
  else layout.head.push(...segment.atoms.map((atom, at) => (at === 0 ? commaBefore(atom) : atom)));
};

const layOut = (block: readonly Segment[], head: number): Layout => {
  const layout: Layout = { head: [], colours: [], rest: [] };
  const inHead = new Set<number>();
  const runEnd = headRunEnd(block, head);
  let lastInRest = -1;
  block.forEach((segment, at) => {
    const laid = layout.rest.length;
    const before = segment.kind === 'phrase' && segment.lead !== null ? lastPhraseBefore(block, head, at) : -1;
    const joinsHead = (at >= head && at < runEnd) || inHead.has(before);
    if (joinsHead) inHead.add(at);
    if (at === head) layHead(layout, segment);
    else if (at > head && at < runEnd) layPartner(layout, segment);
    else if (segment.kind === 'colour' && segment.lead === null) layout.colours.push(segment.atoms);
    else if (before >= 0) layTied(layout, segment, joinsHead, !joinsHead && lastInRest === before);
    else layout.rest.push(atomsOfSegment(segment));
    if (layout.rest.length > laid || (before >= 0 && before === lastInRest)) lastInRest = at;
  });
  return layout;
};

const layBlock = (block: readonly Segment[], at: number): readonly (readonly Atom[])[] => {
  const head = block[at] as Segment;
  const loose = looseAdjectives(block, at);
  const settled = block
    .filter((segment) => !loose.includes(segment))
    .map((segment) => (segment === head ? withAdjectives(head, loose) : segment));
  const {
    head: first,
    colours,
    rest,
  } = layOut(
    settled,
    settled.findIndex(({ kind }) => kind === 'phrase'),
  );
  return [first, ...colours, ...rest];
};

const partsOf = (atoms: readonly Atom[]): readonly (readonly Atom[])[] => {
  const parts: Atom[][] = [];
  atoms.forEach((atom, at) => {
    if (at === 0 || atom.parted) parts.push([atom]);
    else parts.at(-1)?.push(atom);
  });
  return parts;
};

const pushWords = (words: string[], text: string): void => {
  if (text.includes(' ') || text.includes('-')) words.push(...text.split(/[ -]/));
  else words.push(text);
};

/** The words of a part, and how many there are up to the end of each of its members. */
const membersOf = (atoms: readonly Atom[]): { readonly words: readonly string[]; readonly ends: readonly number[] } => {
  const words: string[] = [];
  const ends: number[] = [];
  for (const { members } of atoms) {
    for (const member of members) {
      pushWords(words, member);
      ends.push(words.length);
    }
  }
  return { words, ends };
};

const isOneTerm = (atoms: readonly Atom[]): boolean => atoms.length === 1 && atoms[0]?.members.length === 1;

/** True where `w/o 12` would become `no 12`, which is a name. */
const becomesNumbered = (atoms: readonly Atom[]): boolean =>
  atoms.some(({ kind, text }, at) => kind === 'amount' && text === 'no' && /^\d{1,2}$/.test(atoms[at + 1]?.text ?? ''));

/** False where long forms side by side would be read as another term than those that they stand for. */
const readsAsMeant = (atoms: readonly Atom[]): boolean => {
  if (isOneTerm(atoms)) return true;
  if (becomesNumbered(atoms)) return false;
  const { words, ends } = membersOf(atoms);
  let start = 0;
  for (const end of ends) {
    while (start < end) start += matchAt(words, start, descriptionLists)?.length ?? 1;
    if (start > end) return false;
  }
  return true;
};

const isSound = (atoms: readonly Atom[]): boolean =>
  atoms.some((atom, at) => at > 0 && atom.parted) ? partsOf(atoms).every(readsAsMeant) : readsAsMeant(atoms);

const laidOut = ({ atoms, segments }: Description): readonly (readonly Atom[])[] => {
  const head = segments.findIndex(({ kind }) => kind === 'phrase');
  if (head < 0) return segments.map(atomsOfSegment);
  if (isAmbiguous(segments, head)) return partsOf(atoms);
  const [from, to] = blockAround(segments, head);
  const block = layBlock(segments.slice(from, to), head - from);
  return [...segments.slice(0, from).map(atomsOfSegment), ...block, ...segments.slice(to).map(atomsOfSegment)];
};

const asWritten = (pieces: readonly Piece[]): string =>
  pieces.map(({ text, glued }, at) => `${at === 0 || glued ? '' : ' '}${text}`).join('');

/** A symbol is read as one only beside small letters, or in brackets. */
const withSymbolsMarked = (parts: readonly (readonly Atom[])[]): readonly (readonly Atom[])[] => {
  const hasSmallLetters = parts.some((atoms) => atoms.some(({ text }) => /\p{Ll}/u.test(text)));
  if (hasSmallLetters) return parts;
  return parts.map((atoms) =>
    atoms.map((atom) => (atom.kind === 'symbol' ? { ...atom, text: `(${atom.text})` } : atom)),
  );
};

const asksMore = (pieces: readonly Piece[]): readonly string[] =>
  pieces.flatMap(({ kind, text }, at) => (kind === 'doubt' && !doubtsWord(pieces, at) ? [text] : []));

/**
 * The long form: the principal material first, its colour second, the rest as written, a lone question mark last. The written order stays where moving
 * could change what a word qualifies, and the written words where their long forms would be read otherwise.
 */
export const writeDescription = (description: Description, pieces: readonly Piece[]): string => {
  const parts = laidOut(description);
  if (!parts.every(isSound)) return asWritten(pieces);
  const marked = description.symbols.length === 0 ? parts : withSymbolsMarked(parts);
  return [...marked.map(wordsOf), ...asksMore(pieces)].join(', ');
};
