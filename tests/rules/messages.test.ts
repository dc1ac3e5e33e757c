import { describe, expect, test } from 'vitest';
import { numberText, stretchText, valueText } from '../../server/rules/messages.ts';
import { nearNames } from '../../server/rules/near-names.ts';
import { findingsIn } from './checked.ts';
import { rockWell } from './logs.ts';

const metric = { depth: 'm', diameter: 'mm', gallon: null, written: true } as const;

const messageOf = (rule: string, text: string): string =>
  findingsIn(text).find((each) => each.rule === rule)?.message ?? '';

describe('figures in messages', () => {
  test.each([
    [0.20469, '0.205'],
    [1234.5, '1235'],
    [0, '0'],
    [2, '2'],
  ])('%d to three digits', (value, text) => {
    expect(numberText(value)).toBe(text);
  });

  test('a stretch above ground, and one that is not known', () => {
    expect(stretchText(-0.45, 7.2, metric)).toBe('+0.45 – 7.2 m');
    expect(stretchText(null, 7.2, metric)).toBe('? – 7.2 m');
  });

  /* 3.785411784 L, NIST SP 811 (2008), appendix B. */
  test('a volume in the unit it was written in', () => {
    expect(valueText(0.3785411784, 'gal-us')).toBe('100 US gal');
  });
});

describe('a message gives both figures and their units', () => {
  /* π/4 (0.254² − 0.1683²) 7.2 = 0.2047 m³. */
  test('grout that is short', () => {
    const message = messageOf('grout-short', rockWell.replace('0.29 m3', '0.18 m3'));
    expect(message).toContain('0.18 m³ placed');
    expect(message).toContain('the annulus alone holds 0.205 m³ (254 mm hole, 168.3 mm casing)');
  });

  /* 6.1 + 6.1 = 12.2 m against 0.45 + 7.2 = 7.65 m. */
  test('joints that do not add up', () => {
    const message = messageOf('joints-do-not-add-up', rockWell.replace('6.1  1.55', '6.1  6.1'));
    expect(message).toContain('12.2 m');
    expect(message).toContain('7.65 m');
    expect(message).toContain('4.55 m too long');
  });

  test('names the pack whose limit it is', () => {
    expect(messageOf('mix-too-wet', rockWell.replace('w/c 0.5', 'w/c 0.7'))).toContain('(general)');
  });
});

describe('near names', () => {
  test('are those with few slips, nearest first', () => {
    expect(nearNames('intervall-gap', ['interval-overlap', 'interval-gap', 'grout-short'])).toEqual(['interval-gap']);
    expect(nearNames('generl', ['general'])).toEqual(['general']);
    expect(nearNames('zz', ['general', 'interval-gap'])).toEqual([]);
  });
});
