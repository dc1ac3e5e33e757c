import { granulesDose, about as ofGranules } from '../../calculations/disinfection/granules-dose.ts';
import {
  HYPOCHLORITE_5_RELATIVE_DENSITY,
  HYPOCHLORITE_12_RELATIVE_DENSITY,
  liquidDose,
  about as ofLiquid,
} from '../../calculations/disinfection/liquid-dose.ts';
import { about as ofVolume } from '../../calculations/geometry/annulus-volume.ts';
import type { Disinfection, WellLog } from '../../model/log.ts';
import { boreIngredient } from '../bore-ingredient.ts';
import type { RecordContext } from '../context.ts';
import { figureOf, type Recipe } from '../figure.ts';
import { openBore } from '../geometry/open-bore.ts';
import { depthOf, measured, ofFigure, worked } from '../ingredient.ts';
import { bottomOf, intervalInDoubt } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { staticLevelOf } from '../water/static-level.ts';
import type { Family } from './family.ts';

/**
 * `disinfection.water-volume`, and for the strength last written `.hypochlorite-12`, `.hypochlorite-5` (labelled by
 * volume), `.hypochlorite-12-by-weight`, `.hypochlorite-5-by-weight`, `.granules-65`.
 */
export const disinfectionFigures: Family = (context) => {
  const { disinfections } = context.log;
  const at = disinfections.findLast((each) => each.strength !== null) ?? disinfections.at(-1);
  if (!at) return [];
  const water = waterFigure(at, context);
  return [water, ...doses.map((dose) => doseFigure(dose, at, water, context.log))];
};

function waterFigure(at: Disinfection, { log, hole }: RecordContext): Figure {
  const level = staticLevelOf(log);
  const top = depthOf('static level', level?.level ?? null, level?.line ?? at.line, 'the static level');
  const bottom = worked('depth of the hole', log.totalDepth, 'length', log.units, {
    waitsFor: ['the depth of the hole'],
    doubtful: log.hole.some(({ interval }) => bottomOf(interval) === log.totalDepth && intervalInDoubt(interval)),
  });
  const ready = top.value !== null && bottom.value !== null;
  const stretch = { top: Math.max(0, top.value ?? 0), bottom: bottom.value ?? 0 };
  return figureOf(
    {
      id: 'disinfection.water-volume',
      title: 'water standing in the well',
      shown: 'volume',
      formula: {
        ...ofVolume,
        text: 'V = ∑ π/4 D² Δz from the static level to the bottom; D inside of the string or of the hole, m; V m³',
      },
      ingredients: [top, bottom, ...(ready ? [boreIngredient(openBore(log, hole), stretch, log.units)] : [])],
      compute: (_top, _bottom, volume) => volume,
      at,
      caution: 'Water in a filter pack or in fractures is not in it.',
    },
    log.units,
  );
}

interface Dose {
  readonly id: string;
  readonly title: string;
  readonly available: number;
  /** Relative density to reckon with; 1 for a label by volume (g in 100 mL), null for granules. */
  readonly relativeDensity: number | null;
}

const doses: readonly Dose[] = [
  { id: 'hypochlorite-12', title: 'hypochlorite of 12 % by volume', available: 0.12, relativeDensity: 1 },
  {
    id: 'hypochlorite-12-by-weight',
    title: 'hypochlorite of 12 % by weight',
    available: 0.12,
    relativeDensity: HYPOCHLORITE_12_RELATIVE_DENSITY,
  },
  { id: 'hypochlorite-5', title: 'hypochlorite of 5 % by volume', available: 0.05, relativeDensity: 1 },
  {
    id: 'hypochlorite-5-by-weight',
    title: 'hypochlorite of 5 % by weight',
    available: 0.05,
    relativeDensity: HYPOCHLORITE_5_RELATIVE_DENSITY,
  },
  { id: 'granules-65', title: 'hypochlorite granules of 65 %', available: 0.65, relativeDensity: null },
];

function doseFigure(
  { id, title, available, relativeDensity }: Dose,
  at: Disinfection,
  water: Figure,
  { units }: WellLog,
): Figure {
  const liquid = relativeDensity !== null;
  const density = liquid ? [worked('relative density', relativeDensity, 'ratio', units)] : [];
  const recipe: Recipe = {
    id: `disinfection.${id}`,
    title: `${title} for the strength written`,
    shown: liquid ? 'small-volume' : 'small-mass',
    formula: liquid ? ofLiquid : ofGranules,
    ingredients: [
      ofFigure('water standing in the well', water),
      measured('strength', at.strength, 'kg/m3', at.line, 'the strength of the disinfection'),
      worked('available chlorine', available, 'share', units),
      ...density,
    ],
    compute: liquid ? liquidDose : granulesDose,
    at,
  };
  return figureOf(recipe, units);
}
