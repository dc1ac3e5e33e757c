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

const number = /\d+(?:\.\d+)?/g;

const eachNumber = (text: string, change: (written: string) => string): string[] =>
  [...text.matchAll(number)].map(
    ({ 0: written, index }) => text.slice(0, index) + change(written) + text.slice(index + written.length),
  );

const eachLineLeftOut = (text: string): string[] =>
  text.split('\n').map((_, left, lines) => lines.filter((_line, at) => at !== left).join('\n'));

/** An example with one thing changed: each number in turn, each line in turn. */
const changes: Readonly<Record<string, (text: string) => string[]>> = {
  'unknown   ': (text) => eachNumber(text, () => '?'),
  'doubled   ': (text) => eachNumber(text, (written) => String(Number(written) * 2)),
  'halved    ': (text) => eachNumber(text, (written) => String(Number(written) / 2)),
  'left out  ': eachLineLeftOut,
};

/** How many findings there are of a rule after each change, in the order of the text; `!` for a rule that fails. */
function afterChanges(rule: Rule, { text: marked, own }: Example): string[] {
  const { text } = readMarked(marked);
  if (text.length > 2000) return [];
  const running = rule.checkAllows || rule.id.startsWith('allow-') ? rules : [rule];
  const countIn = (changed: string): string => {
    const findings = findingsIn(changed, switchedOn, running, own ? [own] : []);
    if (findings.some((each) => each.rule === 'internal-error')) return '!';
    return String(findings.filter((each) => each.rule === rule.id).length);
  };
  return Object.entries(changes).map(([name, changed]) => `  ${name} ${changed(text).map(countIn).join(' ')}`);
}

describe('what each rule says of its examples is what was read and found good', () => {
  test.each(rules.map((rule) => [rule.id, rule] as const))('%s', async (id, rule) => {
    const examples = [...rule.flagged, ...rule.silent];
    const said = [
      ...rule.flagged.flatMap((example) => exampleSays(rule, example)),
      'Findings after each change of a number or a line:',
      ...examples.flatMap((example) => [shown(readMarked(example.text).text), ...afterChanges(rule, example)]),
      '',
    ].join('\n');
    await expect(said).toMatchFileSnapshot(`said/${id}.txt`);
  });
});
