import { helpNotLaw } from '../drawing/cautions.ts';
import { escapeText } from '../drawing/escape.ts';
import { checkedFigures } from '../drawing/figures-html.ts';
import { findingsHtml, type Noticed, summaryText } from '../drawing/findings-html.ts';
import { element, section, textElement } from '../drawing/html.ts';
import { drawingSvg, drawWell } from '../drawing/index.ts';
import { wellName } from '../drawing/title.ts';
import { capital } from '../drawing/words.ts';
import { dueText } from '../record/due.ts';
import type { Record as WellRecord } from '../record/record.ts';
import { tablesInBothUnits } from './record-page/both-units.ts';
import { figuresWithCautions, reckoning } from './record-page/figures.ts';
import { questionsHtml } from './record-page/questions.ts';
import { signatureSection } from './record-page/signatures.ts';
import { pageStyle } from './record-page/style.ts';

/* The page loads nothing and runs nothing, whatever the record says. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

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

function drawingSection(record: WellRecord): string {
  const svg = drawingSvg(drawWell(record, { title: false }), 'print');
  return section('drawing', 'Drawing', element('figure', {}, `\n${svg}`)).html;
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

function questionSection({ log }: WellRecord): string[] {
  const html = questionsHtml(log);
  return html === null ? [] : [section('questions', 'Questions for the crew', html).html];
}

const tableSections = ({ log }: WellRecord): string[] =>
  tablesInBothUnits(log)
    .filter(({ id }) => id !== 'questions')
    .map(({ id, title, html }) => section(id, title, html).html);

const sections = (record: WellRecord, findings: readonly Noticed[], today: string | null): string[] => [
  headSection(record, findings, today),
  ...tableSections(record),
  drawingSection(record),
  ...figureSection(record, findings),
  section('findings', 'Findings', findingsHtml(findings, false)).html,
  ...dueSection(record, today),
  ...questionSection(record),
  signatureSection(record.log),
  ...reckoningSection(record),
];

/**
 * The record as one HTML file in the usual order of a well record, in both systems of units, with drawing, figures and
 * their checks, findings, cautions, questions and lines to sign on; no script, nothing from outside, made for A4 paper.
 */
export function recordHtml(record: WellRecord, findings: readonly Noticed[], today: string | null = null): string {
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeText(`Record of ${wellName(record.log.header)}`)}</title>`,
    `<style>${pageStyle}</style>`,
    '</head>',
    '<body>',
    '<main>',
    ...sections(record, findings, today),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
