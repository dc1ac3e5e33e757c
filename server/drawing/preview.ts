import type { Record as WellRecord } from '../record/record.ts';
import { cautionsOf, helpNotLaw } from './cautions.ts';
import { figuresHtml } from './figures-html.ts';
import { element, fromLine, section, textElement } from './html.ts';
import type { Theme } from './paints.ts';
import { type DrawOptions, drawWell } from './scene.ts';
import { drawingSvg } from './svg.ts';
import { recordTables } from './tables/record-tables.ts';
import { tableHtml } from './tables/table-html.ts';
import { wellName } from './title.ts';
import { capital } from './words.ts';

/** What a check noticed, as much of it as a page shows. */
export interface Noticed {
  readonly rule: string;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly message: string;
  readonly span: { readonly line: number };
}

export interface PreviewOptions {
  /** `editor` for the page beside the text, `print` for a page that stands alone. */
  readonly theme: Theme;
  readonly drawing: Partial<DrawOptions>;
}

const severityWords: Readonly<{ [S in Noticed['severity']]: readonly [one: string, many: string] }> = {
  error: ['error', 'errors'],
  warning: ['warning', 'warnings'],
  information: ['for information', 'for information'],
  hint: ['hint', 'hints'],
};
const severities = Object.keys(severityWords) as Noticed['severity'][];

function countText(findings: readonly Noticed[], severity: Noticed['severity']): string {
  const count = findings.filter((finding) => finding.severity === severity).length;
  const [one, many] = severityWords[severity];
  return `${count === 0 ? 'no' : count} ${count === 1 ? one : many}`;
}

/** How many findings there are, in words. */
export function summaryText(findings: readonly Noticed[]): string {
  const lesser = (['information', 'hint'] as const).filter((severity) =>
    findings.some((each) => each.severity === severity),
  );
  return capital(
    [...(['error', 'warning'] as const), ...lesser].map((severity) => countText(findings, severity)).join(', '),
  );
}

function summarySection({ log }: WellRecord, findings: readonly Noticed[]): string {
  const line = log.header.well?.span.line ?? null;
  const name = textElement('h1', { 'data-line': line }, wellName(log.header));
  const counts = textElement('p', { 'data-summary': '', class: 'summary' }, `${summaryText(findings)}.`);
  return element('section', { 'data-section': 'summary', 'aria-label': 'Summary' }, `\n${name}\n${counts}\n`);
}

function drawingSection(record: WellRecord, { theme, drawing }: PreviewOptions): string {
  const svg = drawingSvg(drawWell(record, { title: false, ...drawing }), theme);
  return section('drawing', 'Drawing', element('figure', { class: 'drawing' }, `\n${svg}`));
}

const tableSections = ({ log }: WellRecord, reachable: boolean): string[] =>
  recordTables(log).map(({ id, title, tables }) =>
    section(id, title, tables.map((table) => tableHtml(table, reachable)).join('\n')),
  );

const figureSection = ({ figures }: WellRecord, reachable: boolean): string[] =>
  figures.length === 0 ? [] : [section('figures', 'Computed figures', figuresHtml(figures, reachable))];

function findingHtml(finding: Noticed, reachable: boolean): string {
  const severity = textElement('strong', { class: 'severity' }, capital(finding.severity));
  const rest = textElement('span', { class: 'message' }, finding.message);
  const place = textElement('span', { class: 'place' }, `line ${finding.span.line + 1}, ${finding.rule}`);
  return element(
    'li',
    { ...fromLine(finding.span.line, reachable), 'data-severity': finding.severity },
    `${severity} ${rest} ${place}`,
  );
}

const byWeight = (a: Noticed, b: Noticed): number =>
  severities.indexOf(a.severity) - severities.indexOf(b.severity) || a.span.line - b.span.line;

function findingsSection(findings: readonly Noticed[], reachable: boolean): string {
  const items = [...findings].sort(byWeight).map((finding) => findingHtml(finding, reachable));
  const list =
    items.length === 0
      ? '<p>The checks found nothing.</p>'
      : element('ul', { class: 'findings' }, `\n${items.join('\n')}\n`);
  return section('findings', 'Findings', list);
}

function cautionsSection({ figures }: WellRecord, reachable: boolean): string {
  const items = cautionsOf(figures).map((caution) => {
    const about = textElement('span', { class: 'place' }, caution.figures.join(', '));
    return element('li', fromLine(caution.line, reachable), `${textElement('span', {}, caution.text)} ${about}`);
  });
  const list = items.length === 0 ? '' : element('ul', { class: 'cautions' }, `\n${items.join('\n')}\n`);
  return section('cautions', 'Cautions', `${textElement('p', {}, helpNotLaw)}\n${list}`);
}

/**
 * The inside of a page: summary, drawing, tables in the order of a well record, figures, findings, cautions. Each is one
 * top-level `section` with a `data-section` of its own. All text is escaped; there is no script, and in the editor's
 * theme no style element or attribute.
 */
export function previewBody(
  record: WellRecord,
  findings: readonly Noticed[],
  options: Partial<PreviewOptions> = {},
): string {
  const known: PreviewOptions = { theme: 'editor', drawing: {}, ...options };
  const reachable = known.theme === 'editor';
  return [
    summarySection(record, findings),
    drawingSection(record, known),
    ...tableSections(record, reachable),
    ...figureSection(record, reachable),
    findingsSection(findings, reachable),
    cautionsSection(record, reachable),
    '',
  ].join('\n');
}
