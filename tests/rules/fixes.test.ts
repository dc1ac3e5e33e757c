import { describe, expect, test } from 'vitest';
import { rules } from '../../server/rules/index.generated.ts';
import type { Finding, Fix } from '../../server/rules/rule.ts';
import { findingsIn, withEdits } from './checked.ts';
import { readMarked } from './marked.ts';

const flagged = rules.flatMap((rule) => rule.flagged.map(({ text }) => [rule.id, readMarked(text).text] as const));

const runFor = (id: string) => (id.startsWith('allow-') ? rules : rules.filter((each) => each.id === id));

const ofRule = (rule: string, text: string): readonly Finding[] =>
  findingsIn(text, {}, runFor(rule)).filter((each) => each.rule === rule);

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

const fixesAt = (rule: string, text: string): Record<string, string> =>
  Object.fromEntries(
    ofRule(rule, text).flatMap((finding) =>
      (finding.fixes?.() ?? []).map(({ title, edits }) => [title, withEdits(text, edits)]),
    ),
  );

describe('where the notes do not decide, each way is offered', () => {
  test('a gap', () => {
    expect(fixesAt('interval-gap', 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand')).toEqual({
      'Begin this line at the base of the line above: 3.8': 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
      'End the line above where this one begins: 4.1': 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
      'Put the contact about halfway: ~3.95': 'strata\n  0 - ~3.95 clay\n  ~3.95 - 6.1 sand',
      'Log the gap as unknown: - 4.1 ?': 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand',
    });
  });

  test('an overlap', () => {
    expect(fixesAt('interval-overlap', 'strata\n  0 - 3.8 clay\n  3.5 - 6.1 sand')).toEqual({
      'Begin this line at the base of the line above: 3.8': 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
      'End the line above where this one begins: 3.5': 'strata\n  0 - 3.5 clay\n  3.5 - 6.1 sand',
      'Put the contact about halfway: ~3.65': 'strata\n  0 - ~3.65 clay\n  ~3.65 - 6.1 sand',
      'Log the depths given twice as unknown: - 3.8 ?': 'strata\n  0 - 3.5 clay\n  - 3.8  ?\n  3.8 - 6.1 sand',
    });
  });

  test('a line that lies within another has no contact to share', () => {
    expect(Object.keys(fixesAt('interval-overlap', 'strata\n  0 - 9 clay\n  3 - 6 sand'))).toEqual([
      'End the line above where this one begins: 3',
    ]);
  });

  test('a depth that is taken over keeps its doubt and its digits, and a line put in the indent', () => {
    expect(fixesAt('interval-gap', 'strata\n\t0 - ~3.80? clay\n\t4.1 - 6.1 sand')).toMatchObject({
      'Begin this line at the base of the line above: ~3.80?': 'strata\n\t0 - ~3.80? clay\n\t~3.80? - 6.1 sand',
      'Log the gap as unknown: - 4.1 ?': 'strata\n\t0 - ~3.80? clay\n\t- 4.1  ?\n\t4.1 - 6.1 sand',
    });
    // NIST SP 811: 1 ft = 0.3048 m.
    expect(fixesAt('interval-gap', 'strata\n  0 - ~3.048 clay\n  4.1 m - 6.1 m sand\n  21 ft - 9 sand')).toMatchObject({
      'Begin this line at the base of the line above: ~3.048 m':
        'strata\n  0 - ~3.048 clay\n  ~3.048 m - 6.1 m sand\n  21 ft - 9 sand',
    });
  });

  test('a hole has no ground to leave unknown', () => {
    expect(Object.keys(fixesAt('interval-overlap', 'hole\n  0 - 40 254\n  38 - 200 152'))).toHaveLength(2);
    expect(Object.keys(fixesAt('interval-gap', 'hole\n  0 - 7 254\n  9 - 200 152'))).toHaveLength(2);
  });
});

describe('a value that a finding rests on may be marked as doubtful', () => {
  test.each([
    ['6 m', '6? m'],
    ['~6', '~6?'],
    ['20 ft', '20? ft'],
    [`20'6"`, `20'6"?`],
  ])('%s becomes %s', (written, marked) => {
    const text = `hole\n  0 - 5 152\nwater\n  level ${written}`;
    const fixed = Object.values(fixesAt('level-below-bottom', text));
    expect(fixed).toEqual([text.replace(written, marked)]);
    expect(ofRule('level-below-bottom', fixed[0] ?? '')).toEqual([]);
  });

  test('and is then a question for the crew', () => {
    const asked = findingsIn('hole\n  0 - 5 152\nwater\n  level 6?').map(({ rule }) => rule);
    expect(asked).toEqual(['unresolved-question']);
  });

  test('but not a range, nor what is not known', () => {
    const text = 'hole\n  0 - 61 254\ndrilling air 9-10 m3/min 1000 kPa, pipe 89\n  7.2 - 13.2 18 min air';
    expect(Object.keys(fixesAt('uphole-velocity-low', text))).toEqual(['Mark 89 as doubtful, to ask the crew']);
  });
});

describe('what has no place is kept as a remark', () => {
  test.each([
    ['disinfection 100 mg/L, 17, 12 h', 'disinfection 100 mg/L, 12 h  ; 17'],
    ['disinfection 100 mg/L, 12 h, 17', 'disinfection 100 mg/L, 12 h  ; 17'],
  ])('%s', (text, kept) => {
    expect(fixesAt('no-place', text)).toEqual({ 'Keep "17" as a remark': kept });
  });

  test.each(['disinfection 100 mg/L, 17 ; clear', 'disinfection 100 mg/L, 17 # twice'])(
    'but not where a remark or a comment stands: %s',
    (text) => {
      expect(ofRule('no-place', text)).toHaveLength(1);
      expect(fixesAt('no-place', text)).toEqual({});
    },
  );
});
