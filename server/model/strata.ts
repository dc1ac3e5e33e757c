import type { Description, DescriptionMaterial, DescriptionQuality } from '../../grammar/terms/description.ts';
import type { Term } from '../../grammar/terms/term.ts';
import type { Value } from '../../grammar/tree.ts';
import { intervalFromGround } from './interval.ts';
import type { Depth, Ground, Interval, MaterialPart, Measure, Span, Stratum, TextField, Word } from './log.ts';
import { depthsIn, measureIn } from './measure.ts';
import { rememberedBelow } from './remembered.ts';
import { type Entry, entryOf, itemIn, type Source, spanOf, writtenAt } from './source.ts';

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

/** What the description of a line says. */
type Said = Pick<Stratum, 'description' | 'materials' | 'colours' | 'qualities'>;

function saidOf(source: Source): Said {
  const value = itemIn(source, 'description')?.value ?? null;
  const said = value?.kind === 'description' ? value.description : nothing;
  return {
    description: longOf(value),
    materials: said.materials.map(partOfMaterial),
    colours: said.colours.map(textOf),
    qualities: said.qualities.map((quality) => qualityOf(source, quality)),
  };
}

/**
 * A line of the ground. What its description says is read when someone asks; each such property is the object's own, so
 * that copies and JSON have it.
 */
class ReadStratum {
  readonly #source: Source;
  #said: Said | null = null;
  readonly line: number;
  readonly span: Span;
  readonly remark: TextField | null;
  readonly interval: Interval;
  readonly descriptionSpan: Span | null;
  readonly principal: MaterialPart | null;
  readonly ground: Ground | null;
  readonly symbols: string[];
  readonly names: string[];
  readonly unknownWords: TextField[];
  readonly grain: Measure | null;
  readonly at: Depth[];

  constructor(source: Source, { line, span, remark }: Entry, value: Value | null) {
    const said = value?.kind === 'description' ? value.description : nothing;
    const { principal } = said;
    this.#source = source;
    this.line = line;
    this.span = span;
    this.remark = remark;
    this.interval = intervalFromGround(source);
    this.descriptionSpan = value ? spanOf(source, value) : null;
    this.principal = principal && partOf(principal, null);
    this.ground = principal && ofTerm(principal).ground;
    this.symbols = said.symbols.map(textOf);
    this.names = said.names.map(textOf);
    this.unknownWords = said.unknown.map((word) => unknownOf(source, word));
    this.grain = measureIn(source, 'grain');
    this.at = depthsIn(source, 'at');
    for (const [name, accessor] of ReadStratum.#saidLater) Object.defineProperty(this, name, accessor);
  }

  static #later(name: keyof Said): readonly [string, PropertyDescriptor] {
    const get = function (this: ReadStratum): Said[keyof Said] {
      this.#said ??= saidOf(this.#source);
      return this.#said[name];
    };
    return [name, { get, enumerable: true, configurable: true }];
  }

  static readonly #saidLater = (['description', 'materials', 'colours', 'qualities'] as const).map(ReadStratum.#later);
}

/** A line of the ground; a lone `?` is the description `?`. */
const readStratum = (source: Source): Stratum =>
  new ReadStratum(source, entryOf(source), itemIn(source, 'description')?.value ?? null) as ReadStratum & Said;

/** A line of `strata`. */
export const stratumFact = rememberedBelow(readStratum);
