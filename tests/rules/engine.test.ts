import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rules } from '../../server/rules/index.generated.ts';
import type { Finding, Rule } from '../../server/rules/rule.ts';
import { findingsIn } from './checked.ts';
import { drivenWell, rockWell, screenedWell } from './logs.ts';

const gap = 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand';

const told = (findings: readonly Finding[]): string[] =>
  findings.map(
    ({ rule, severity, span, message }) => `${span.line}:${span.start}-${span.end} ${severity} ${rule} ${message}`,
  );

const idsOf = (findings: readonly Finding[]): string[] => findings.map(({ rule }) => rule);

const throwing: Rule = {
  id: 'throws',
  severity: 'error',
  title: 'throws',
  why: '',
  mend: '',
  source: '',
  flagged: [],
  silent: [],
  check: () => {
    throw new RangeError('no such depth');
  },
};

const throwingHalfway: Rule = {
  ...throwing,
  id: 'throws-halfway',
  check: function* () {
    yield { span: { line: 0, start: 0, end: 1 }, message: 'one' };
    throw new RangeError('no such depth');
  },
};

describe('a rule that fails', () => {
  test.each([throwing, throwingHalfway])('$id is one finding, and the others run', (failing) => {
    const findings = findingsIn(gap, {}, [failing, ...rules]);
    expect(idsOf(findings)).toEqual(['internal-error', 'interval-gap']);
    expect(findings[0]?.message).toContain(failing.id);
    expect(findings[0]?.message).toContain('no such depth');
  });
});

describe('severities', () => {
  test('are those of the rules unless the settings say otherwise', () => {
    expect(findingsIn(gap)[0]?.severity).toBe('warning');
    expect(findingsIn(gap, { 'interval-gap': 'error' })[0]?.severity).toBe('error');
  });

  test('off takes a rule out', () => {
    expect(idsOf(findingsIn(gap, { 'interval-gap': 'off' }))).toEqual([]);
  });

  test('a name that settings inherit is not a setting', () => {
    const named = {
      ...throwingHalfway,
      id: 'constructor',
      check: () => [{ span: { line: 0, start: 0, end: 1 }, message: 'm' }],
    };
    expect(findingsIn('strata', {}, [named])[0]?.severity).toBe('error');
  });
});

describe('order', () => {
  const field = rockWell
    .replace('0.29 m3', '0.18 m3')
    .replace('shoe          7.2', 'shoe          6.2')
    .replace('- 44.2', '4,5 - 44.2');

  test('is by place, whatever the order of the rules', () => {
    const findings = findingsIn(field);
    expect(findings.length).toBeGreaterThan(3);
    expect(told(findingsIn(field, {}, [...rules].reverse()))).toEqual(told(findings));
    const lines = findings.map(({ span }) => span.line);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
  });
});

describe('# allow', () => {
  test('on the line', () => {
    expect(idsOf(findingsIn(`${gap} # allow interval-gap: no returns`))).toEqual([]);
  });

  test('on the line above', () => {
    const text = gap.replace('  4.1', '  # allow interval-gap: no returns\n  4.1');
    expect(idsOf(findingsIn(text))).toEqual([]);
  });

  test('several above one another, each for the line below them all', () => {
    const text =
      'strata\n  0 - 3.8 clay\n  # allow interval-gap: a\n  # allow unknown-term: b\n  4.1 - 6.1 sand, grezzz';
    expect(idsOf(findingsIn(text))).toEqual([]);
  });

  test('silences no other line and no other rule', () => {
    const text =
      'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow interval-gap: a\n  6.2 - 9 gravel\n  8 - 10 clay # allow interval-gap: b';
    expect(idsOf(findingsIn(text))).toEqual(['interval-gap', 'interval-overlap', 'allow-silences-nothing']);
  });

  test('of a rule that is off is not said to silence nothing', () => {
    const text = `${gap} # allow interval-gap: no returns`;
    expect(idsOf(findingsIn(text, { 'interval-gap': 'off' }))).toEqual([]);
  });
});

describe('any text', () => {
  const seeds = [rockWell, drivenWell, screenedWell];
  const mangled = fc
    .tuple(
      fc.constantFrom(...seeds),
      fc.array(fc.tuple(fc.nat(), fc.nat(12), fc.string({ maxLength: 6 })), { maxLength: 12 }),
    )
    .map(([seed, edits]) =>
      edits.reduce((text, [at, length, put]) => {
        const place = at % (text.length + 1);
        return text.slice(0, place) + put + text.slice(place + length);
      }, seed),
    );

  test('makes no rule fail, and every finding and fix lies inside it', () => {
    fc.assert(
      fc.property(mangled, (text) => {
        const lines = text.split(/\r\n|\n|\r/);
        const inside = ({ line, start, end }: Finding['span']) =>
          start >= 0 && start <= end && end <= (lines[line]?.length ?? -1);
        for (const finding of findingsIn(text)) {
          expect(finding.rule, finding.message).not.toBe('internal-error');
          const spans = [
            finding.span,
            ...(finding.related ?? []).map(({ span }) => span),
            ...(finding.fixes?.() ?? []).flatMap(({ edits }) => edits.map(({ span }) => span)),
          ];
          expect(
            spans.filter((span) => !inside(span)),
            `${finding.rule} in ${JSON.stringify(text)}`,
          ).toEqual([]);
        }
      }),
      { numRuns: 150 },
    );
  });
});
