import type { PlacedFill, RecordContext } from '../context.ts';
import { figureOf, type Recipe } from '../figure.ts';
import type { Figure } from '../record.ts';
import { fillName } from '../words.ts';

/** What a figure of a fill is made of, beside what the fill itself tells. */
export type FillParts = Omit<Recipe, 'id' | 'title' | 'at'>;

/** `casing.N.KIND.M.NAME`, shown at the line of the fill. */
export function figureOfFill(
  { fill, string }: PlacedFill,
  { log }: RecordContext,
  name: string,
  title: string,
  parts: FillParts,
): Figure {
  const id = `casing.${string.number}.${fill.kind}.${fill.number}.${name}`;
  return figureOf({ ...parts, id, title: `${title}, ${fillName(fill, string)}`, at: fill }, log.units);
}
