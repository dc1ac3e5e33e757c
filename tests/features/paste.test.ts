import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pastedRows } from '../../server/features/paste.ts';
import { marked } from './fixture.ts';

/** The text after a paste at the mark; null where the rows are pasted as they are. */
function after(text: string, rows: string): string | null {
  const { snapshot, at, lines } = marked(text);
  const pasted = pastedRows(snapshot, at, rows);
  if (pasted === null) return null;
  const line = lines[at.line] ?? '';
  const whole = line.slice(0, at.column - pasted.replaceBefore) + pasted.text + line.slice(at.column);
  return [...lines.slice(0, at.line), whole, ...lines.slice(at.line + 1)].join('\n');
}

describe('rows of a sheet', () => {
  test('top, base and words become layers, on the dash that waited', () => {
    expect(after('strata\n       - |', '0\t3.8\tslty cl\tbrn\n3.8\t12\tsand\t\n')).toBe(
      'strata\n  0    - 3.8    slty cl, brn\n  3.8  - 12     sand',
    );
  });

  test('headings stay as a comment, and their units are taken where they are others than the file’s', () => {
    expect(after('units m mm\nstrata\n|', 'From (ft)\tTo (ft)\tDescription\n0\t12\ttopsoil\n')).toBe(
      'units m mm\nstrata\n  # From (ft), To (ft), Description\n  0 ft - 12 ft   topsoil',
    );
    expect(after('strata\n|', 'From (m)\tTo (m)\tDescription\n0\t12\ttopsoil\n')).toContain('0    - 12     topsoil');
  });

  test('a cell that the line cannot take is kept as its remark', () => {
    expect(after('strata\n|', '0\t3\tclay\tbrown\tsticky to drill; slow\tBox 4')).toBe(
      'strata\n  0    - 3      clay, brown  ; sticky to drill; slow; Box 4',
    );
  });

  test('one depth a row is a base, and a top where the first is 0', () => {
    expect(after('strata\n|', '0.3\tts\n3.8\tcl')).toBe('strata\n       - 0.3    ts\n       - 3.8    cl');
    expect(after('strata\n|', '0\tts\n0.3\tcl')).toBe('strata\n  0    - 0.3    ts\n  0.3  - ?      cl');
  });

  test('other sections take their own lines', () => {
    expect(after('hole\n|', '0\t7.2\t254\tair rotary')).toBe('hole\n  0    - 7.2    254, air rotary');
    expect(after('test pump 40 L/min\n|', '0\t5.2\n1\t6.14')).toBe('test pump 40 L/min\n  0 5.2\n  1 6.14');
    expect(after('water\n|', 'Depth\tRate (L/min)\n38.5\t25')).toBe('water\n  # Depth, Rate (L/min)\n  38.5 25 L/min');
    expect(after('drilling air\n|', 'From\tTo\tTime (min)\n0\t6\t18')).toContain('0    - 6      18 min');
  });

  test('behind a line with something on it they begin a new one', () => {
    expect(after('strata|', '0\t3\tclay')).toBe('strata\n  0    - 3      clay');
  });

  test('cells in quotes hold line ends and quotes', () => {
    expect(after('strata\n|', '0\t3\t"clay,\nsaid ""stiff"""')).toContain(
      '0 - 3 clay, said "stiff"'.replace('0 - 3 ', ''),
    );
  });

  test.each([
    ['strata\n|', 'slty cl brn'],
    ['strata\n|', '0 - 3 clay\n- 6 sand'],
    ['well KH-04|', '0\t3\tclay'],
    ['casing 0 - 7 steel\n|', '0\t3\tclay'],
  ])('at %j the text %j is pasted as it is', (text, rows) => {
    expect(after(text, rows)).toBeNull();
  });

  test('no word or figure of any row is lost', () => {
    const cell = fc.constantFrom('0', '3.8', '12', 'clay', 'brn', 'zorgly; x', '3,8', '', 'a # b', '"q"', '0-4', '254');
    const sheet = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(sheet, fc.constantFrom('strata', 'hole', 'water', 'test', 'drilling'), (rows, section) => {
        const pasted = after(`${section}\n|`, rows.map((each) => each.join('\t')).join('\n'));
        if (pasted === null) return;
        const count = (text: string, word: string): number => text.split(word).length - 1;
        for (const word of ['clay', 'zorgly', '254', '3,8', '# b'])
          expect(count(pasted, word)).toBeGreaterThanOrEqual(rows.flat().filter((each) => each.includes(word)).length);
      }),
      { numRuns: 400 },
    );
  });
});
