import type { Record as WellRecord } from '../record/record.ts';
import { element, type PageSection, section } from './html.ts';
import type { Theme } from './paints.ts';
import { allPlots } from './plots/all-plots.ts';
import { drawingSvg } from './svg.ts';

/** Plots of the tests and of the fills, under one heading; none where there is nothing to plot. */
export function plotsSection(record: WellRecord, theme: Theme): PageSection[] {
  const figures = allPlots(record).map((plot) => element('figure', { class: 'plot' }, `\n${drawingSvg(plot, theme)}`));
  return figures.length === 0 ? [] : [section('plots', 'Plots', figures.join('\n'))];
}
