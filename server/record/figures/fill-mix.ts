import type { Formula } from '../../calculations/formula.ts';
import { bentoniteSolids, about as ofSolids } from '../../calculations/grout/bentonite-slurry.ts';
import { about as ofChips } from '../../calculations/grout/chip-fill.ts';
import { about as ofMixVolume } from '../../calculations/grout/mix-volume.ts';
import { about as ofRatio, waterCementRatio } from '../../calculations/grout/water-cement-ratio.ts';
import { about as ofPackMass } from '../../calculations/screen/pack-mass.ts';
import type { Fill } from '../../model/log.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { figureOfFill } from '../fills/figure-of-fill.ts';
import { densityFigure } from '../fills/fill-density.ts';
import { bagIngredients, solidIngredients, waterIngredient } from '../fills/fill-ingredients.ts';
import { bagsMass, dryVolume, goesInDry, isMixed, isWeighed, mixedVolume, waterOf } from '../fills/mix.ts';
import type { Ingredient } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';

/** `casing.N.grout.M.bags-volume`, `.water-cement-ratio`, `.density`, `.solids`. */
export const fillMixFigures: Family = (context) => context.fills.flatMap((placed) => figuresOf(placed, context));

function figuresOf(placed: PlacedFill, context: RecordContext): Figure[] {
  const { fill } = placed;
  const figures: Figure[] = [];
  if (isWeighed(fill) && (isMixed(fill) || goesInDry(fill))) figures.push(bagsVolumeFigure(placed, context));
  if (fill.fillClass === 'cement') figures.push(ratioFigure(placed, context));
  if (fill.fillClass === 'bentonite-slurry') figures.push(solidsFigure(placed, context));
  const density = densityFigure(placed, context);
  return density ? [...figures, density] : figures;
}

/** `.bags-volume`: what the bags of a fill make with their water. */
export function bagsVolumeFigure(placed: PlacedFill, context: RecordContext): Figure {
  const { fill } = placed;
  const mass = bagsMass(fill) ?? Number.NaN;
  const dry = goesInDry(fill);
  return figureOfFill(placed, context, 'bags-volume', 'volume that the bags make', {
    shown: 'volume',
    formula: dry ? formulaOfDry(fill) : ofMixVolume,
    ingredients: dry
      ? bagIngredients(fill)
      : [...bagIngredients(fill), waterIngredient(fill), ...solidIngredients(fill, context.log.units)],
    compute: () => (dry ? dryVolume(fill, mass) : mixedVolume(fill, mass, waterOf(fill, mass) ?? Number.NaN)),
    preferred: fill.volume?.unitWritten ? fill.volume.unit : null,
  });
}

const productOf = (parts: readonly number[]): number => parts.reduce((product, part) => product * part, 1);

const formulaOfDry = (fill: Fill): Formula =>
  fill.fillClass === 'bentonite-dry' ? ofChips : { ...ofPackMass, text: `V = m / ρb, from ${ofPackMass.text}` };

function ratioFigure(placed: PlacedFill, context: RecordContext): Figure {
  const { fill } = placed;
  const fromWater = fill.water?.value != null;
  const ingredients = fromWater ? [waterIngredient(fill), ...bagIngredients(fill)] : [waterIngredient(fill)];
  return figureOfFill(placed, context, 'water-cement-ratio', 'water to cement by mass', {
    shown: 'ratio',
    formula: fromWater ? ofRatio : { ...ofRatio, text: 'as written in the log', source: 'the log' },
    ingredients,
    compute: (water, ...parts) => (fromWater ? waterCementRatio(water, productOf(parts)) : water),
    ...(fromWater ? {} : { digits: writtenDigits(ingredients) }),
  });
}

const writtenDigits = ([first]: readonly Ingredient[]) =>
  ({ kind: 'decimals', count: Math.max(1, first?.decimals ?? 2) }) as const;

function solidsFigure(placed: PlacedFill, context: RecordContext): Figure {
  const { fill } = placed;
  const fromWater = fill.water?.value != null;
  return figureOfFill(placed, context, 'solids', 'solids of the slurry by mass', {
    shown: 'share',
    formula: fromWater ? ofSolids : { ...ofSolids, text: 'as written in the log', source: 'the log' },
    ingredients: fromWater ? [waterIngredient(fill), ...bagIngredients(fill)] : [waterIngredient(fill)],
    compute: (water, ...parts) => (fromWater ? bentoniteSolids(productOf(parts), water) : water),
  });
}
