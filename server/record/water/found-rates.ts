import type { FileUnits, WaterFound } from '../../model/log.ts';
import { type Ingredient, measured } from '../ingredient.ts';
import { depthText } from '../words.ts';
import { depthOfFound } from './shut-off.ts';

/** The lines that count: those with a rate, and those whose rate nobody wrote and no total takes in. */
export function countedOf(found: readonly WaterFound[]): WaterFound[] {
  const told = deepestTotal(found);
  return found.filter((each) => each.rate !== null || !isWithin(each, told));
}

/** The sum of what was added, or the greatest total, m3/s. */
export function greaterOf(found: readonly WaterFound[]): number {
  let sum = 0;
  let total = 0;
  for (const { rate, rateMeans } of found) {
    if (rateMeans === 'adds') sum += rate?.value ?? 0;
    else total = Math.max(total, rate?.value ?? 0);
  }
  return Math.max(sum, total);
}

/** The deepest depth for which a total is told, m; null where there is none. */
function deepestTotal(found: readonly WaterFound[]): number | null {
  let deepest: number | null = null;
  for (const each of found) {
    const depth = depthOfFound(each);
    if (each.rateMeans !== 'total' || each.rate?.value == null || depth === null) continue;
    deepest = deepest === null ? depth : Math.max(deepest, depth);
  }
  return deepest;
}

/** Water without a rate of its own, above a depth for which a total is told, is part of that total. */
function isWithin(found: WaterFound, told: number | null): boolean {
  const depth = depthOfFound(found);
  return depth !== null && told !== null && depth <= told;
}

/** The rate of a line, with its depth in the name; `where` says more of the place. */
export function rateIngredient(found: WaterFound, units: FileUnits, where = ''): Ingredient {
  const depth = depthOfFound(found);
  const at = depth === null ? `line ${found.line + 1}` : depthText(depth, units);
  const name = found.rateMeans === 'total' ? `total down to ${at}` : `found at ${at}`;
  return measured(`${name}${where}`, found.rate, 'm3/s', found.line, `the rate of the water found at ${at}`);
}

/** The one unit in which all rates were written. */
export function commonUnit(found: readonly WaterFound[]): string | null {
  const units = new Set(found.flatMap((each) => (each.rate?.unitWritten ? [each.rate.unit] : [])));
  const [only] = units;
  return units.size === 1 && only ? only : null;
}
