import { topOfCasing } from '../model/casing-top.ts';
import type { WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import { contextOf } from './context.ts';
import { deepestOf } from './deepest.ts';
import { dueDates } from './due.ts';
import { families } from './figures/index.ts';
import { fillRecordOf } from './fills/fill-record.ts';
import type { Record } from './record.ts';
import { gapsOf } from './strings/centralizers.ts';
import { testSeries } from './tests/test-series.ts';

/** Computes every figure that a log allows. Lengths in m, everything else in the SI unit that each figure names. */
export function computeRecord(log: WellLog, limits: Limits): Record {
  const context = contextOf(log, limits);
  const top = topOfCasing(log.strings, { moment: null, line: Number.POSITIVE_INFINITY });
  const figures = families.flatMap((family) => family(context));
  return {
    log,
    figures,
    fills: context.fills.map((placed) => fillRecordOf(placed, context)),
    centralizerGaps: log.strings.flatMap((string) => {
      const gaps = gapsOf(string);
      return gaps ? [{ string: string.number, gaps }] : [];
    }),
    topOfCasing: top === null ? null : 0 - top,
    depth: deepestOf(log),
    due: dueDates(log, limits),
    tests: testSeries(log, figures),
  };
}
