import { helpNotLaw } from '../drawing/cautions.ts';
import { checkedFigures } from '../drawing/figures-html.ts';
import { findingsHtml, type Noticed, summaryText } from '../drawing/findings-html.ts';
import { element, section, textElement } from '../drawing/html.ts';
import { type DrawingOptions, drawingSvg, drawSheets } from '../drawing/index.ts';
import { plotsSection } from '../drawing/plots-html.ts';
import { wellName } from '../drawing/title.ts';
import { capital } from '../drawing/words.ts';
import { dueText } from '../record/due.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { ReportedFinding } from './format.ts';
import { questionListHtml, questionsFor } from './questions/index.ts';
import { tablesInBothUnits } from './record-page/both-units.ts';
import { figuresWithCautions, reckoning } from './record-page/figures.ts';
import { htmlPage } from './record-page/page.ts';
import { signatureSection } from './record-page/signatures.ts';

function headSection({ log }: WellRecord, findings: readonly Noticed[], today: string | null): string {
  const facts = [
    ...(today === null ? [] : [`Drawn up ${today}.`]),
    `Checks: ${summaryText(findings).toLowerCase()}.`,
    'Values are as they were logged; those in brackets are the same in the other system of units.',
    helpNotLaw,
  ];
  const inner = [
    textElement('h1', {}, `Record of ${wellName(log.header)}`),
    textElement('p', { class: 'facts' }, facts.join(' ')),
  ];
  return element('section', { 'data-section': 'head', 'aria-label': 'Record' }, `\n${inner.join('\n')}\n`);
}

/** What the page is told beside the record and the findings. */
export interface PageContext {
  /** Today as YYYY-MM-DD; null where nobody said. */
  readonly today: string | null;
  /** The lines of the log, to be shown beside questions about them. */
  readonly lines: readonly string[];
  readonly drawing: Partial<DrawingOptions>;
}

const noContext: PageContext = { today: null, lines: [], drawing: {} };

/** Sheets of paper to scale. */
function drawingSection(record: WellRecord, options: Partial<DrawingOptions>): string {
  const sheets = drawSheets(record, { ...options, layout: 'pages', paper: 'a4' });
  const figures = sheets.map((sheet) => element('figure', { class: 'sheet' }, `\n${drawingSvg(sheet, 'print')}`));
  return section('drawing', 'Drawing', figures.join('\n')).html;
}

function figureSection({ figures }: WellRecord, findings: readonly Noticed[]): string[] {
  if (figures.length === 0) return [];
  return [section('figures', 'Figures and cautions', figuresWithCautions(checkedFigures(figures, findings))).html];
}

const reckoningSection = ({ figures }: WellRecord): string[] =>
  figures.length === 0 ? [] : [section('reckoning', 'How the figures were reckoned', reckoning(figures)).html];

function dueSection({ due }: WellRecord, today: string | null): string[] {
  const items = due.map((each) => textElement('li', {}, `${capital(dueText(each, today))}.`));
  return items.length === 0
    ? []
    : [section('due', 'When it is due', element('ul', { class: 'due' }, items.join(''))).html];
}

function questionSection(record: WellRecord, findings: readonly ReportedFinding[], lines: readonly string[]): string[] {
  const html = questionListHtml(questionsFor(record, findings, lines));
  return html === null ? [] : [section('questions', 'Questions for the crew', html).html];
}

const tableSections = ({ log }: WellRecord): string[] =>
  tablesInBothUnits(log)
    .filter(({ id }) => id !== 'questions')
    .map(({ id, title, html }) => section(id, title, html).html);

const sections = (
  record: WellRecord,
  findings: readonly ReportedFinding[],
  { today, lines, drawing }: PageContext,
): string[] => [
  headSection(record, findings, today),
  ...tableSections(record),
  drawingSection(record, drawing),
  ...plotsSection(record, 'print').map(({ html }) => html),
  ...figureSection(record, findings),
  section('findings', 'Findings', findingsHtml(findings, false)).html,
  ...dueSection(record, today),
  ...questionSection(record, findings, lines),
  signatureSection(record.log),
  ...reckoningSection(record),
];

/**
 * The record as one HTML file in the usual order of a well record, in both systems of units, with drawing, figures and
 * their checks, findings, cautions, questions and lines to sign on; no script, nothing from outside, made for A4 paper.
 */
export function recordHtml(
  record: WellRecord,
  findings: readonly ReportedFinding[],
  context: Partial<PageContext> = {},
): string {
  return htmlPage(`Record of ${wellName(record.log.header)}`, sections(record, findings, { ...noContext, ...context }));
}
