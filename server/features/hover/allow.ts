import * as l10n from '@vscode/l10n';
import type { Allow } from '../../../grammar/tree.ts';
import { allowedRuleAt, lineAllowed } from '../allowed-lines.ts';
import { codeSpan, escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import { ruleById } from '../rules.ts';
import type { HoverPlace, HoverSource } from './source.ts';

/** A rule: what it looks for, why, and what to do. */
export function describeRule(id: string): string | null {
  const rule = ruleById(id);
  if (rule === undefined) return null;
  return lines([
    `${codeSpan(rule.id)}: ${escapeMarkdown(l10n.t(rule.title))}`,
    l10n.t('Why: {0}', l10n.t(rule.why)),
    l10n.t('What to do: {0}', l10n.t(rule.mend)),
    l10n.t('Source: {0}', rule.source),
  ]);
}

/** Where the allow silences its rules, and for what reason. */
function reach({ rules, reason }: Allow, { snapshot, at }: HoverPlace): string {
  const number = lineAllowed(snapshot, at.line);
  const ids = rules.map(({ id }) => codeSpan(id)).join(', ');
  if (number === null) return l10n.t('No line below says anything that {0} could be silenced on', ids);
  const where =
    number === at.line ? l10n.t('Silences {0} on this line', ids) : l10n.t('Silences {0} on line {1}', ids, number + 1);
  return lines([where, reason === '' ? null : l10n.t('Reason: {0}', escapeMarkdown(reason))]);
}

/** An `# allow`: the line that it speaks for and its reason; on the name of a rule, the rule too. */
export const hoverAllow: HoverSource = (place) => {
  const { line, at } = place;
  if (line.allow === null || !touches(line.allow, at.column)) return null;
  const named = allowedRuleAt(line, at.column);
  const { start, end } = named ?? line.allow;
  const rule = named === null ? null : describeRule(named.id);
  return { start, end, markdown: paragraphs([rule, reach(line.allow, place)]) };
};
