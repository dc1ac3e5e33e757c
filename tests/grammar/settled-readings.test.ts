import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { readings } from './reading.ts';

/**
 * Where two readings of a line are possible, the reference settles one. Each case is the text (the line under test
 * after `>`) and the reading; the numbers are those of grammar/README.md, "Settled readings".
 */
const cases: readonly [rule: number, text: string, reading: string][] = [
  [1, `hole\n>0'-6"`, 'hole.line | 0 ft to 6 in'],
  [1, `strata\n>65'10" - 70' clay`, 'strata.line | 65.833333 ft to 70 ft | description: "clay"'],
  [1, `strata\n>12'6 - 20' clay`, 'strata.line | 12.5 ft to 20 ft | description: "clay"'],
  [1, `strata\n>12'6'' - 20' clay`, 'strata.line | 12.5 ft to 20 ft | description: "clay"'],
  [1, 'strata\n>12 ft 6 in - 20 ft clay', 'strata.line | 12.5 ft to 20 ft | description: "clay"'],
  [1, 'hole\n>- 12 ft 9 in 8 in', 'hole.line | … to 12.75 ft | diameter: 8 in'],
  [1, `casing 0 - 20\n>centralizers 12', 6'`, 'centralizers |  | positions: 12 ft, 6 ft'],
  [1, `>photo 3 "one; two.jpg"`, "photo | 3 | file: 'one; two.jpg'"],
  [1, `casing 0 - 9\n>shoe 7.2 driller's`, "shoe | 7.2 |  | unknown-term <driller's>"],
  [2, 'hole\n>0 - 20 6 1/4 in', 'hole.line | 0 to 20 | diameter: 6.25 in'],
  [2, 'hole\n>0 - 20 6-1/4"', 'hole.line | 0 to 20 | diameter: 6.25 in'],
  [2, 'hole\n>0 - 20 6½"', 'hole.line | 0 to 20 | diameter: 6.5 in'],
  [2, 'hole\n>0 - 20 m 15/16 in', 'hole.line | 0 m to 20 m | diameter: 0.9375 in'],
  [2, 'casing 0 - 9\n>pack 2 - 9 20/40 sand', 'pack | 2 to 9 | grading: grading 20/40; material: sand'],
  [2, 'strata\n>0 - 3 clay 5/7/26', 'strata.line | 0 to 3 | description: "clay" | bad-date <5/7/26>'],
  [2, 'hole\n>0 - 3 254 4/8', 'hole.line | 0 to 3 | diameter: 254 | bad-ratio <4/8>'],
  [3, '>place 44.6128 -78.3042', 'place |  | latitude: 44.6128; longitude: -78.3042'],
  [3, '>ground -3.5 m', 'ground |  | elevation: -3.5 m'],
  [3, 'water\n>38 20-25 L/min', 'water.line | 38 | rate: 20..25 L/min'],
  [3, 'strata\n>to 3.8 silty clay', 'strata.line | … to 3.8 | description: "silty clay"'],
  [3, 'strata\n>0 to 3.8 silty clay', 'strata.line | 0 to 3.8 | description: "silty clay"'],
  [3, 'strata\n>0 – 3.8 silty clay - brown', 'strata.line | 0 to 3.8 | description: "silty clay, brown"'],
  [3, 'strata\n>0 - 3 sand fine to coarse', 'strata.line | 0 to 3 | description: "sand, fine to coarse"'],
  [3, '>shift 2026-05-05 07:00 - 17:30', 'shift |  | hours: 2026-05-05 07:00 to 2026-05-05 17:30'],
  [4, '>casing 0 - 9 168.3 x 6.4 mm', 'casing | 0 to 9 | size: 168.3 mm x 6.4 mm'],
  [4, `>casing 0 - 9 6.625" x .25`, 'casing | 0 to 9 | size: 6.625 in x 0.25 in'],
  [4, 'strata\n>12 - 20 ft clay', 'strata.line | 12 ft to 20 ft | description: "clay"'],
  [4, '>disinfection 100 mg/L, 720 min', 'disinfection |  | strength: 100 mg/L; contact: 720 min'],
  [6, 'water\n>54 +15 L/min', 'water.line | 54 | rate: +15 L/min'],
  [6, '>casing +0.45 - 7.2', 'casing | +0.45 to 7.2'],
  [6, 'strata\n>0 - 3 sand + gravel', 'strata.line | 0 to 3 | description: "sand and gravel"'],
  [6, 'water\n>54 20+ gpm', 'water.line | 54 | rate: >20 gpm'],
  [7, 'casing 0 - 9\n>centralizers 1,5 4', 'centralizers |  | positions: 4 | decimal-comma <1,5>'],
  [7, 'hole\n>0 - 9 254 152', 'hole.line | 0 to 9 | diameter: 254 | second-value <152>'],
  [7, 'strata\n>0 12 clay', 'strata.line | 0 to 12 | description: "clay" | interval-without-dash <0 12>'],
  [7, 'hole\n>0 12 254', 'hole.line | 0 to 12 | diameter: 254 | interval-without-dash <0 12>'],
  [7, 'hole\n>12 254', 'hole.line | 12 | diameter: 254 | missing-depth <12>'],
  [7, 'drilling air\n>7.2 13.2 air', 'drilling.line | 7.2 to 13.2 | flush: air | interval-without-dash <7.2 13.2>'],
  [7, 'abandonment\n>0 61 cement', 'abandonment.line | 0 to 61 | material: cement | interval-without-dash <0 61>'],
  [7, 'test pump\n>0 5.2', 'test.line |  | elapsed: 0; level: 5.2'],
  [8, 'strata\n>- ~38.5 clay', 'strata.line | … to ~38.5 | description: "clay"'],
  [8, 'strata\n>- 38.5? clay', 'strata.line | … to 38.5 doubtful | description: "clay"'],
  [8, 'hole\n>0 - td 152', 'hole.line | 0 to td | diameter: 152'],
  [8, '>casing ~+0.45 - ?', 'casing | ~+0.45 to ?'],
  [8, 'casing 0 - 9\n>grout 0 - 9 ? m3 neat cement', 'grout | 0 to 9 | volume: ? m3; material: neat cement'],
  [8, 'casing 0 - 9\n>grout 0 - 9 ?', 'grout | 0 to 9 | material: unknown'],
  [8, 'casing 0 - 9\n>grout 0 - 9 ? neat cement', 'grout | 0 to 9 | material: neat cement; volume: unknown'],
  [9, 'casing 0 - 40\n>screen 30 - 36 slot #10', 'screen | 30 to 36 | slot: #10'],
  [9, 'casing 0 - 40\n>screen 30 - 36 #10', 'screen | 30 to 36 |  | slot-word-missing <#10>'],
  [9, 'casing 0 - 40\n>screen 30 - 36 slot 0.5', 'screen | 30 to 36 | slot: 0.5'],
  [10, 'casing 0 - 9\n>joints 3 x 6.1, 1.55', 'joints |  | lengths: 3 x 6.1, 1.55'],
  [10, 'casing 0 - 9\n>grout 0 - 9 3 x 200 L', 'grout | 0 to 9 | volume: 3 x 200 L'],
  [10, 'casing 0 - 9\n>grout 0 - 9 9 x 40 kg bags', 'grout | 0 to 9 | bags: 9 x 40 kg bags'],
  [11, 'casing 0 - 9\n>grout 0 - 9 neat cement w/c 0.5', 'grout | 0 to 9 | material: neat cement; water-cement: 0.5'],
  [11, 'strata\n>0 - 3 clay w/ gravel', 'strata.line | 0 to 3 | description: "clay, with gravel"'],
  [11, 'strata\n>0 - 3 clay w/o gravel', 'strata.line | 0 to 3 | description: "clay, no gravel"'],
  [12, 'casing 0 - 9\nwater\n38 fresh\n>grout 0 - 9 neat cement', 'grout | 0 to 9 | material: neat cement'],
  [12, 'strata\n0 - 3 clay\nbegan 2026-05-04\n\n>- 6 sand', 'strata.line | … to 6 | description: "sand"'],
  [12, '>shoe 7.2', '- |  |  | misplaced-keyword <shoe>'],
  [13, '>stratta', 'strata |  |  | near-keyword <stratta>'],
  [13, '>flumdiddle', '- |  |  | unknown-section <flumdiddle>'],
  [13, 'strata\n>flumdiddle 3', '- |  |  | unknown-keyword <flumdiddle>'],
  [13, 'flumdiddle\n>0 - 3 nothing', '-'],
  [15, '>water 38 fresh', 'water | 38 | kind: fresh'],
  [15, '>hole 0 - 7.2 254', 'hole | 0 to 7.2 | diameter: 254'],
  [15, '>water sulphur', '- |  |  | misplaced-keyword <water>'],
  [16, 'casing 0 - 9\n>grout 0 - 9 water 150 L', 'grout | 0 to 9 | water: 150 L'],
  [16, '>liner 24.4 - 61 pvc, perforated 48.8 - 61', 'liner | 24.4 to 61 | material: pvc; perforated: 48.8 to 61'],
  [17, 'strata\n>0 - 3 sand SM', 'strata.line | 0 to 3 | description: "sand, SM"'],
  [17, 'strata\n>0 - 3 silty sand (SM)', 'strata.line | 0 to 3 | description: "silty sand, SM"'],
  [18, '>owner Well #4 ; north # field', "owner |  | owner: 'Well #4 ; north # field'"],
  [18, '>owner A. Ostrava # allow interval-gap: known', "owner |  | owner: 'A. Ostrava'"],
  [19, 'test pump\n>60 11.9', 'test.line |  | elapsed: 60; level: 11.9'],
  [19, 'test pump\n>30 s 5.5', 'test.line |  | elapsed: 30 s; level: 5.5'],
  [19, 'test pump\n>1h 6', 'test.line |  | elapsed: 1 h; level: 6'],
  [19, 'test pump\n>1h30 6', 'test.line |  | elapsed: 90 min; level: 6'],
  [19, 'test pump\n>08:15 6', 'test.line |  | elapsed: 08:15; level: 6'],
  [19, 'test pump\n>1:30 6', 'test.line |  | level: 6 | elapsed-time-form <1:30>'],
  [19, 'test pump\n>0930 6', 'test.line |  | level: 6 | elapsed-time-form <0930>'],
  [19, 'test pump\n>recovery 1440', 'recovery |  | stop: 1440'],
  [20, 'test pump\n>observed OW-1, r 30 m', "observed |  | name: 'OW-1'; distance: 30 m"],
  [20, 'test pump\n>observed OW-1, r 30 m, dd', "observed |  | name: 'OW-1'; distance: 30 m; drawdown: yes"],
  [20, 'test pump\n>1 dd 0.23', 'test.line |  | elapsed: 1; drawdown: 0.23'],
  [21, 'water\n>level 5.65 toc 2026-05-07', 'level | 5.65 toc | date: 2026-05-07'],
];

describe('settled readings', () => {
  for (const [rule, text, reading] of cases)
    test(`${rule}: ${text.replace(/^[^>]*>/s, '')}`, () => {
      expect(readings(text)).toEqual([reading]);
    });

  test('18: a number sign before a digit is a comment only where it starts the line', () => {
    const [comment, slot] = parseText('#10 is a note\ncasing 0 - 9 168.3 slotted #10').lines;
    expect(comment?.comment?.text).toBe('#10 is a note');
    expect(slot?.comment).toBeNull();
  });

  test('a remark ends where a comment begins', () => {
    const [line] = parseText('water 38 fresh ; by ear # ask the crew').lines;
    expect(line?.remark?.text).toBe('by ear');
    expect(line?.comment?.text).toBe('# ask the crew');
  });

  test('all-capital shorthand stays shorthand', () => {
    expect(readings('STRATA\n>0 - 3 SM GVL')).toEqual(['strata.line | 0 to 3 | description: "some gravel"']);
  });

  test.each(['=', '^', '|', '$', '\u0007', '日本', '😀'])('a stray %s is reported, never dropped', (mark) => {
    expect(readings(`>casing +0.45 - 7.2 steel ${mark} 168.3 x 6.4`)).toEqual([
      `casing | +0.45 to 7.2 | material: steel; size: 168.3 x 6.4 | stray-mark <${mark}>`,
    ]);
  });

  test.each([
    ['strata\n>0 - 1e400 clay', 'strata.line |  | description: "clay" | unknown-unit <e400>'],
    ['strata\n>0 - 38x clay', 'strata.line |  | description: "clay" | unknown-unit <x>'],
    ['drilling air\n>7.2 - 13.2 21 mn air', 'drilling.line | 7.2 to 13.2 | flush: air | unknown-unit <mn>'],
    ['>casing -1 - 10 pvc 114', 'casing |  | material: pvc; size: 114 | unexpected-depth <-1 - 10>'],
  ])('%j gives one problem, at its place', (text, reading) => {
    expect(readings(text)).toEqual([reading]);
  });

  test('pasted typography is read as what it means', () => {
    expect(readings('>casing\u00a0+0.45 – 7.2 steel 168.3 × 6.4')).toEqual([
      'casing | +0.45 to 7.2 | material: steel; size: 168.3 x 6.4',
    ]);
    expect(readings('casing 0 - 9\n>grout 0 — 9 0.29 m³')).toEqual(['grout | 0 to 9 | volume: 0.29 m3']);
    expect(readings('hole\n>0 − 12’6” 10”')).toEqual(['hole.line | 0 ft to 12.5 ft | diameter: 10 in']);
  });
});
