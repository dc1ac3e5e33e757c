import type { Record as WellRecord } from '../record/record.ts';
import { cautionsHtml } from './cautions-html.ts';
import { checkedFigures, figuresHtml } from './figures-html.ts';
import { findingsHtml, type Noticed, summaryText } from './findings-html.ts';
import { element, type PageSection, section, textElement } from './html.ts';
import { plotsSection } from './plots-html.ts';
import { drawWell } from './scene.ts';
import { type SheetWishes, sheetsFor } from './sheets.ts';
import { drawingSvg } from './svg.ts';
import { recordTables } from './tables/record-tables.ts';
import { tableHtml } from './tables/table-html.ts';
import { wellName } from './title.ts';

const noWishes: SheetWishes = { hidden: [], widthMm: null };

function summarySection({ log }: WellRecord, findings: readonly Noticed[]): PageSection {
  const line = log.header.well?.span.line ?? null;
  const name = textElement('h1', { 'data-line': line }, wellName(log.header));
  const counts = textElement('p', { 'data-summary': '', class: 'summary' }, `${summaryText(findings)}.`);
  return {
    id: 'summary',
    html: element('section', { 'data-section': 'summary', 'aria-label': 'Summary' }, `\n${name}\n${counts}\n`),
  };
}

function drawingSection(record: WellRecord, wishes: SheetWishes): PageSection {
  const figures = sheetsFor(wishes).map((sheet) => {
    const svg = drawingSvg(drawWell(record, { title: false, ...sheet }), 'editor');
    return element('figure', { class: 'drawing' }, `\n${svg}`);
  });
  return section('drawing', 'Drawing', figures.join('\n'));
}

const tableSections = ({ log }: WellRecord): PageSection[] =>
  recordTables(log).map(({ id, title, tables }) => section(id, title, tables.map(tableHtml).join('\n')));

const figureSection = ({ figures }: WellRecord, findings: readonly Noticed[]): PageSection[] =>
  figures.length === 0 ? [] : [section('figures', 'Computed figures', figuresHtml(checkedFigures(figures, findings)))];

/**
 * What the preview beside the text shows: summary, drawing, tables in the order of a well record, figures, findings,
 * cautions. All text is escaped; there is no script, no style element and no style attribute.
 */
export const previewSections = (
  record: WellRecord,
  findings: readonly Noticed[],
  wishes: SheetWishes = noWishes,
): PageSection[] => [
  summarySection(record, findings),
  drawingSection(record, wishes),
  ...plotsSection(record, 'editor'),
  ...tableSections(record),
  ...figureSection(record, findings),
  section('findings', 'Findings', findingsHtml(findings, true)),
  section('cautions', 'Cautions', cautionsHtml(record.figures)),
];
