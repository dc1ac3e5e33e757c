import type { DrilledInterval, Drilling } from '../../model/log.ts';
import type { Extent } from '../depth-window.ts';
import type { Sheet } from '../sheet.ts';
import { extentOf } from '../well/geometry.ts';

/** A stretch that was drilled in one go, in metres, with its line and the head that it stands under. */
export interface Drilled extends Extent {
  readonly interval: DrilledInterval;
  readonly head: Drilling;
  /** Penetration rate in m/s; null where the record has none. */
  readonly rate: number | null;
}

/** What was drilled, with the depths that the sheet shows of it. */
export function drilledOf({ record, log, window }: Sheet): Drilled[] {
  const rates = new Map(record.figures.map(({ id, value }) => [id, value]));
  const lines = log.drilling.flatMap((head) => head.intervals.map((interval) => ({ head, interval })));
  return lines.flatMap(({ head, interval }, index) => {
    const extent = extentOf(interval.interval, window);
    const rate = rates.get(`drilling.${index + 1}.penetration-rate`) ?? null;
    const isRate = rate !== null && Number.isFinite(rate) && rate >= 0;
    return extent === null ? [] : [{ ...extent, interval, head, rate: isRate ? rate : null }];
  });
}
