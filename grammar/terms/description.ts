import type { Atom } from './atoms.ts';
import { groupedAtoms, singleAtoms } from './atoms.ts';
import { glanceAt } from './glance.ts';
import { matchAt } from './index.ts';
import type { Piece } from './pieces.ts';
import type { Segment } from './segments.ts';
import { isSeen, materialOf, segmentsOf } from './segments.ts';
import type { ListId, Term } from './term.ts';

export { writeDescription } from './long-form.ts';
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

const noTexts: readonly DescriptionText[] = [];

const textsOf = (atoms: readonly Atom[], kind: Atom['kind']): readonly DescriptionText[] => {
  let texts: DescriptionText[] | null = null;
  for (const atom of atoms) {
    if (atom.kind !== kind) continue;
    texts ??= [];
    texts.push(placed(atom));
  }
  return texts ?? noTexts;
};

const notQualities = new Set<ListId>(['material', 'colour', 'shade', 'formation']);

const qualitiesOf = (atoms: readonly Atom[]): readonly DescriptionQuality[] => {
  const qualities: DescriptionQuality[] = [];
  for (const { kind, mentions } of atoms) {
    if (kind === 'colour' || kind === 'amount') continue;
    for (const { list, term, start, end } of mentions) {
      if (!notQualities.has(list)) qualities.push({ list, term, start, end });
    }
  }
  return qualities;
};

const amountOf = (segment: Segment): Amount => {
  if (segment.kind !== 'bound') return segment.lead === null ? null : 'and';
  const amounts = segment.atoms.filter((atom) => atom.kind === 'amount');
  return amounts.at(-1)?.mentions[0]?.term.id ?? null;
};

const materialsOf = (segments: readonly Segment[]): readonly DescriptionMaterial[] => {
  const materials: DescriptionMaterial[] = [];
  for (const segment of segments) {
    const amount = amountOf(segment);
    for (const { mentions } of segment.atoms) {
      for (const { list, term, adjective, start, end } of mentions) {
        if (list === 'material') materials.push({ term, amount: adjective ? 'adjective' : amount, start, end });
      }
    }
  }
  return materials;
};

const nounsOf = (segments: readonly Segment[], kind: Segment['kind']): readonly Term[] =>
  segments.flatMap((segment) => (segment.kind === kind ? (materialOf(segment)?.mentions[0]?.term ?? []) : []));

const formationOf = (atoms: readonly Atom[]): Term | null =>
  atoms.find((atom) => atom.kind === 'name' && atom.mentions.length > 0)?.mentions[0]?.term ?? null;

const principalOf = (segments: readonly Segment[], atoms: readonly Atom[]): Term | null => {
  const alone = nounsOf(segments, 'phrase');
  return alone.find(isSeen) ?? alone[0] ?? nounsOf(segments, 'bound')[0] ?? formationOf(atoms);
};

/** Where the pieces of a description can be had from again. */
export interface Pieces {
  readonly pieces: readonly Piece[];
}

interface Parts {
  readonly atoms: readonly Atom[];
  readonly segments: readonly Segment[];
}

const putTogether = (single: readonly Atom[]): Parts => {
  const atoms = groupedAtoms(single);
  return { atoms, segments: segmentsOf(atoms) };
};

const togetherPrincipal = (pieces: readonly Piece[]): Term | null => {
  const { atoms, segments } = putTogether(singleAtoms(pieces));
  return principalOf(segments, atoms);
};

/**
 * A description of which is kept what is cheap to keep: its principal material, its unknown words, names and symbols. The
 * rest is read again from its pieces when someone asks, so that a long log stays small.
 */
class ReadDescription implements Description {
  readonly principal: Term | null;
  readonly symbols: readonly DescriptionText[];
  readonly names: readonly DescriptionText[];
  readonly unknown: readonly DescriptionText[];
  readonly #written: Pieces;
  #parts: Parts | null = null;

  constructor(pieces: readonly Piece[], written: Pieces) {
    const { principal, symbols, names, unknown } = glanceAt(pieces);
    this.principal = principal === undefined ? togetherPrincipal(pieces) : principal;
    this.symbols = symbols;
    this.names = names;
    this.unknown = unknown;
    this.#written = written;
  }

  get #together(): Parts {
    this.#parts ??= putTogether(singleAtoms(this.#written.pieces));
    return this.#parts;
  }

  get atoms(): readonly Atom[] {
    return this.#together.atoms;
  }

  get segments(): readonly Segment[] {
    return this.#together.segments;
  }

  get materials(): readonly DescriptionMaterial[] {
    return materialsOf(this.segments);
  }

  get colours(): readonly DescriptionText[] {
    return textsOf(this.atoms, 'colour');
  }

  get qualities(): readonly DescriptionQuality[] {
    return qualitiesOf(this.atoms);
  }
}

/**
 * Reads the pieces of a strata description. Never fails: what it does not know is in `unknown`. `written` gives the same
 * pieces again.
 */
export const readDescription = (pieces: readonly Piece[], written: Pieces = { pieces }): Description =>
  new ReadDescription(pieces, written);

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
