import type { Quantity, Value } from '../../grammar/tree.ts';
import { unitById } from '../../grammar/units.ts';
import { leadingDepth, leadingInterval } from './interval.ts';
import type { Bags, Fill, Measure } from './log.ts';
import { depthIn, measured, measureIn, unknownMeasure } from './measure.ts';
import { periodIn } from './moment.ts';
import { type Reading, rememberedBelow } from './remembered.ts';
import { entryOf, itemIn, type Source, spanOf } from './source.ts';
import { wordIn } from './words.ts';

const bagUnit = 'bags';

/** The number before the mass of one: a count, whatever unit the two share. */
const countOf = (source: Source, count: Quantity, unit: string): Measure => ({
  ...measured(source, { ...count, unit: null }, 'ratio'),
  unit,
});

function bagsOfValue(source: Source, value: Value, massEach: Measure | null): Bags | null {
  const span = spanOf(source, value);
  switch (value.kind) {
    case 'quantity':
      return { count: measured(source, value, unitById(bagUnit) ?? null), massEach, span };
    case 'product': {
      const [count, mass] = value.factors;
      return {
        count: countOf(source, count, value.counted?.id ?? bagUnit),
        massEach: measured(source, mass, null),
        span,
      };
    }
    case 'unknown':
      return { count: unknownMeasure(source, value, bagUnit), massEach, span };
    default:
      return null;
  }
}

/** Bags and the mass of one, written together or apart. */
function bagsOf(source: Source): Bags | null {
  const massEach = measureIn(source, 'bag-mass');
  const item = itemIn(source, 'bags');
  if (item) return bagsOfValue(source, item.value, massEach);
  return massEach ? { count: null, massEach, span: massEach.span } : null;
}

function fillClassOf(source: Source): string | null {
  const value = itemIn(source, 'material')?.value;
  return value?.kind === 'term' ? (value.term.fill?.class ?? null) : null;
}

function gradingOf(source: Source): Fill['grading'] {
  const value = itemIn(source, 'grading')?.value;
  return value?.kind === 'grading' ? { coarse: value.coarse, fine: value.fine } : null;
}

const reader =
  (kind: Fill['kind']) =>
  (source: Source): Fill => ({
    ...entryOf(source),
    kind,
    number: 1,
    interval: leadingInterval(source),
    depth: leadingDepth(source),
    material: wordIn(source, 'material'),
    fillClass: fillClassOf(source),
    volume: measureIn(source, 'volume'),
    bags: bagsOf(source),
    mass: measureIn(source, 'mass'),
    waterCement: measureIn(source, 'water-cement'),
    water: measureIn(source, 'water'),
    density: measureIn(source, 'density'),
    solids: measureIn(source, 'solids'),
    bentonite: measureIn(source, 'bentonite'),
    montmorillonite: measureIn(source, 'montmorillonite'),
    placement: wordIn(source, 'placement'),
    pipeFoot: depthIn(source, 'pipe-foot'),
    pressure: measureIn(source, 'pressure'),
    placed: periodIn(source, 'placed', 'to'),
    plugInside: depthIn(source, 'plug-inside'),
    returned: measureIn(source, 'returned'),
    topUp: measureIn(source, 'top-up'),
    settled: depthIn(source, 'settled'),
    grading: gradingOf(source),
    grain: measureIn(source, 'grain'),
  });

/** What stands around a string or in a hole, by its keyword. */
export const fillFacts: Readonly<Record<Fill['kind'], Reading<Fill>>> = {
  grout: rememberedBelow(reader('grout')),
  seal: rememberedBelow(reader('seal')),
  pack: rememberedBelow(reader('pack')),
  plug: rememberedBelow(reader('plug')),
  abandonment: rememberedBelow(reader('abandonment')),
};
