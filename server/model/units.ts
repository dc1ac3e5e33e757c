import type { Tree } from '../../grammar/tree.ts';
import { unitBySpelling } from '../../grammar/units.ts';
import type { FileUnits } from './log.ts';

/** What a file counts in where it does not say. */
export const defaultUnits: FileUnits = { depth: 'm', diameter: 'mm', gallon: null, written: false };

const depthUnits = ['m', 'ft'];
const diameterUnits = ['mm', 'cm', 'in'];
const gallons = ['gal-us', 'gal-imp'] as const;

const firstOf = <T extends string>(ids: readonly string[], allowed: readonly T[]): T | null =>
  allowed.find((each) => each === ids.find((id) => allowed.some((one) => one === id))) ?? null;

/** The units that the words of a `units` line say; one that is left out goes with the other. */
export function unitsOfWords(words: readonly string[]): FileUnits {
  const ids = words.map((word) => unitBySpelling(word)?.id ?? word.toLowerCase());
  const depth = firstOf(ids, depthUnits);
  const diameter = firstOf(ids, diameterUnits);
  return {
    depth: depth ?? (diameter === 'in' ? 'ft' : 'm'),
    diameter: diameter ?? (depth === 'ft' ? 'in' : 'mm'),
    gallon: firstOf(ids, gallons),
    written: true,
  };
}

/** The units of a file: those of its first `units` line that says something. */
export function fileUnits(tree: Tree): FileUnits {
  for (const line of tree.lines) {
    if (line.row !== 'units' || line.items.length === 0) continue;
    return unitsOfWords(line.items.flatMap(({ value }) => (value.kind === 'text' ? value.text.split(/\s+/) : [])));
  }
  return defaultUnits;
}
