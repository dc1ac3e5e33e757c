import * as l10n from '@vscode/l10n';
import { clauseAt } from '../../packs/index.ts';
import type { Finding } from '../../rules/rule.ts';
import { codeSpan, escapeMarkdown, lines } from '../markdown.ts';
import { touchesSpan } from '../position.ts';
import { ruleById } from '../rules.ts';
import { saidIn } from './pack.ts';
import type { HoverPlace, HoverSource } from './source.ts';

function limitLine(finding: Finding, { snapshot }: HoverPlace): string | null {
  const found = finding.limit ? clauseAt(snapshot.limits, finding.limit) : null;
  return found === null ? null : l10n.t('Limit of {0}: {1}', codeSpan(found.pack.id), saidIn(found.clause));
}

function describeFinding(finding: Finding, place: HoverPlace): string {
  const rule = ruleById(finding.rule);
  return lines([
    `${codeSpan(finding.rule)}: ${escapeMarkdown(finding.message)}`,
    rule === undefined ? null : l10n.t('Why: {0}', l10n.t(rule.why)),
    rule === undefined ? null : l10n.t('What to do: {0}', l10n.t(rule.mend)),
    finding.crew ? l10n.t('Ask the crew: {0}', escapeMarkdown(l10n.t(finding.crew))) : null,
    limitLine(finding, place),
    rule === undefined ? null : l10n.t('Source: {0}', rule.source),
  ]);
}

/** What the rules found at the cursor: why it matters, how to mend it, the limit's section. */
export const hoverFindings: HoverSource = (place) => {
  const found = place.snapshot.findings.filter(({ span }) => touchesSpan(span, place.at));
  const first = found[0];
  if (first === undefined) return null;
  const markdown = found.map((finding) => describeFinding(finding, place)).join('\n\n');
  return { start: first.span.start, end: first.span.end, markdown };
};
