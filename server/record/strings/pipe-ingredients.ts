import type { FileUnits, PipeString } from '../../model/log.ts';
import { nameOf, sizeInDoubt } from '../geometry/strings.ts';
import { type Ingredient, worked } from '../ingredient.ts';
import { pipeDensityOf } from './material-density.ts';

/** Outside diameter, m: written, or tabled for a nominal size. */
export const outsideOf = (string: PipeString, units: FileUnits): Ingredient =>
  worked('outside diameter', string.size.outsideDiameter, 'diameter', units, {
    waitsFor: [`the outside diameter of ${nameOf(string)}`],
    doubtful: sizeInDoubt(string.size),
    line: string.line,
  });

/** Wall, m: written, tabled, or from the dimension ratio. */
export const wallOf = (string: PipeString, units: FileUnits): Ingredient =>
  worked('wall', string.size.wallThickness, 'diameter', units, {
    waitsFor: [`the wall of ${nameOf(string)}`],
    doubtful: sizeInDoubt(string.size),
    line: string.line,
  });

/** Density of the pipe by its material, kg/m3. */
export function densityOfPipe(string: PipeString, units: FileUnits): Ingredient {
  const found = pipeDensityOf(string);
  const name = `density of ${string.material?.name ?? 'the pipe'}`;
  const fact = string.material ? `the density of ${string.material.name}` : `the material of ${nameOf(string)}`;
  return worked(name, found?.density ?? null, 'density', units, { waitsFor: [fact], line: null });
}
