import { describe, expect, test } from 'vitest';
import { rules } from '../../server/rules/index.generated.ts';
import type { Example, Finding, Rule, Severity } from '../../server/rules/rule.ts';
import { findingsIn, withEdits } from './checked.ts';
import { readMarked } from './marked.ts';

const switchedOn: { [rule: string]: Severity } = Object.fromEntries(
  rules.filter((rule) => rule.off).map((rule) => [rule.id, rule.severity]),
);

const placeOf = ({ span }: { readonly span: Finding['span'] }): string =>
  `${span.line + 1}:${span.start + 1}-${span.end + 1}`;

/** Very long lines are cut, so that the files can be read. */
const shown = (text: string): string =>
  text.replace(/^(.{160}).+$/gm, (_, kept: string) => `${kept}…`).replace(/^/gm, '    ');

/** Everything that a finding says: place, severity, message, limit, related places, and what each fix makes of the text. */
const toldOf = (finding: Finding, text: string): string[] => [
  `${placeOf(finding)} ${finding.severity}: ${finding.message}`,
  ...(finding.limit === undefined ? [] : [`  limit ${finding.limit}`]),
  ...(finding.related ?? []).map((each) => `  ${placeOf(each)} ${each.message}`),
  ...(finding.fixes?.() ?? []).flatMap(({ title, preferred, safe, edits }) => [
    `  fix${preferred ? ', preferred' : ''}${safe ? ', safe' : ''}: ${title}`,
    shown(withEdits(text, edits)),
  ]),
];

function exampleSays(rule: Rule, example: Example): string[] {
  const { text } = readMarked(example.text);
  const running = rule.checkAllows || rule.id.startsWith('allow-') ? rules : [rule];
  const findings = findingsIn(text, switchedOn, running, example.own ? [example.own] : []);
  return [shown(text), ...findings.filter((each) => each.rule === rule.id).flatMap((each) => toldOf(each, text)), ''];
}

describe('what each rule says of its examples is what was read and found good', () => {
  test.each(rules.map((rule) => [rule.id, rule] as const))('%s', async (id, rule) => {
    const said = rule.flagged.flatMap((example) => exampleSays(rule, example)).join('\n');
    await expect(said).toMatchFileSnapshot(`said/${id}.txt`);
  });
});
