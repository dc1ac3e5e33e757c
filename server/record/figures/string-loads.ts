import { buoyedWeight, about as ofBuoyed } from '../../calculations/casing/buoyed-weight.ts';
import { hoistLoad, about as ofHoist } from '../../calculations/casing/hoist-load.ts';
import { about as ofPipeMass, pipeMass } from '../../calculations/casing/pipe-mass.ts';
import { about as ofPlastic, plasticCollapse } from '../../calculations/casing/plastic-collapse.ts';
import { about as ofSteel, steelCollapse } from '../../calculations/casing/steel-collapse.ts';
import { PSI, WATER_DENSITY } from '../../calculations/constants.ts';
import type { PipeString } from '../../model/log.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { fillDensity } from '../fills/fill-density.ts';
import { nameOf } from '../geometry/strings.ts';
import { type Ingredient, lengthOf, ofFigure, worked } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import { isPvc, isSteel, pipeDensityOf } from '../strings/material-density.ts';
import { densityOfPipe, outsideOf, wallOf } from '../strings/pipe-ingredients.ts';
import type { Family } from './family.ts';

/** `casing.N.mass`, `.hoist-load`, `.collapse-resistance`, `.buoyed-weight-empty`, `.buoyed-weight-full`. */
export const stringLoadFigures: Family = (context) =>
  context.log.strings.flatMap((string) => [
    ...(isPipe(string) ? [massFigure(string, context), hoistFigure(string, context)] : []),
    ...collapseFigures(string, context),
    ...buoyedFigures(string, context),
  ]);

/** Rings of concrete, brick, stone and the like are no pipe to weigh by its wall. */
const isPipe = (string: PipeString): boolean => string.material === null || pipeDensityOf(string) !== null;

function pipeOf(string: PipeString, { log }: RecordContext): Ingredient[] {
  return [outsideOf(string, log.units), wallOf(string, log.units), densityOfPipe(string, log.units)];
}

const idOf = (string: PipeString, name: string): string => `casing.${string.number}.${name}`;

function massFigure(string: PipeString, context: RecordContext): Figure {
  const length = lengthOf('length', string.interval, string.line, nameOf(string));
  return figureOf(
    {
      id: idOf(string, 'mass'),
      title: `mass of ${nameOf(string)}`,
      shown: 'mass',
      formula: { ...ofPipeMass, text: `M = m L; ${ofPipeMass.text}; L length, m; M kg` },
      ingredients: [length, ...pipeOf(string, context)],
      compute: (metres, outside, wall, density) => {
        const each = pipeMass(outside, wall, density);
        return each.ok ? each.value * metres : each;
      },
      at: string,
      caution: 'Plain pipe: couplings, welds and the shoe are not in it.',
    },
    context.log.units,
  );
}

function hoistFigure(string: PipeString, context: RecordContext): Figure {
  const length = lengthOf('length', string.interval, string.line, nameOf(string));
  return figureOf(
    {
      id: idOf(string, 'hoist-load'),
      title: `load of ${nameOf(string)} on the hoist, in air`,
      shown: 'mass',
      formula: ofHoist,
      ingredients: [length, ...pipeOf(string, context)],
      compute: (metres, outside, wall, density) => {
        const each = pipeMass(outside, wall, density);
        return each.ok ? hoistLoad(each.value, metres, 0, WATER_DENSITY, density) : each;
      },
      at: string,
    },
    context.log.units,
  );
}

/** Yield strength, Pa, of plain steel pipe where nothing better is known: 35,000 psi, ASTM A53 grade B (from memory). */
const leastYield = 35_000 * PSI;

function collapseFigures(string: PipeString, { log }: RecordContext): Figure[] {
  const common = {
    id: idOf(string, 'collapse-resistance'),
    title: `outside pressure that ${nameOf(string)} resists`,
    shown: 'pressure',
    at: string,
  } as const;
  const size = [outsideOf(string, log.units), wallOf(string, log.units)];
  if (isSteel(string)) {
    const strength = worked('yield strength, taken as 35,000 psi (A53 grade B)', leastYield, 'pressure', log.units);
    const compute = (outside: number, wall: number, yieldStrength: number) =>
      steelCollapse(outside, wall, yieldStrength);
    return [figureOf({ ...common, formula: ofSteel, ingredients: [...size, strength], compute }, log.units)];
  }
  if (!isPvc(string)) return [];
  const compute = (outside: number, wall: number) => plasticCollapse(outside / wall);
  return [figureOf({ ...common, formula: ofPlastic, ingredients: size, compute }, log.units)];
}

function buoyedFigures(string: PipeString, context: RecordContext): Figure[] {
  const density = fillDensity(string, context);
  if (!density) return [];
  return [
    buoyedFigure(string, context, density, 'empty', 0),
    buoyedFigure(string, context, density, 'full', WATER_DENSITY),
  ];
}

function buoyedFigure(
  string: PipeString,
  context: RecordContext,
  density: Figure,
  state: 'empty' | 'full',
  inside: number,
): Figure {
  const { units } = context.log;
  const fluid = state === 'full' ? 'water inside' : 'air inside';
  return figureOf(
    {
      id: idOf(string, `buoyed-weight-${state}`),
      title: `weight of ${nameOf(string)} in its grout, ${state === 'full' ? 'full of water' : 'empty'}`,
      shown: 'mass-per-length',
      formula: ofBuoyed,
      ingredients: [
        ...pipeOf(string, context),
        ofFigure('density of the grout', density),
        worked(fluid, inside, 'density', units),
      ],
      compute: (outside, wall, pipe, grout, fluidInside) => buoyedWeight(outside, wall, grout, fluidInside, pipe),
      at: string,
    },
    units,
  );
}
