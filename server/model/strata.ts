import type { Description, DescriptionMaterial, DescriptionQuality } from '../../grammar/terms/description.ts';
import type { Term } from '../../grammar/terms/term.ts';
import type { DescriptionValue } from '../../grammar/tree.ts';
import { intervalFromGround } from './interval.ts';
import type { Ground, MaterialPart, Stratum, TextField, Word } from './log.ts';
import { depthsIn, measureIn } from './measure.ts';
import { remembered } from './remembered.ts';
import { entryOf, itemIn, type Source, spanOf, writtenAt } from './source.ts';

const partOf = ({ term, amount }: DescriptionMaterial): MaterialPart => ({ id: term.id, name: term.name, amount });

const principalOf = (term: Term | null): MaterialPart | null =>
  term ? { id: term.id, name: term.name, amount: null } : null;

function groundOf(term: Term | null): Ground | null {
  if (!term?.ground) return null;
  const { class: groundClass, rock, fgdc } = term.ground;
  return { class: groundClass, rock, fgdc };
}

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

type Said = Pick<
  Stratum,
  | 'description'
  | 'descriptionSpan'
  | 'principal'
  | 'ground'
  | 'materials'
  | 'colours'
  | 'qualities'
  | 'symbols'
  | 'names'
  | 'unknownWords'
>;

const said = (source: Source, value: DescriptionValue): Said => {
  const { principal, materials, colours, qualities, symbols, names, unknown } = value.description;
  return {
    description: value.long,
    descriptionSpan: spanOf(source, value),
    principal: principalOf(principal),
    ground: groundOf(principal),
    materials: materials.map(partOf),
    colours: colours.map(textOf),
    qualities: qualities.map((quality) => qualityOf(source, quality)),
    symbols: symbols.map(textOf),
    names: names.map(textOf),
    unknownWords: unknown.map((word) => unknownOf(source, word)),
  };
};

const nothingSaid = (description: string): Said => ({
  description,
  descriptionSpan: null,
  principal: null,
  ground: null,
  materials: [],
  colours: [],
  qualities: [],
  symbols: [],
  names: [],
  unknownWords: [],
});

/** What a line says of the ground; a lone `?` is the description `?`. */
function descriptionOf(source: Source): Said {
  const value = itemIn(source, 'description')?.value;
  if (value?.kind === 'description') return said(source, value);
  return value?.kind === 'unknown' ? { ...nothingSaid('?'), descriptionSpan: spanOf(source, value) } : nothingSaid('');
}

function readStratum(source: Source): Stratum {
  const entry = entryOf(source);
  const interval = intervalFromGround(source);
  const grain = measureIn(source, 'grain');
  return { ...entry, interval, ...descriptionOf(source), grain, at: depthsIn(source, 'at') };
}

/** A line of `strata`. */
export const stratumFact = remembered(readStratum);
