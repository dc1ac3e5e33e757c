import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Finding, Severity } from '../../server/rules/rule.ts';
import { findingsIn } from './checked.ts';
import { drivenWell, rockWell, screenedWell } from './logs.ts';

const linesOf = (text: string, severities: readonly Severity[]): string[] =>
  findingsIn(text)
    .filter(({ severity }: Finding) => severities.includes(severity))
    .map(({ rule, span, message }) => `${span.line + 1} ${rule}: ${message}`);

describe('good wells stay quiet', () => {
  test('a clean domestic rock well', () => {
    expect(linesOf(rockWell, ['error'])).toEqual([]);
    expect(linesOf(rockWell, ['warning']).length).toBeLessThanOrEqual(3);
  });

  test('a sound driven well has no warning', () => {
    expect(linesOf(drivenWell, ['error', 'warning'])).toEqual([]);
  });

  test('a screened well of two strings', () => {
    expect(linesOf(screenedWell, ['error', 'warning'])).toEqual([]);
  });
});

describe('an empty or nearly empty log is no fault', () => {
  test.each(['', '\n', 'well KH-04', '# a plan', 'hole', 'strata', 'casing +0.45 - 7.2'])('%j', (text) => {
    expect(linesOf(text, ['error', 'warning'])).toEqual([]);
  });
});

const samples = readdirSync('samples').filter((name) => name.endsWith('.well'));

describe('the samples', () => {
  test.each(samples)('%s has nothing above information', (name) => {
    expect(linesOf(readFileSync(`samples/${name}`, 'utf8'), ['error', 'warning'])).toEqual([]);
  });
});
