import type { Atom, Mention } from './atoms.ts';
import { atomsOf } from './atoms.ts';
import { descriptionLists, matchAt } from './index.ts';
import type { Piece } from './pieces.ts';
import type { Segment } from './segments.ts';
import { hasOwnQualities, isFrozen, materialOf, segmentsOf } from './segments.ts';
import type { ListId, Term } from './term.ts';

export type { Piece, PieceKind } from './pieces.ts';

/** How a material comes to be in the description: alone (null), as an adjective, by a link, or by a word for amount (its id). */
export type Amount = string | null;

interface Placed {
  readonly start: number;
  readonly end: number;
}

export interface DescriptionMaterial extends Placed {
  readonly term: Term;
  readonly amount: Amount;
}

export interface DescriptionText extends Placed {
  readonly text: string;
}

export interface DescriptionQuality extends Placed {
  readonly list: ListId;
  readonly term: Term;
}

/** What a description of ground says. Places are those of the pieces. */
export interface Description {
  /** The material that the rest speaks about; a named rock unit where no material is named. */
  readonly principal: Term | null;
  readonly materials: readonly DescriptionMaterial[];
  /** In the long form: `dark grey`, `reddish brown`, `grey-green`. */
  readonly colours: readonly DescriptionText[];
  readonly qualities: readonly DescriptionQuality[];
  readonly symbols: readonly DescriptionText[];
  /** Names of formations and places, as written. */
  readonly names: readonly DescriptionText[];
  /** Words that no list knows, as written. */
  readonly unknown: readonly DescriptionText[];
  readonly atoms: readonly Atom[];
  readonly segments: readonly Segment[];
}

const placed = ({ text, start, end }: Atom): DescriptionText => ({ text, start, end });

const textsOf = (atoms: readonly Atom[], kind: Atom['kind']): readonly DescriptionText[] =>
  atoms.filter((atom) => atom.kind === kind).map(placed);

const isQuality = (mention: Mention): boolean =>
  mention.list !== 'material' && mention.list !== 'colour' && mention.list !== 'shade' && mention.list !== 'formation';

const qualitiesOf = (atoms: readonly Atom[]): readonly DescriptionQuality[] =>
  atoms
    .filter((atom) => atom.kind !== 'colour' && atom.kind !== 'amount')
    .flatMap((atom) => atom.mentions)
    .filter(isQuality)
    .map(({ list, term, start, end }) => ({ list, term, start, end }));

const amountOf = (segment: Segment): Amount => {
  if (segment.kind !== 'bound') return segment.lead === null ? null : 'and';
  const amounts = segment.atoms.filter((atom) => atom.kind === 'amount');
  return amounts.at(-1)?.mentions[0]?.term.id ?? null;
};

const materialsOfSegment = (segment: Segment): readonly DescriptionMaterial[] =>
  segment.atoms
    .flatMap((atom) => atom.mentions)
    .filter((mention) => mention.list === 'material')
    .map(({ term, adjective, start, end }) => ({
      term,
      amount: adjective ? 'adjective' : amountOf(segment),
      start,
      end,
    }));

const isSeen = (term: Term): boolean => term.ground?.class !== 'unknown';

const principalOf = (segments: readonly Segment[], atoms: readonly Atom[]): Term | null => {
  const nouns = (kind: Segment['kind']): readonly Term[] =>
    segments
      .filter((segment) => segment.kind === kind)
      .flatMap((segment) => materialOf(segment)?.mentions[0]?.term ?? []);
  const alone = nouns('phrase');
  const formation = atoms.find((atom) => atom.kind === 'name' && atom.mentions.length > 0)?.mentions[0]?.term;
  return alone.find(isSeen) ?? alone[0] ?? nouns('bound')[0] ?? formation ?? null;
};

/** Reads the pieces of a strata description. Never fails: what it does not know is in `unknown`. */
export const readDescription = (pieces: readonly Piece[]): Description => {
  const atoms = atomsOf(pieces);
  const segments = segmentsOf(atoms);
  return {
    principal: principalOf(segments, atoms),
    materials: segments.flatMap(materialsOfSegment),
    colours: textsOf(atoms, 'colour'),
    qualities: qualitiesOf(atoms),
    symbols: textsOf(atoms, 'symbol'),
    names: textsOf(atoms, 'name'),
    unknown: textsOf(atoms, 'unknown'),
    atoms,
    segments,
  };
};

const words = (atoms: readonly Atom[]): string => {
  let text = '';
  atoms.forEach((atom, at) => {
    text += `${at === 0 ? '' : atom.hyphened && !isKnown(atom) ? '-' : ' '}${atom.text}`;
  });
  return text;
};

const isKnown = (atom: Atom): boolean => atom.mentions.length > 0;

const segmentText = (segment: Segment): string =>
  [
    ...(segment.lead === null ? [] : [segment.lead.text]),
    ...(segment.atoms.length === 0 ? [] : [words(segment.atoms)]),
  ].join(' ');

const writtenOrder = (atoms: readonly Atom[]): string =>
  atoms.map((atom, at) => `${at === 0 ? '' : atom.parted ? ', ' : ' '}${atom.text}`).join('');

const isTrait = (segment: Segment): boolean => segment.kind === 'colour' || segment.kind === 'quality';

/** The stretch between barriers that holds a segment. */
const blockAround = (segments: readonly Segment[], at: number): readonly [number, number] => {
  let from = at;
  let to = at + 1;
  while (from > 0 && segments[from - 1]?.kind !== 'barrier') from -= 1;
  while (to < segments.length && segments[to]?.kind !== 'barrier') to += 1;
  return [from, to];
};

const headRunEnd = (segments: readonly Segment[], head: number): number => {
  let end = head + 1;
  for (let next = segments[end]; next?.kind === 'phrase' && !hasOwnQualities(next); next = segments[end]) end += 1;
  return end;
};

const coloursOnBothSides = (segments: readonly Segment[], head: number): boolean => {
  const coloured = segments.flatMap((segment, at) =>
    segment.kind === 'colour' || (at === head && segment.atoms.some((atom) => atom.kind === 'colour')) ? [at] : [],
  );
  const first = coloured[0] ?? 0;
  const last = coloured.at(-1) ?? 0;
  return segments.slice(first + 1, last).some((segment) => segment.kind === 'bound' || segment.kind === 'phrase');
};

/** True where a colour or a quality could belong to either of two materials, so that nothing may move. */
const isAmbiguous = (segments: readonly Segment[], head: number): boolean => {
  const others = segments.filter((segment, at) => segment.kind === 'phrase' && at !== head);
  if (others.some(hasOwnQualities) || coloursOnBothSides(segments, head)) return true;
  const runEnd = headRunEnd(segments, head);
  const apart = segments.findIndex((segment, at) => at >= runEnd && segment.kind === 'phrase');
  if (apart < 0) return false;
  const headHasTraits = hasOwnQualities(segments[head] as Segment) || segments.slice(0, apart).some(isTrait);
  return headHasTraits && segments.slice(apart + 1).some(isTrait);
};

const lastPhrase = (segments: readonly Segment[], from: number, before: number): number => {
  for (let at = before - 1; at >= from; at -= 1) if (segments[at]?.kind === 'phrase') return at;
  return -1;
};

const tiedBefore = (segments: readonly Segment[], from: number, at: number): boolean =>
  segments[at]?.kind === 'phrase' && segments[at]?.lead !== null && lastPhrase(segments, from, at) >= 0;

interface Layout {
  /** Texts of the head, its partners with their links, … each after the mark that parts it from the one before. */
  head: string;
  readonly colours: string[];
  readonly rest: string[];
}

const headAdjectives = (block: readonly Segment[], head: number, headEnd: number): readonly Segment[] => {
  const runOfOne = block.filter((segment) => segment.kind === 'phrase').length === 1 || headEnd === head + 1;
  if (!runOfOne || isFrozen(block[head] as Segment)) return [];
  const stop = block.findIndex((segment, at) => at > head && (segment.kind === 'phrase' || segment.kind === 'bound'));
  return block.filter(
    (segment, at) => segment.kind === 'adjective' && segment.lead === null && (at < head || stop < 0 || at < stop),
  );
};

const matchesOnlyItself = (atoms: readonly Atom[]): boolean => {
  const all = atoms.flatMap((atom) => atom.text.split(' '));
  let at = 0;
  for (const atom of atoms) {
    const length = atom.text.split(' ').length;
    for (let inside = 0; inside < length; ) {
      const step = matchAt(all, at + inside, descriptionLists)?.length ?? 1;
      if (inside + step > length) return false;
      inside += step;
    }
    at += length;
  }
  return true;
};

const headPhrase = (head: Segment, adjectives: readonly Segment[]): readonly Atom[] => {
  if (isFrozen(head)) return head.atoms;
  const kept = head.atoms.filter((atom) => atom.kind !== 'colour' && atom.kind !== 'quality');
  const noun = kept.findIndex((atom) => atom.kind === 'material');
  return [...kept.slice(0, noun), ...adjectives.flatMap((segment) => segment.atoms), ...kept.slice(noun)];
};

const layRest = (
  layout: Layout,
  block: readonly Segment[],
  head: number,
  headEnd: number,
  moved: readonly Segment[],
): void => {
  const headSegment = block[head] as Segment;
  block.forEach((segment, at) => {
    if (at === head && !isFrozen(headSegment)) {
      for (const atom of segment.atoms) if (atom.kind === 'colour') layout.colours.push(atom.text);
      for (const atom of segment.atoms) if (atom.kind === 'quality') layout.rest.push(atom.text);
    }
    if ((at >= head && at < headEnd) || moved.includes(segment)) return;
    if (segment.kind === 'colour' && segment.lead === null) layout.colours.push(segmentText(segment));
    else if (!tiedBefore(block, head, at)) layout.rest.push(segmentText(segment));
    else if (lastPhrase(block, head, at) < headEnd) layout.head += ` ${segmentText(segment)}`;
    else layout.rest.push(segmentText(segment));
  });
};

const layBlock = (block: readonly Segment[], head: number): string | null => {
  const headEnd = headRunEnd(block, head);
  const moved = headAdjectives(block, head, headEnd);
  const atoms = headPhrase(block[head] as Segment, moved);
  if (!matchesOnlyItself(atoms)) return null;
  const lead = block[head]?.lead;
  const layout: Layout = { head: `${lead ? `${lead.text} ` : ''}${words(atoms)}`, colours: [], rest: [] };
  for (const partner of block.slice(head + 1, headEnd)) {
    layout.head += `${partner.lead === null ? ', ' : ' '}${segmentText(partner)}`;
  }
  layRest(layout, block, head, headEnd, moved);
  return [layout.head, ...layout.colours, ...layout.rest].join(', ');
};

const longFormOf = ({ atoms, segments }: Description): string => {
  const head = segments.findIndex((segment) => segment.kind === 'phrase');
  if (head < 0) return segments.map(segmentText).join(', ');
  if (isAmbiguous(segments, head)) return writtenOrder(atoms);
  const [from, to] = blockAround(segments, head);
  const block = layBlock(segments.slice(from, to), head - from);
  if (block === null) return writtenOrder(atoms);
  return [...segments.slice(0, from).map(segmentText), block, ...segments.slice(to).map(segmentText)].join(', ');
};

/** A symbol is read as one only beside small letters, or in brackets. */
const withSymbolsMarked = (text: string, symbols: readonly DescriptionText[]): string =>
  symbols.length === 0 || /\p{Ll}/u.test(text)
    ? text
    : symbols.reduce((all, { text: symbol }) => all.replace(symbol, `(${symbol})`), text);

/** The long form: the principal material first, its colour second, the rest as written; the written order where that could change the meaning. */
export const writeDescription = (description: Description): string =>
  withSymbolsMarked(longFormOf(description), description.symbols);

/** A term found among the words of a line. */
export interface FoundTerm extends Placed {
  readonly list: ListId;
  readonly term: Term;
}

const wordRunEnd = (pieces: readonly Piece[], at: number): number => {
  let end = at;
  while (pieces[end]?.kind === 'word' || (end > at && pieces[end]?.kind === 'dash' && pieces[end]?.glued === true))
    end += 1;
  return end;
};

/** Reads the terms of `lists` among pieces, the longest first; words that none of them has are given back. */
export const readTerms = (
  pieces: readonly Piece[],
  lists: readonly ListId[],
): { readonly found: readonly FoundTerm[]; readonly unknown: readonly DescriptionText[] } => {
  const found: FoundTerm[] = [];
  const unknown: DescriptionText[] = [];
  let at = 0;
  for (let piece = pieces[at]; piece !== undefined; piece = pieces[at]) {
    const run = pieces.slice(at, wordRunEnd(pieces, at)).filter(({ kind }) => kind === 'word');
    const match = matchAt(
      run.map(({ text }) => text),
      0,
      lists,
    );
    const { start } = piece;
    const last = run[(match?.length ?? 1) - 1] ?? piece;
    if (match !== null) found.push({ list: match.sense.list, term: match.sense.term, start, end: last.end });
    else if (piece.kind === 'word') unknown.push({ text: piece.text, start, end: piece.end });
    at = pieces.indexOf(last) + 1;
  }
  return { found, unknown };
};
