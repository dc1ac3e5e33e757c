import type { Description, DescriptionMaterial, DescriptionQuality } from '../../grammar/terms/description.ts';
import type { Term } from '../../grammar/terms/term.ts';
import type { Value } from '../../grammar/tree.ts';
import { intervalFromGround } from './interval.ts';
import type { Ground, MaterialPart, Stratum, TextField, Word } from './log.ts';
import { depthsIn, measureIn } from './measure.ts';
import { rememberedBelow } from './remembered.ts';
import { entryOf, itemIn, type Source, spanOf, writtenAt } from './source.ts';

interface OfTerm {
  readonly ground: Ground | null;
  /** The material by its amount; made once, and shared by all lines. */
  readonly parts: Map<string | null, MaterialPart>;
}

const ofTerms = new Map<Term, OfTerm>();

function groundOf({ ground }: Term): Ground | null {
  return ground ? { class: ground.class, rock: ground.rock, fgdc: ground.fgdc } : null;
}

function ofTerm(term: Term): OfTerm {
  const known = ofTerms.get(term);
  if (known) return known;
  const made = { ground: groundOf(term), parts: new Map() };
  ofTerms.set(term, made);
  return made;
}

function partOf(term: Term, amount: string | null): MaterialPart {
  const { parts } = ofTerm(term);
  const known = parts.get(amount);
  if (known) return known;
  const made = { id: term.id, name: term.name, amount };
  parts.set(amount, made);
  return made;
}

const partOfMaterial = ({ term, amount }: DescriptionMaterial): MaterialPart => partOf(term, amount);

const qualityOf = (source: Source, quality: DescriptionQuality): Word => ({
  list: quality.list,
  id: quality.term.id,
  name: quality.term.name,
  written: writtenAt(source, quality),
  span: spanOf(source, quality),
});

const textOf = ({ text }: { readonly text: string }): string => text;

const unknownOf = (source: Source, word: Description['unknown'][number]): TextField => ({
  text: word.text,
  span: spanOf(source, word),
});

const nothing: Omit<Description, 'atoms' | 'segments'> = {
  principal: null,
  materials: [],
  colours: [],
  qualities: [],
  symbols: [],
  names: [],
  unknown: [],
};

const longOf = (value: Value | null): string => {
  if (value?.kind === 'description') return value.long;
  return value?.kind === 'unknown' ? '?' : '';
};

/** A line of the ground; a lone `?` is the description `?`. */
function readStratum(source: Source): Stratum {
  const { line, span, remark } = entryOf(source);
  const value = itemIn(source, 'description')?.value ?? null;
  const said = value?.kind === 'description' ? value.description : nothing;
  return {
    line,
    span,
    remark,
    interval: intervalFromGround(source),
    description: longOf(value),
    descriptionSpan: value ? spanOf(source, value) : null,
    principal: said.principal && partOf(said.principal, null),
    ground: said.principal && ofTerm(said.principal).ground,
    materials: said.materials.map(partOfMaterial),
    colours: said.colours.map(textOf),
    qualities: said.qualities.map((quality) => qualityOf(source, quality)),
    symbols: said.symbols.map(textOf),
    names: said.names.map(textOf),
    unknownWords: said.unknown.map((word) => unknownOf(source, word)),
    grain: measureIn(source, 'grain'),
    at: depthsIn(source, 'at'),
  };
}

/** A line of `strata`. */
export const stratumFact = rememberedBelow(readStratum);
