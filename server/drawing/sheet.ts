import type { WellLog } from '../model/log.ts';
import type { Record as WellRecord } from '../record/record.ts';
import { type DepthWindow, depthWindow } from './depth-window.ts';
import { type PlacedLayers, placeLayers } from './layers.ts';
import { type WellGeometry, wellGeometry } from './well/geometry.ts';
import { type PumpingLevel, pumpingLevels } from './well/pumping-level.ts';

/** What every column of one drawing shares. */
export interface Sheet {
  readonly record: WellRecord;
  readonly log: WellLog;
  /** The file's unit of depth. */
  readonly unit: string;
  /** All depths of the log, and those that are shown. */
  readonly whole: DepthWindow;
  readonly window: DepthWindow;
  readonly layers: PlacedLayers;
  readonly well: WellGeometry;
  readonly pumping: readonly PumpingLevel[];
}

/** The whole of a log; with `shown` the stretch of it that one page shows, drawn as wide as on the other pages. */
export function sheetOf(record: WellRecord, shown: DepthWindow | null = null): Sheet {
  const { log } = record;
  const whole = depthWindow(record);
  const window = shown ?? whole;
  return {
    record,
    log,
    unit: log.units.depth,
    whole,
    window,
    layers: placeLayers(log.strata, log.totalDepth),
    well: wellGeometry(log, whole, window),
    pumping: pumpingLevels(log),
  };
}
