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
  readonly window: DepthWindow;
  readonly layers: PlacedLayers;
  readonly well: WellGeometry;
  readonly pumping: readonly PumpingLevel[];
}

export function sheetOf(record: WellRecord): Sheet {
  const { log } = record;
  const window = depthWindow(record);
  return {
    record,
    log,
    unit: log.units.depth,
    window,
    layers: placeLayers(log.strata, log.totalDepth),
    well: wellGeometry(log, window),
    pumping: pumpingLevels(log),
  };
}
