import type { Formula } from '../../calculations/formula.ts';
import type { WaterFound, WellLog } from '../../model/log.ts';
import { figureOf } from '../figure.ts';
import { nameOf } from '../geometry/strings.ts';
import { depthOf, type Ingredient, together } from '../ingredient.ts';
import { inDoubt, intervalInDoubt } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { commonUnit, countedOf, greaterOf, rateIngredient } from '../water/found-rates.ts';
import { depthOfFound, solidStrings, type WaterPlace, waterPlaces } from '../water/shut-off.ts';
import type { Family } from './family.ts';

const about: Formula = {
  name: 'water shut off',
  text: 'the sum of the rates of the depths that stand on that side of the strings, of a total what it adds to the rates above it; solid pipe that stays shuts off the depths between its ends, a string with screens or perforations and a lining in pieces do not',
  source: 'addition',
  range: null,
  caution:
    'What was found while drilling is no tested yield, and a string shuts water off only where its annulus is sealed.',
};

type Side = 'behind' | 'open';

/** One line of found water: where it stands, and what it adds to those above it, m3/s. */
interface Part {
  readonly found: WaterFound;
  readonly place: WaterPlace;
  readonly share: number;
}

/** `water.shut-off-rate` and `.open-rate`, where a rate of found water is written. */
export const shutOffFigures: Family = ({ log }) => {
  const { found } = log.water;
  if (found.every(({ rate }) => rate === null)) return [];
  const parts = partsOf(log);
  return [
    sideFigure('shut-off-rate', 'water found behind a string that shuts it off', 'behind', parts, log),
    sideFigure('open-rate', 'water found that remains open to the well', 'open', parts, log),
  ];
};

function sideFigure(name: string, title: string, side: Side, parts: readonly Part[], log: WellLog): Figure {
  const { found } = log.water;
  const ofSide = parts.filter(({ place }) => place.where === side);
  const told = parts.some((part) => part.found.rateMeans === 'total');
  const used = told ? parts : parts.filter(({ place }) => place.where === side || place.where === 'unknown');
  const rates = together(
    used.map((part) => ingredientOf(part, log)),
    () => ofSide.reduce((sum, { share }) => sum + share, 0),
  );
  return figureOf(
    {
      id: `water.${name}`,
      title,
      shown: 'rate',
      formula: about,
      ingredients: [withEnds(rates, log), ...addingUp(parts, found)],
      compute: (rate) => rate,
      digits: used.length > 0 ? 'sum' : { kind: 'decimals', count: 0 },
      at: ofSide[0]?.found ?? found[0] ?? null,
      preferred: commonUnit(found),
    },
    log.units,
  );
}

/** The lines that count, from the top down, each with what it adds. */
function partsOf({ water: { found }, strings }: WellLog): Part[] {
  const placeOf = waterPlaces(strings);
  const counted = new Set(countedOf(found));
  let [sum, within]: [number, WaterPlace[]] = [0, []];
  return [...found].sort(byDepth).flatMap((each): Part[] => {
    const [place, rate] = [placeOf(each), each.rate?.value ?? 0];
    if (!counted.has(each)) {
      within.push(place);
      return [];
    }
    const share = each.rateMeans === 'adds' ? rate : Math.max(0, rate - sum);
    sum += share;
    if (each.rateMeans === 'adds') return [{ found: each, place, share }];
    const ofTotal = share > 0 ? commonPlace(place, within) : place;
    within = [];
    return [{ found: each, place: ofTotal, share }];
  });
}

const byDepth = (a: WaterFound, b: WaterFound): number =>
  (depthOfFound(a) ?? Number.POSITIVE_INFINITY) - (depthOfFound(b) ?? Number.POSITIVE_INFINITY) || a.line - b.line;

/** A total takes in water above it whose own rate nobody wrote: on which side it stands is known where all agree. */
function commonPlace(place: WaterPlace, within: readonly WaterPlace[]): WaterPlace {
  if (within.every(({ where }) => where === place.where)) return place;
  return { where: 'unknown', facts: ['the rates of the water found above the depth of the total'] };
}

function ingredientOf({ found, place }: Part, { units }: WellLog): Ingredient {
  const where = place.where === 'behind' ? `behind ${nameOf(place.string)}` : 'open to the well';
  const rate = rateIngredient(found, units, place.where === 'unknown' ? '' : `, ${where}`);
  return {
    ...rate,
    waitsFor: [...rate.waitsFor, ...(place.where === 'unknown' ? place.facts : [])],
    doubtful: rate.doubtful || inDoubt(found.depth) || intervalInDoubt(found.interval),
  };
}

/** The ends of the strings decide on which side water stands; they have no part in the digits of its rate. */
function withEnds(rates: Ingredient, { strings }: WellLog): Ingredient {
  const ends = solidStrings(strings).flatMap((string) =>
    (['top', 'bottom'] as const)
      .filter((end) => string.interval[end]?.value != null)
      .map((end) => depthOf(`${end} of ${nameOf(string)}`, string.interval[end], string.line, `the ${end}`)),
  );
  return {
    ...rates,
    inputs: [...rates.inputs, ...ends.flatMap(({ inputs }) => inputs)],
    doubtful: rates.doubtful || ends.some(({ doubtful }) => doubtful),
  };
}

const tolerance = 1e-9;

/** Waits where rates are told both as added and as totals, and the two do not add up to the water found. */
function addingUp(parts: readonly Part[], found: readonly WaterFound[]): Ingredient[] {
  const sum = parts.reduce((all, { share }) => all + share, 0);
  if (Math.abs(sum - greaterOf(found)) <= tolerance * Math.max(1, sum)) return [];
  return [
    {
      ...together([], () => 0),
      value: null,
      waitsFor: ['one reckoning of the water found: what was added disagrees with the totals'],
    },
  ];
}
