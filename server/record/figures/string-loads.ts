import { buoyedWeight, about as ofBuoyed } from '../../calculations/casing/buoyed-weight.ts';
import { hoistLoad, about as ofHoist } from '../../calculations/casing/hoist-load.ts';
import { about as ofPipeMass, pipeMass } from '../../calculations/casing/pipe-mass.ts';
import { about as ofPlastic, plasticCollapse } from '../../calculations/casing/plastic-collapse.ts';
import { HOTTEST_PVC, about as ofWarmPlastic, warmPlasticCollapse } from '../../calculations/casing/plastic-heat.ts';
import { about as ofSteel, steelCollapse } from '../../calculations/casing/steel-collapse.ts';
import { WATER_DENSITY } from '../../calculations/constants.ts';
import type { FileUnits, PipeString, WaterLevel } from '../../model/log.ts';
import type { RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { fillDensity } from '../fills/fill-density.ts';
import { nameOf } from '../geometry/strings.ts';
import { depthOf, type Ingredient, lengthOf, ofFigure, worked } from '../ingredient.ts';
import { bottomOf } from '../intervals.ts';
import type { Figure } from '../record.ts';
import { isPvc, isSteel, pipeDensityOf } from '../strings/material-density.ts';
import { densityOfPipe, outsideOf, wallOf } from '../strings/pipe-ingredients.ts';
import { yieldOf } from '../strings/pipe-strength.ts';
import { staticLevelOf } from '../water/static-level.ts';
import type { Family } from './family.ts';

/** `casing.N.mass`, `.hoist-load`, `.hoist-load-in-water`, `.collapse-resistance`, `.collapse-resistance-setting`, `.buoyed-weight-empty`, `.buoyed-weight-full`. */
export const stringLoadFigures: Family = (context) => {
  const level = staticLevelOf(context.log);
  return context.log.strings.flatMap((string) => [
    ...(isPipe(string) ? massFigures(string, level, context) : []),
    ...collapseFigures(string, context),
    ...buoyedFigures(string, context),
  ]);
};

const massFigures = (string: PipeString, level: WaterLevel | null, context: RecordContext): Figure[] => [
  massFigure(string, context),
  hoistFigure(string, context),
  hoistInWaterFigure(string, level, context),
];

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

/** The hole holds fresh water from the level written down; mud is heavier and would take more of the load. */
function hoistInWaterFigure(string: PipeString, level: WaterLevel | null, context: RecordContext): Figure {
  const { log } = context;
  const length = lengthOf('length', string.interval, string.line, nameOf(string));
  const foot = bottomOf(string.interval) ?? Number.NaN;
  return figureOf(
    {
      id: idOf(string, 'hoist-load-in-water'),
      title: `load of ${nameOf(string)} on the hoist, its foot in water`,
      shown: 'mass',
      formula: ofHoist,
      ingredients: [
        length,
        ...pipeOf(string, context),
        depthOf('water level', level?.level ?? null, level?.line ?? string.line, 'the water level in the hole'),
        worked('density of water', WATER_DENSITY, 'density', log.units),
      ],
      compute: (metres, outside, wall, density, water, fluid) => {
        const each = pipeMass(outside, wall, density);
        const wet = Math.min(metres, Math.max(0, foot - water));
        return each.ok ? hoistLoad(each.value, metres, wet, fluid, density) : each;
      },
      at: string,
    },
    log.units,
  );
}

function collapseFigures(string: PipeString, { log }: RecordContext): Figure[] {
  const common = {
    id: idOf(string, 'collapse-resistance'),
    title: `outside pressure that ${nameOf(string)} resists`,
    shown: 'pressure',
    at: string,
  } as const;
  const size = [outsideOf(string, log.units), wallOf(string, log.units)];
  if (isSteel(string)) {
    const ingredients = [...size, yieldOf(string, log.units)];
    const compute = (outside: number, wall: number, yieldStrength: number) =>
      steelCollapse(outside, wall, yieldStrength);
    return [figureOf({ ...common, formula: ofSteel, ingredients, compute }, log.units)];
  }
  if (!isPvc(string)) return [];
  const compute = (outside: number, wall: number) => plasticCollapse(outside / wall);
  const cool = figureOf(
    { ...common, title: `${common.title}, cool`, formula: ofPlastic, ingredients: size, compute },
    log.units,
  );
  return holdsCement(string) ? [cool, warmFigure(string, size, log.units)] : [cool];
}

const setsHot = new Set(['cement', 'concrete']);
const holdsCement = ({ fills }: PipeString): boolean => fills.some(({ fillClass }) => setsHot.has(fillClass ?? ''));

/** Nobody measures the heat of setting cement, so plastic is judged at the hottest that it has a figure for. */
const warmFigure = (string: PipeString, size: readonly Ingredient[], units: FileUnits): Figure =>
  figureOf(
    {
      id: idOf(string, 'collapse-resistance-setting'),
      title: `outside pressure that ${nameOf(string)} resists while cement sets, at 60 °C, the hottest that PVC has a figure for`,
      shown: 'pressure',
      formula: ofWarmPlastic,
      ingredients: size,
      compute: (outside, wall) => warmPlasticCollapse(outside / wall, HOTTEST_PVC),
      at: string,
    },
    units,
  );

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
