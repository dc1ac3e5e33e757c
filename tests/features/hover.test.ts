import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analysis/index.ts';
import { hover } from '../../server/features/hover.ts';
import { readPack } from '../../server/packs/read-pack.ts';
import { marked, settings } from './fixture.ts';

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

describe('hover on what values come to', () => {
  test('a number of bags of one size tells what they weigh together', () => {
    // By hand: 9 x 40 = 360 kg; NIST SP 811: 1 lb = 0.45359237 kg.
    const text = told('casing 0 - 7.2 steel\n  grout 0 - 7.2 neat cement, 9| x 40 kg bags');
    expect(text).toContain('9 times 40 kg: 360 kg = 793.66 lb in all');
    expect(told('casing 0 - 7.2 steel\n  grout 0 - 7.2 neat cement, 9 x 40 kg ba|gs')).toContain('360 kg');
  });

  // By hand: 94 lb = 42.638 kg; 0.5 of it is 21.319 L, 5.632 US gal.
  test('a ratio of water to cement tells the water for a sack', () => {
    expect(told('casing 0 - 7.2 steel\n  grout 0 - 7.2 neat cement, w/c 0.|5')).toContain(
      '5.632 US gal to a sack of 94 lb',
    );
  });

  // By hand: 42 kPa / (1000 x 9.80665) = 4.283 m; 0.433 psi for a foot of fresh water gives 14.07 ft of 6.092 psi.
  test('the pressure of a flowing well tells how high its water would stand, with a caution', () => {
    const text = told('water\n  flowing 35 L/min, shut-in 4|2 kPa');
    expect(text).toContain('4.283 m = 14.05 ft of fresh water above the gauge');
    expect(text).toContain('Caution:');
  });

  test('a range tells both its ends', () => {
    expect(told('water\n  38.5 fresh, 20|-25 L/min')).toContain('**20 – 25 L/min** = **5.283 – 6.604 US gpm**');
  });

  // A slot number counts thousandths of an inch; 1 in is 25.4 mm.
  test('a slot is told in both systems and as its number', () => {
    const log = (units: string, slot: string): string =>
      `units ${units}\ncasing 0 - 30 steel\n  screen 20 - 30 stainless, slot ${slot}`;
    expect(told(log('ft in', '2|0'))).toContain('**0.02 in** = **0.508 mm**: 20 thousandths');
    expect(told(log('m mm', '#2|0'))).toContain('**0.508 mm** = **0.02 in**: 20 thousandths');
    expect(told(log('m mm', '0.|5'))).toContain('19.7 thousandths');
  });

  test('an outside diameter tells the metric name too', () => {
    // ASME B36.10M: 6 in is DN 150, from memory.
    expect(told('casing 0 - 7.2 steel 168.|3 x 6.4')).toContain('6 in nominal pipe (DN 150)');
  });

  test('a place tells degrees, minutes and seconds, and the meridian of its zone', () => {
    expect(told('place 44.61|28 -78.3042')).toContain('**44.6128**: 44° 36′ 46.1″ N');
    expect(told('place 44.6128 -78.30|42')).toContain('**-78.3042**: 78° 18′ 15.1″ W');
    // DMA TM 8358.2: zone 17 lies about 81° W.
    expect(told('place utm 1|7 713898 4943474')).toContain('81° W');
    expect(told('place utm 17 713|898 4943474')).not.toContain('ft');
  });

  test('the words of the units line tell what is read in them', () => {
    expect(told('units f|t in gal-imp')).toContain('A bare depth is in ft');
    expect(told('units ft i|n gal-imp')).toContain('A bare diameter is in in');
    // NIST SP 811: an imperial gallon is 4.54609 L.
    expect(told('units ft in gal-i|mp')).toContain('A gallon is 4.54609 L');
  });

  test('a period says its day once, and how long it was', () => {
    expect(told('shift 2026-05-05 07:|00 - 17:30')).toContain('Tuesday, 5 May 2026, 07:00 – 17:30 (10 h 30 min)');
    expect(told('shift 2026-05-05 22:|00 - 2026-05-06 06:00')).toContain('(8 h)');
  });

  test('a clock time in a test tells how long it was since the start', () => {
    expect(told('test pump 40 L/min, 2026-05-07 08:00\n  08:1|5 5.2')).toContain('08:15: 15 min after the start');
  });

  test('a name, an unknown word and a class symbol of a description', () => {
    expect(told('strata\n  0 - 3 limestone, Kestr|el Fm')).toContain('a name of a formation or a place');
    expect(told('strata\n  0 - 3 clay, zo|rkly')).toContain('nothing is reckoned from it');
    expect(told('strata\n  0 - 3 clay (C|L)')).toContain('Lean clay');
  });

  test('a short form tells how the whole description reads', () => {
    expect(told('strata\n  0 - 3 slty c|l brn')).toContain('The line reads: silty clay, brown');
    expect(told('strata\n  0 - 3 silty c|lay, brown')).not.toContain('The line reads');
  });

  test('a source of contamination tells how far away the packs want it', () => {
    const text = JSON.stringify({
      id: 'fen-1',
      title: 'The Fen',
      notice: 'A help, not the law.',
      limits: {},
      distances: [{ from: ['septic-tank'], least: 15, text: '15 m', source: 'Fen code', known: 'read', date: null }],
    });
    const read = readPack(text);
    const own = { packs: 'pack' in read ? [read.pack] : [], unread: [] };
    const snapshot = analyse(['rules fen-1', 'distance septic 31'], { ...settings, own }, 1);
    expect(hover(snapshot, { line: 1, column: 10 })?.markdown).toMatch(
      /as a help and not the law:\s+- septic-tank: 15 m \(Fen code, read\), `fen-1`/,
    );
    expect(hover(snapshot, { line: 0, column: 7 })?.markdown).toContain('A pack of this workspace.');
  });

  test('a keyword tells what the packs of the log ask of its line', () => {
    const text = told('rules texas-16-76\ncas|ing 0 - 20 steel 168.3 x 6.4');
    expect(text).toMatch(/`stickup-least`, least height of the casing above ground: 12 in .*`texas-16-76`/);
  });
});

describe('hover on marks', () => {
  test('each says what it means', () => {
    const value = (text: string): string => told(`water\n  38.5 fresh, ${text}`);
    expect(value('|~20 L/min')).toContain('Written as approximate.');
    expect(value('20| L/min?')).toContain('to be confirmed');
    expect(value('|<20 L/min')).toContain('Written as less than this.');
    expect(value('|>20 L/min')).toContain('Written as more than this.');
    expect(value('|?')).toContain('not known: a question for the crew');
    expect(told('began |~2026-05-04')).toBe('');
    expect(told('began 2026|-05-04?')).toContain('to be confirmed');
  });

  test('td is the bottom of the hole', () => {
    const text = told('ground 287.4 m\nhole\n  0 - 61 152\nstrata\n  0 - 12 clay\n  - t|d granite');
    expect(text).toContain('the bottom of the hole');
    expect(text).toContain('61 m = 200.13 ft below ground');
    expect(text).toContain('Interval of 49 m');
    expect(text).toContain('Elevation 226.4 m');
  });

  test('the dash tells the thickness, and where a line that begins with it begins', () => {
    expect(told('strata\n  0 |- 3.8 clay')).toBe('Interval of 3.8 m = 12.47 ft');
    expect(told('strata\n  0 - 3.8 clay\n  |- 6.1 sand')).toContain(
      'It begins at the base above: 3.8 m = 12.47 ft (line 2)',
    );
    expect(told('casing +0.9 - 7 steel\n  cut +0.9 |to +0.45')).toBe('Interval of 0.45 m = 1.476 ft');
  });

  test('an allow tells the line that it speaks for, its reason and its rule', () => {
    const above = told('strata\n# al|low unknown-term: a name\n  0 - 3 claq');
    expect(above).toContain('Silences `unknown-term` on line 3');
    expect(above).toContain('Reason: a name');
    expect(told('strata\n  0 - 3 claq # allow unknown-te|rm: a name')).toMatch(/`unknown-term`: [\s\S]*on this line/);
    expect(told('strata\n# allow unknown-te|rm: a name')).toContain('No line below');
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

  test('a level says from where it is counted, and is not told twice', () => {
    const toc = told('casing +0.45 - 7.2 steel 168.3 x 6.4\nwater\n  level 5.6|5 toc');
    expect(toc).toContain('depth below the top of the casing');
    expect(toc).not.toContain('5.65 m = 18.54 ft below the top');
    const cut = 'casing +0.9 - 7 steel\n  cut +0.9 to +0.45 2026-05-07\nwater\n  level 5.6|5 toc 2026-05-06';
    expect(told(cut)).toContain('5.2 m = 17.06 ft below the top of the casing as it was left');
    expect(told('casing +0.45 - 7.2 steel 168.3 x 6.4\nwater\n  level 5.|2')).toContain(
      '5.65 m = 18.54 ft below the top of the casing',
    );
  });

  test('an elevation rests on how good the depth and the ground are', () => {
    expect(told('ground ~287.4 m\nstrata\n  0 - 3|.8 clay')).toContain('Elevation about 283.6 m');
    expect(told('ground 287.4 m\nstrata\n  0 - 3.|8? clay')).toContain('Elevation about 283.6 m');
  });

  test('a reading of another well has no elevation here, and a drawdown is no level', () => {
    const other = 'ground 287.4 m\ntest pump 40 L/min\n  observed OW-1, r 30 m';
    expect(told(`${other}\n  10 4.|4`)).not.toContain('Elevation');
    const drawdown = told(`${other}, dd\n  10 0.|4`);
    expect(drawdown).toContain('drawdown');
    expect(drawdown).not.toContain('ground');
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
