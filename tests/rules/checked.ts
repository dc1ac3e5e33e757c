import { parseText } from '../../grammar/index.ts';
import { buildLog } from '../../server/model/index.ts';
import { limitsFor } from '../../server/packs/index.ts';
import type { Pack } from '../../server/packs/limits.ts';
import { noFacts } from '../../server/packs/when.ts';
import { computeRecord } from '../../server/record/index.ts';
import { ruleContext } from '../../server/rules/context.ts';
import { runRules } from '../../server/rules/engine.ts';
import type { Edit, Finding, Rule, RuleContext, Severity } from '../../server/rules/rule.ts';

/** The day on which the examples of the rules are read. */
const today = '2026-12-31';

export function contextOf(text: string, own: readonly Pack[] = []): RuleContext {
  const tree = parseText(text);
  const log = buildLog(tree);
  const { limits } = limitsFor(
    log.packs.map((pack) => pack.text),
    noFacts,
    own,
  );
  return ruleContext({ tree, log, record: () => computeRecord(log, limits), limits, today });
}

/** What the rules say of a text; all of them, or those given. */
export const findingsIn = (
  text: string,
  severities: Readonly<{ [rule: string]: Severity | 'off' }> = {},
  rules?: readonly Rule[],
  own: readonly Pack[] = [],
): readonly Finding[] => runRules(contextOf(text, own), { severities }, rules);

const byPlaceBackwards = (a: Edit, b: Edit): number => b.span.line - a.span.line || b.span.start - a.span.start;

/** A text after edits that do not overlap. */
export function withEdits(text: string, edits: readonly Edit[]): string {
  const lines = text.split('\n');
  for (const { span, text: put } of [...edits].sort(byPlaceBackwards)) {
    const line = lines[span.line] ?? '';
    lines[span.line] = line.slice(0, span.start) + put + line.slice(span.end);
  }
  return lines.join('\n');
}
