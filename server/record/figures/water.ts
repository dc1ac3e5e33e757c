import type { Formula } from '../../calculations/formula.ts';
import { belowTop, elevationOf, about as ofLevels } from '../../calculations/water/levels.ts';
import { innermost, topOfCasing } from '../../model/casing-top.ts';
import type { FileUnits, WaterFound, WaterLevel, WellLog } from '../../model/log.ts';
import { figureOf } from '../figure.ts';
import { depthOf, type Ingredient, measured, together, worked } from '../ingredient.ts';
import { inDoubt } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { commonUnit, countedOf, greaterOf, rateIngredient } from '../water/found-rates.ts';
import { staticLevelOf } from '../water/static-level.ts';
import type { Family } from './family.ts';

const ofFound: Formula = {
  name: 'water found',
  text: 'the sum of what each depth adds, or the greatest total told, whichever is greater; never both added',
  source: 'addition',
  range: null,
  caution: 'What was found while drilling is no tested yield.',
};

/** `water.found-rate`, `.static-level`, `.static-level-toc`, `.static-level-elevation`. */
export const waterFigures: Family = ({ log }) => {
  const { found } = log.water;
  const figures = found.length > 0 ? [foundFigure(found, log.units)] : [];
  const level = staticLevelOf(log);
  return level ? [...figures, ...levelFigures(level, log)] : figures;
};

function foundFigure(found: readonly WaterFound[], units: FileUnits): Figure {
  const counted = countedOf(found);
  const rates = counted.map((each) => rateIngredient(each, units));
  return figureOf(
    {
      id: 'water.found-rate',
      title: 'water found',
      shown: 'rate',
      formula: ofFound,
      ingredients: [together(rates, () => greaterOf(counted))],
      compute: (rate) => rate,
      digits: 'sum',
      at: found[0] ?? null,
      preferred: commonUnit(found),
    },
    units,
  );
}

function levelFigures(level: WaterLevel, log: WellLog): Figure[] {
  const written = depthOf('level', level.level, level.line, 'the static level');
  const fromTop = level.level?.datum === 'toc';
  const bgs = { ...written, doubtful: written.doubtful || (fromTop && topInDoubt(level, log)) };
  return [
    levelFigure('', 'static level below ground', level, log, [bgs], (depth) => depth),
    levelFigure('-toc', 'static level below the top of the casing', level, log, [bgs, stickUp(level, log)], belowTop),
    levelFigure('-elevation', 'elevation of the static level', level, log, [groundOf(level, log), bgs], elevationOf),
  ];
}

const levelFigure = (
  suffix: string,
  title: string,
  level: WaterLevel,
  { units }: WellLog,
  ingredients: readonly Ingredient[],
  compute: (...values: number[]) => number,
): Figure =>
  figureOf(
    {
      id: `water.static-level${suffix}`,
      title,
      shown: 'length',
      formula: ofLevels,
      ingredients,
      compute,
      digits: 'sum',
      at: level,
      ...(suffix === '' ? { caution: null } : {}),
    },
    units,
  );

/** Height of the top of the innermost string above ground on the day of the level. */
function stickUp(level: WaterLevel, log: WellLog): Ingredient {
  const top = topOfCasing(log.strings, { moment: level.date, line: level.line });
  const string = innermost(log.strings, { moment: level.date, line: level.line });
  const facts = {
    waitsFor: ['the height of the top of the casing on that day'],
    line: string?.line ?? null,
    doubtful: topInDoubt(level, log),
  };
  const height = worked('top of casing above ground', top === null ? null : 0 - top, 'length', log.units, facts);
  const written = string?.interval.top;
  return { ...height, decimals: written?.decimals ?? null, unit: written?.unit ?? null };
}

/** True where the top of the casing on the day of a level is in doubt, as set or as cut. */
function topInDoubt({ date, line }: WaterLevel, { strings }: WellLog): boolean {
  const string = innermost(strings, { moment: date, line });
  return string !== null && [string.interval.top, ...string.cuts.map(({ to }) => to)].some(inDoubt);
}

const groundOf = (level: WaterLevel, log: WellLog): Ingredient =>
  measured('ground', log.ground?.elevation ?? null, 'm', log.ground?.line ?? level.line, 'the elevation of the ground');
