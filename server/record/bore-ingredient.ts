import type { FileUnits } from '../model/log.ts';
import { plainText, show } from './display.ts';
import type { Layer } from './geometry/layers.ts';
import { type BoreVolume, boreVolume, volumeOf, type Wall } from './geometry/open-bore.ts';
import type { Ingredient } from './ingredient.ts';
import type { Stretch } from './intervals.ts';
import type { FigureInput } from './record.ts';
import { stretchText } from './words.ts';

const mostShown = 12;

/** The volume of the open bore along a stretch, m3, with the diameters that it comes from. */
export function boreIngredient(bore: readonly Layer<Wall>[], stretch: Stretch, units: FileUnits): Ingredient {
  const found = boreVolume(bore, stretch);
  return {
    value: found.known ? found.volume : null,
    inputs: found.known ? inputsOf(found.walls, units) : [],
    waitsFor: factsOf(found, units),
    doubtful: found.known && found.walls.some((wall) => wall.of.doubtful),
    significant: 3,
    decimals: null,
    unit: null,
  };
}

const inputsOf = (walls: readonly Layer<Wall>[], units: FileUnits): FigureInput[] => [
  ...walls.slice(0, mostShown).map((wall) => inputOf(wall, units)),
  ...restInput(walls.slice(mostShown), units),
];

/** The stretches that are not shown one by one, together. */
function restInput(walls: readonly Layer<Wall>[], units: FileUnits): FigureInput[] {
  const [first] = walls;
  if (!first) return [];
  const value = walls.reduce((sum, { top, bottom, of }) => sum + volumeOf(of, bottom - top), 0);
  const { text } = show(value, 'volume', units);
  return [{ name: `${walls.length} more stretches, together`, value, unit: 'm3', text, line: first.of.line }];
}

const inputOf = (wall: Layer<Wall>, units: FileUnits) => ({
  name: `${wall.of.name === 'hole' ? 'hole' : `inside of ${wall.of.name}`}, ${stretchText(wall, units)}`,
  value: wall.of.diameter,
  unit: 'm',
  text: plainText(wall.of.diameter ?? 0, 'diameter', units),
  line: wall.of.line,
});

const factsOf = (found: BoreVolume, units: FileUnits): string[] =>
  found.known
    ? []
    : found.missing.map((stretch) => {
        const what = stretch.name === 'hole' ? 'the diameter of the hole' : `the inside diameter of ${stretch.name}`;
        return `${what}, ${stretchText(stretch, units)}`;
      });
