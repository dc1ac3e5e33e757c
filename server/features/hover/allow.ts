import { allowedRuleAt } from '../allowed-lines.ts';
import { codeSpan, escapeMarkdown, lines } from '../markdown.ts';
import { ruleById } from '../rules.ts';
import type { HoverSource } from './source.ts';

/** The rule that an `# allow` names under the cursor: what it looks for, and why. */
export const hoverAllow: HoverSource = ({ line, at }) => {
  const named = allowedRuleAt(line, at.column);
  const rule = named === null ? undefined : ruleById(named.id);
  if (named === null || rule === undefined) return null;
  const { start, end } = named;
  const markdown = lines([
    `${codeSpan(rule.id)}: ${escapeMarkdown(rule.title)}`,
    `Why: ${rule.why}`,
    `What to do instead: ${rule.mend}`,
    `Source: ${rule.source}`,
  ]);
  return { start, end, markdown };
};
