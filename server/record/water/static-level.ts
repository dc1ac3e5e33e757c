import type { WaterLevel, WellLog } from '../../model/log.ts';
import { orderOf } from '../geometry/moments.ts';

/** The static level: the last by date, or, where no level has a date, the last written; null where there is none. */
export function staticLevelOf(log: WellLog): WaterLevel | null {
  const { levels } = log.water;
  const dated = levels.filter((level) => level.date?.date && level.date.valid);
  if (dated.length === 0) return levels.at(-1) ?? null;
  return dated.reduce((last, level) => (orderOf(last.date, level.date) === 'after' ? last : level));
}
