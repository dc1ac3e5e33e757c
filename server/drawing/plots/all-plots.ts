import type { Record as WellRecord } from '../../record/record.ts';
import type { Drawing } from '../scene.ts';
import { groutPlot } from './grout-plot.ts';
import { testPlots } from './test-plot.ts';

/** The plots of every test, and that of the fills; none where there is nothing to plot. */
export function allPlots(record: WellRecord): Drawing[] {
  const grout = groutPlot(record);
  return [...testPlots(record), ...(grout === null ? [] : [grout])];
}
