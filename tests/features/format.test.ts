import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { meaningOf } from '../../grammar/write.ts';
import { formatText } from '../../server/features/format.ts';

const sample = readFileSync(new URL('../../samples/kestrel-hollow.well', import.meta.url), 'utf8');

describe('formatting', () => {
  test('writes shorthand out and lines it up', () => {
    const typed = [
      'strata',
      '0-.3 ts dk brn',
      '-3.8 slty cl brn stf sm gvl',
      '-6.1 sd&gvl gry wet',
      '-44.2 lst gry frac ; soft seam at 22',
      '-61 lst dk gry hd',
    ].join('\n');
    expect(formatText(typed)).toBe(
      [
        'strata',
        '  0    - 0.3    topsoil, dark brown',
        '       - 3.8    silty clay, brown, stiff, some gravel',
        '       - 6.1    sand and gravel, grey, wet',
        '       - 44.2   limestone, grey, fractured        ; soft seam at 22',
        '       - 61     limestone, dark grey, hard',
      ].join('\n'),
    );
  });

  test('leaves a formatted log as it is', () => {
    expect(formatText(sample)).toBe(sample);
  });

  test('keeps CRLF, and a last line without an end', () => {
    expect(formatText('strata\r\n0-3 cl')).toBe('strata\r\n  0    - 3      clay');
  });

  test.each([
    ['strata\n  0 - 1,234.5 clay', 'a number with a comma'],
    ['hole\n  0 - 9 254 152', 'a second value'],
    ['casing 0 - 9\n  shoe 9 zorgly', 'a word that no list knows'],
  ])('leaves %j as typed: %s', (text) => {
    expect(formatText(text).split('\n')[1]).toBe(text.split('\n')[1]);
  });

  test('a near miss of a keyword is not mended in silence', () => {
    expect(formatText('stratta\n0 - 3 cl')).toBe('stratta\n  0    - 3      clay');
  });

  test('places of every form keep their sign and their datum', () => {
    expect(formatText('place 44°36\'46"N 78°18\'15"W')).toBe('place     44°36\'46" -78°18\'15"');
    expect(formatText('place utm 17T 712345 4943210 nad83 accuracy 5 m')).toBe(
      'place     utm 17T 712345 4943210 NAD83, accuracy 5 m',
    );
  });
});

const pieces = [
  ...['strata', 'hole', 'casing', 'grout', 'water', 'test', 'drilling', 'shoe', 'joints', 'place', 'owner', 'note'],
  ...['0 - 3', '- 6.1', '-.3', '38.5?', '~4', '?', '+0.45', "12'6", '6-1/4"', '1,5', '1.2.3', '#10', 'td', '5.6 toc'],
  ...[
    'lst',
    'slty cl',
    'gry',
    'dk brn',
    'w/ gvl',
    'sd&gvl',
    'SM',
    'neat cement',
    'tremie',
    'steel',
    'zorgly',
    'air+water',
  ],
  ...[
    '40 L/min',
    '0.29 m3',
    '9 x 40 kg bags',
    '168.3 x 6.4',
    '20 gpm',
    '2026-05-04 08:15',
    'w/c 0.5',
    'intake 50',
    '1h30',
  ],
  ...['; a remark', '# a comment', '# allow interval-gap: known', ',', '-', '+', '"text', '½', '–'],
];

const line = fc.array(fc.constantFrom(...pieces), { maxLength: 6 }).map((each) => each.join(' '));
const log = fc.array(line, { maxLength: 14 }).map((each) => each.join('\n'));

describe('formatting any text', () => {
  test('formatting twice is formatting once', () => {
    fc.assert(
      fc.property(log, (text) => formatText(formatText(text)) === formatText(text)),
      { numRuns: 1500 },
    );
  });

  test('the meaning of every line stays', () => {
    fc.assert(
      fc.property(log, (text) => {
        const before = parseText(text).lines;
        const after = parseText(formatText(text)).lines;
        expect(after.map(meaningWithoutDash)).toEqual(before.map(meaningWithoutDash));
      }),
      { numRuns: 1500 },
    );
  });

  test('no letter or digit of a line that is not understood is lost', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        const single = text.replace(/[\r\n]/g, ' ');
        const problems = parseText(single).lines[0]?.problems ?? [];
        if (problems.length > 0) expect(formatText(single).trim()).toBe(single.trim());
      }),
    );
  });
});

const meaningWithoutDash = (each: Parameters<typeof meaningOf>[0]): string =>
  meaningOf({ ...each, problems: each.problems.filter((problem) => problem.code !== 'interval-without-dash') });
