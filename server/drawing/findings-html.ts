import { element, fromLine, lineName, textElement } from './html.ts';
import { capital } from './words.ts';

/** What a check noticed, as much of it as a page shows. */
export interface Noticed {
  readonly rule: string;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly message: string;
  readonly span: { readonly line: number };
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

/** The lines with an error or a warning on them. */
export const faultedLines = (findings: readonly Noticed[]): ReadonlySet<number> =>
  new Set(
    findings.filter(({ severity }) => severity === 'error' || severity === 'warning').map(({ span }) => span.line),
  );

function findingHtml(finding: Noticed, reachable: boolean): string {
  const { line } = finding.span;
  const severity = textElement('strong', { class: 'severity' }, capital(finding.severity));
  const rest = element('span', { class: 'message' }, lineName(line, finding.message, reachable));
  const place = textElement('span', { class: 'place' }, `line ${line + 1}, ${finding.rule}`);
  return element('li', { ...fromLine(line), 'data-severity': finding.severity }, `${severity} ${rest} ${place}`);
}

const byWeight = (a: Noticed, b: Noticed): number =>
  severities.indexOf(a.severity) - severities.indexOf(b.severity) || a.span.line - b.span.line;

/** The findings by weight, each with its line. */
export function findingsHtml(findings: readonly Noticed[], reachable: boolean): string {
  const items = [...findings].sort(byWeight).map((finding) => findingHtml(finding, reachable));
  return items.length === 0
    ? '<p>The checks found nothing.</p>'
    : element('ul', { class: 'findings' }, `\n${items.join('\n')}\n`);
}
