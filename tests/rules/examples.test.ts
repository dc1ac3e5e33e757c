import { describe, expect, test } from 'vitest';
import { rules } from '../../server/rules/index.generated.ts';
import type { Example, Finding, Fix, Rule, Severity } from '../../server/rules/rule.ts';
import { findingsIn, withEdits } from './checked.ts';
import { readMarked } from './marked.ts';

/** Rules that are off are switched on for their examples. */
const switchedOn: { [rule: string]: Severity } = Object.fromEntries(
  rules.filter((rule) => rule.off).map((rule) => [rule.id, rule.severity]),
);

/** Rules about allows look at what the others report; any other rule speaks for itself. */
const runFor = (rule: Rule): readonly Rule[] => (rule.checkAllows || rule.id.startsWith('allow-') ? rules : [rule]);

const findingsOf = (rule: Rule, text: string, { own }: Example): readonly Finding[] =>
  findingsIn(text, switchedOn, runFor(rule), own ? [own] : []).filter(
    (finding) => finding.rule === rule.id || finding.rule === 'internal-error',
  );

const placesOf = (findings: readonly Finding[]): string[] =>
  findings.map(({ span, message }) => `${span.line}:${span.start}-${span.end} ${message}`);

const spansOf = (findings: readonly Finding[]) =>
  findings.map(({ span: { line, start, end } }) => ({ line, start, end }));

function likeliestFix(finding: Finding | undefined): Fix | undefined {
  const fixes = finding?.fixes?.() ?? [];
  return fixes.find(({ preferred }) => preferred) ?? fixes[0];
}

const firstLine = ({ text }: Example): string => text.slice(0, 60).replaceAll('\n', ' ⏎ ');

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test('says what it looks for, why, how to mend it and where it comes from', () => {
    for (const words of [rule.title, rule.why, rule.mend, rule.source]) expect(words.trim()).not.toBe('');
    expect(rule.flagged.length).toBeGreaterThan(0);
    expect(rule.silent.length).toBeGreaterThan(0);
  });

  test('shows what a fix does, or says why none is honest', () => {
    const shown = rule.flagged.filter(({ fixed }) => fixed !== undefined);
    const offered = rule.flagged.some(({ text, own }) =>
      findingsOf(rule, readMarked(text).text, own ? { text, own } : { text }).some(
        (finding) => (finding.fixes?.() ?? []).length > 0,
      ),
    );
    expect([shown.length > 0, rule.unfixed === undefined]).toEqual([offered, offered]);
  });

  test.each(rule.flagged.map((example) => [firstLine(example), example] as const))('reports: %s', (_, example) => {
    const { text, spans } = readMarked(example.text);
    const findings = findingsOf(rule, text, example);
    expect(spansOf(findings), placesOf(findings).join('\n')).toEqual(spans);
    if (example.fixed === undefined) return;
    const fix = likeliestFix(findings[0]);
    expect(fix && withEdits(text, fix.edits)).toBe(example.fixed);
  });

  test.each(rule.silent.map((example) => [firstLine(example), example] as const))('is silent: %s', (_, example) => {
    expect(placesOf(findingsOf(rule, example.text, example))).toEqual([]);
  });
});
