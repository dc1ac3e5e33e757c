import { clauseAt } from '../../packs/index.ts';
import type { Finding } from '../../rules/rule.ts';
import { codeSpan, escapeMarkdown, lines } from '../markdown.ts';
import { touchesSpan } from '../position.ts';
import { ruleById } from '../rules.ts';
import { limitSource } from './pack.ts';
import type { HoverPlace, HoverSource } from './source.ts';

function limitLine(finding: Finding, { snapshot }: HoverPlace): string | null {
  const found = clauseAt(snapshot.limits, finding.limit ?? '');
  if (found === null) return null;
  const { text, address } = found.clause;
  const link = address === null ? '' : ` [Read the section](${address})`;
  return `Limit of ${codeSpan(found.pack.id)}: ${escapeMarkdown(text)} (${limitSource(found.clause)})${link}`;
}

function describeFinding(finding: Finding, place: HoverPlace): string {
  const rule = ruleById(finding.rule);
  return lines([
    `${codeSpan(finding.rule)}: ${escapeMarkdown(finding.message)}`,
    rule === undefined ? null : `Why: ${rule.why}`,
    rule === undefined ? null : `What to do: ${rule.mend}`,
    finding.crew ? `Ask the crew: ${escapeMarkdown(finding.crew)}` : null,
    limitLine(finding, place),
    rule === undefined ? null : `Source: ${rule.source}`,
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
