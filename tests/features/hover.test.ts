import { describe, expect, test } from 'vitest';
import { hover } from '../../server/features/hover.ts';
import { marked } from './fixture.ts';

const hovered = (text: string) => {
  const { snapshot, at } = marked(text);
  return hover(snapshot, at);
};

const told = (text: string): string => hovered(text)?.markdown ?? '';

const wordUnder = (text: string): string => {
  const { snapshot, at, lines } = marked(text);
  const span = hover(snapshot, at)?.span;
  return span === undefined ? '' : (lines[span.line] ?? '').slice(span.start, span.end);
};

describe('hover on terms', () => {
  test('a short form tells the long form, its meaning and its source', () => {
    const text = told('strata\n  0 - 6.1 lst br|n');
    expect(text).toContain('**brown**');
    expect(text).toContain('Source:');
    expect(wordUnder('strata\n  0 - 6.1 lst br|n')).toBe('brn');
  });

  test('an adjective tells its material', () => {
    expect(told('strata\n  0 - 6.1 sil|ty clay')).toContain('As a secondary material: silty');
  });

  test('a term of several words is one', () => {
    expect(wordUnder('casing 0 - 7.2 steel\n  grout 0 - 7.2 neat ce|ment')).toBe('neat cement');
  });
});

describe('hover on keywords and labels', () => {
  test('a keyword tells what it takes, with an example', () => {
    const text = told('casing 0 - 7.2 steel\n  sho|e 7.2');
    expect(text).toContain('the shoe at the foot of the string');
    expect(text).toContain('```drillhand\nshoe 7.2\n```');
  });

  test('a label tells its slot', () => {
    expect(told('casing 0 - 7.2 steel\n  grout 0 - 7.2 neat cement, w/|c 0.5')).toContain('water to cement by mass');
  });

  test('a pack tells its limits, their sources, and that it is no law', () => {
    const text = told('rules gen|eral');
    expect(text).toContain('not the law');
    expect(text).toMatch(/`grout-allowance`, grout beyond the bare annulus, as a share of it: .*NR 812/);
  });
});

describe('hover on values', () => {
  test('a volume in both systems and in SI', () => {
    const text = told('casing 0 - 7.2 steel\n  grout 0 - 7.2 neat cement, 0.2|9 m3');
    expect(text).toContain('**0.29 m³** = **10.24 ft³** = **76.61 US gal**');
  });

  test('a bare diameter is in the unit of the file', () => {
    expect(told('units ft in\nhole\n  0 - 20 10| air rotary')).toContain('**10 in** = **254 mm** (SI: 0.254 m)');
  });

  // ASME B36.10M: 6 in nominal pipe is 6.625 in outside.
  test('an outside diameter tells the nominal size', () => {
    expect(told('casing 0 - 7.2 steel 168.|3 x 6.4')).toContain('6 in nominal');
    expect(told('casing 0 - 7.2 steel 170 x 6.|4')).not.toContain('nominal pipe');
  });

  // ASME B36.10M: 6 in schedule 40 is 6.625 in outside with a wall of 0.280 in.
  test('a nominal size tells what it comes to', () => {
    const text = told('units ft in\ncasing 0 - 20 steel 6| sch 40');
    expect(text).toContain('outside 6.625 in = 168.28 mm; wall 0.28 in = 7.112 mm; inside 6.065 in');
  });

  test('a gallon without a name is asked about, and gets no figure', () => {
    const text = told('water\n  38.5 fresh, 25| gpm');
    expect(text).toContain('gal-us or gal-imp');
    expect(text).not.toContain('SI:');
    expect(told('units ft in gal-imp\nwater\n  38.5 fresh, 25| gpm')).toContain(
      '**25 imp. gpm** = **113.65 L/min** = **30.02 US gpm**',
    );
  });

  test('doubt is told', () => {
    expect(told('hole\n  0 - ~7.|2? 254')).toContain('approximate, to be confirmed');
    expect(told('water\n  38.5 fresh, |? L/min')).toContain('a question for the crew');
  });
});

describe('hover on depths', () => {
  const log = (line: string): string =>
    `ground 287.4 m\nstrata\n  0 - 3.8 clay\n${line}\ncasing +0.45 - 7.2 steel 168.3 x 6.4`;

  test('thickness, elevation and height against the top of the casing', () => {
    const text = told(log('  - 6|.1 sand'));
    expect(text).toContain('**6.1 m** = **20.01 ft**');
    expect(text).toContain('Interval of 2.3 m = 7.546 ft');
    expect(text).toContain('Elevation 281.3 m');
    expect(text).toContain('6.55 m = 21.49 ft below the top of the casing');
  });

  test('what is above ground has a higher elevation', () => {
    expect(told('ground 287.4 m\ncasing +0.|45 - 7.2 steel 168.3 x 6.4')).toContain('Elevation 287.85 m');
  });

  test('a level from the top of the casing is told from the ground', () => {
    const text = told('casing +0.45 - 7.2 steel 168.3 x 6.4\nwater\n  level 5.6|5 toc 2026-05-07');
    expect(text).toContain('5.2 m = 17.06 ft below ground');
  });

  test('without a ground level there is no elevation', () => {
    expect(told('strata\n  0 - 3|.8 clay')).not.toContain('Elevation');
  });
});

describe('hover on figures and findings', () => {
  const short = 'hole\n  0 - 7.2 254\ncasing 0 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n';

  // Worked by hand: π/4 (0.254² - 0.1683²) 7.2 = 0.2047 m³.
  test('the keyword tells the figures of its line, with formula and numbers', () => {
    const text = told(`${short}  gro|ut 0 - 7.2 neat cement, 0.29 m3`);
    expect(text).toMatch(/annulus volume.*: 0\.205 m³/);
    expect(text).toContain('π/4');
    expect(text).toContain('254 mm (line 2)');
    expect(text).toContain('168.3 mm (line 3)');
  });

  test('what a figure waits for is told in place of a figure', () => {
    expect(told(`${short}  gro|ut 0 - 7.2 neat cement`)).toMatch(/density.*: not known; waits for/);
  });

  test('a finding tells why, what to do, and the limit with its section', () => {
    const text = told(`${short}  grout 0 - 7.2 neat cement, 0.|1 m3`);
    expect(text).toContain('`grout-short`');
    expect(text).toContain('Why:');
    expect(text).toContain('What to do:');
    expect(text).toMatch(/Limit of `general`: .*NR 812/);
  });
});

describe('hover where there is nothing to say', () => {
  test.each(['|', 'note a|ny words', '# a com|ment', 'strata\n  0 - 3 clay  |; remark'])('%j', (text) => {
    expect(hovered(text)).toBeNull();
  });

  test('a text of the user is escaped', () => {
    expect(told('strata\n  0 - 6.1 <img|src=x>')).not.toMatch(/(?<!\\)<img/);
  });
});
