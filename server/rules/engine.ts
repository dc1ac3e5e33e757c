import * as l10n from '@vscode/l10n';
import { applyAllows } from './allows.ts';
import { doubtFixes, isAsked } from './doubts.ts';
import { folderRules } from './folder/index.ts';
import { rules as allRules } from './index.generated.ts';
import type { Finding, Report, Rule, RuleContext, Severity } from './rule.ts';

export interface RuleSettings {
  readonly severities: Readonly<{ [rule: string]: Severity | 'off' }>;
}

/** The id under which a rule that failed is reported. */
export const internalError = 'internal-error';

const chosen = ({ severities }: RuleSettings, id: string): Severity | 'off' | undefined =>
  Object.hasOwn(severities, id) ? severities[id] : undefined;

const isOff = (rule: Rule, settings: RuleSettings): boolean =>
  (chosen(settings, rule.id) ?? (rule.off ? 'off' : rule.severity)) === 'off';

const failure = (rule: Rule, error: unknown): Finding => ({
  rule: internalError,
  severity: 'warning',
  span: { line: 0, start: 0, end: 0 },
  message: l10n.t(
    'the rule {0} failed and was left out: {1}; the other rules were run',
    rule.id,
    error instanceof Error ? error.message : String(error),
  ),
});

/** A report with the fixes that mark its values as doubtful after its own. */
const withDoubts = (report: Report): Report =>
  report.doubts ? { ...report, fixes: () => [...(report.fixes?.() ?? []), ...doubtFixes(report)] } : report;

/** Runs one rule to its end; one that throws gives a single finding that says so. */
function findingsOf(rule: Rule, reports: () => Iterable<Report>, settings: RuleSettings): Finding[] {
  const setting = chosen(settings, rule.id);
  try {
    return [...reports()]
      .filter((report) => !isAsked(report))
      .map((report) => ({
        ...withDoubts(report),
        rule: rule.id,
        crew: rule.crew ?? null,
        severity: setting && setting !== 'off' ? setting : (report.severity ?? rule.severity),
      }));
  } catch (error) {
    return [failure(rule, error)];
  }
}

const inOrder = (a: Finding, b: Finding): number =>
  a.span.line - b.span.line ||
  a.span.start - b.span.start ||
  (a.rule === b.rule ? 0 : a.rule < b.rule ? -1 : 1) ||
  a.span.end - b.span.end ||
  (a.message < b.message ? -1 : 1);

/** What the rules say of a log: by place, whatever the order in which they ran. Never throws. */
export function runRules(
  context: RuleContext,
  settings: RuleSettings,
  rules: readonly Rule[] = allRules,
): readonly Finding[] {
  const running = rules.filter((rule) => !isOff(rule, settings));
  const runningIds = new Set(running.map((rule) => rule.id));
  // An allow may speak to a rule of the folder, which is run elsewhere: it counts as one that is off here.
  const ids = [...rules, ...folderRules].map((rule) => rule.id);
  const knownIds = new Set(ids).add(internalError);
  const found = running.flatMap((rule) => findingsOf(rule, () => rule.check(context), settings));
  const isKnown = (id: string) => knownIds.has(id);
  const { kept, uses } = applyAllows(context.tree, found, isKnown, (id) => isKnown(id) && !runningIds.has(id));
  const ofAllows = running.flatMap((rule) => findingsOf(rule, () => rule.checkAllows?.(uses, ids) ?? [], settings));
  return [...kept, ...ofAllows].sort(inOrder);
}
