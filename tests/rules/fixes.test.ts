import { expect, test } from 'vitest';
import { rules } from '../../server/rules/index.generated.ts';
import type { Finding, Fix } from '../../server/rules/rule.ts';
import { findingsIn, withEdits } from './checked.ts';
import { readMarked } from './marked.ts';

const flagged = rules.flatMap((rule) => rule.flagged.map(({ text }) => [rule.id, readMarked(text).text] as const));

const ofRule = (rule: string, text: string): readonly Finding[] =>
  findingsIn(text).filter((each) => each.rule === rule);

const outcome = (rule: string, text: string, { title, edits }: Fix): string =>
  `${title}: ${ofRule(rule, withEdits(text, edits)).length} left in\n${withEdits(text, edits)}`;

test.each(flagged)('every fix of %s mends what it is offered for: %j', (rule, text) => {
  const findings = ofRule(rule, text);
  for (const finding of findings)
    for (const fix of finding.fixes?.() ?? [])
      expect(outcome(rule, text, fix)).toContain(`: ${findings.length - 1} left in`);
});

test('at most one fix of a finding is preferred', () => {
  for (const [, text] of flagged)
    for (const finding of findingsIn(text))
      expect((finding.fixes?.() ?? []).filter(({ preferred }) => preferred).length).toBeLessThanOrEqual(1);
});
