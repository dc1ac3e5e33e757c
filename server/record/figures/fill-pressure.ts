import { about as ofPressure, pressureDifference } from '../../calculations/casing/pressure-difference.ts';
import { WATER_DENSITY } from '../../calculations/constants.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { densityFigure } from '../fills/fill-density.ts';
import { lengthOf, ofFigure, worked } from '../ingredient.ts';
import { bottomOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { fillName } from '../words.ts';
import type { Family } from './family.ts';

/** `casing.N.grout.M.pressure-difference`, with water inside, and `.pressure-difference-empty`. */
export const fillPressureFigures: Family = (context) =>
  context.fills.flatMap((placed) => {
    const density = placed.string.driven ? null : densityFigure(placed, context);
    if (!density) return [];
    return [
      figureWith(placed, context, density, 'pressure-difference', 'full of water', WATER_DENSITY),
      figureWith(placed, context, density, 'pressure-difference-empty', 'empty', 0),
    ];
  });

function figureWith(
  { fill, string }: PlacedFill,
  { log }: RecordContext,
  density: Figure,
  name: string,
  state: string,
  inside: number,
): Figure {
  const depth = Math.max(0, bottomOf(fill.interval) ?? 0);
  const grouted = fill.interval ? lengthOf('height of grout', fill.interval, fill.line, `the ${fill.kind}`) : null;
  const height = grouted ?? worked('height of grout', null, 'length', log.units);
  return figureOf(
    {
      id: `casing.${string.number}.${fill.kind}.${fill.number}.${name}`,
      title: `pressure on the casing at the foot of ${fillName(fill, string)} while it is fluid, casing ${state}`,
      shown: 'pressure',
      formula: ofPressure,
      ingredients: [
        height,
        ofFigure('density of the grout', density),
        worked(`inside, ${state}`, inside, 'density', log.units),
      ],
      compute: (metres, outside, fluid) =>
        pressureDifference([{ density: outside, height: metres }], [{ density: fluid, height: depth }]),
      at: fill,
    },
    log.units,
  );
}
