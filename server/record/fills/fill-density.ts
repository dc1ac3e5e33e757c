import { mixDensity, about as ofDensity } from '../../calculations/grout/mix-density.ts';
import type { PipeString } from '../../model/log.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { figureOf } from '../figure.ts';
import { type Ingredient, measured } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import { fillName } from '../words.ts';
import { bagIngredients, solidIngredients, waterIngredient } from './fill-ingredients.ts';
import { isMixed, solidsOf, waterOf } from './mix.ts';

/** `casing.N.grout.M.density`: as written, else of the mix; null where the fill is not mixed with water. */
export function densityFigure({ fill, string }: PlacedFill, { log }: RecordContext): Figure | null {
  if (!isMixed(fill)) return null;
  const common = {
    id: `casing.${string.number}.${fill.kind}.${fill.number}.density`,
    title: `density of ${fillName(fill, string)}`,
    shown: 'density',
    at: fill,
  } as const;
  if (fill.density) {
    const ingredients = [measured('density', fill.density, 'kg/m3', fill.line, 'the density of the mix')];
    const formula = { ...ofDensity, text: 'as written in the log', source: 'the log' };
    const preferred = fill.density.unitWritten ? fill.density.unit : null;
    return figureOf({ ...common, formula, ingredients, compute: (density) => density, preferred }, log.units);
  }
  const { ingredients: parts, mass } = mixOf({ fill, string });
  const ingredients = [...parts, ...solidIngredients(fill, log.units)];
  const compute = () => mixDensity(solidsOf(fill, mass), waterOf(fill, mass) ?? Number.NaN);
  return figureOf({ ...common, formula: ofDensity, ingredients, compute }, log.units);
}

/** A ratio settles a density by itself; a volume of water needs the mass of the bags beside it. */
function mixOf({ fill }: Pick<PlacedFill, 'fill' | 'string'>): { ingredients: Ingredient[]; mass: number } {
  const water = waterIngredient(fill);
  if (fill.water?.value == null) return { ingredients: [water], mass: 1 };
  const bags = bagIngredients(fill);
  const mass = bags.reduce((product, each) => product * (each.value ?? Number.NaN), 1);
  return { ingredients: [...bags, water], mass };
}

/** The density of the heaviest grout around a string; null where nothing mixed was placed around it. */
export function fillDensity(string: PipeString, context: RecordContext): Figure | null {
  const figures = (context.fillsOf.get(string) ?? [])
    .map((placed) => densityFigure(placed, context))
    .filter((figure) => figure !== null);
  return figures.reduce<Figure | null>(
    (heaviest, figure) => ((figure.value ?? 0) > (heaviest?.value ?? -1) ? figure : heaviest),
    null,
  );
}
