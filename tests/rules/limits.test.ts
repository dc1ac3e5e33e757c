import { describe, expect, test } from 'vitest';
import { findingsIn } from './checked.ts';

const messagesOf = (rule: string, text: string): string[] =>
  findingsIn(text)
    .filter((each) => each.rule === rule)
    .map(({ message }) => message);

const limitsOf = (rule: string, text: string): (string | undefined)[] =>
  findingsIn(text)
    .filter((each) => each.rule === rule)
    .map(({ limit }) => limit);

const rock = (kind: string, top: number, foot: number | string) =>
  `rules wisconsin-nr812\nunits ft in\nstrata\n  0 - ${top} clay\n  - 200 ${kind}\ncasing +1.5 - ${foot} steel 6.625 x 0.28`;

const fill = (pack: string, words: string) =>
  `rules ${pack}\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 ${words}`;

/** Of each rule a log that just keeps the limit, and one that just breaks it. */
const edges: readonly (readonly [string, string, string])[] = [
  ['casing-too-short', rock('sandstone', 12, 30), rock('sandstone', 12, 29.9)],
  ['casing-too-short', rock('arkose', 12, 30), rock('arkose', 12, 29.9)],
  ['casing-too-short', rock('basalt', 12, 40), rock('basalt', 12, 39.9)],
  ['casing-too-short', rock('dolomite', 20, 40), rock('dolomite', 20, 39.9)],
  ['casing-too-short', rock('chalk', 19.9, 60), rock('chalk', 19.9, 59.9)],
  ['casing-narrow-for-rock', rock('shale', 12, 60), rock('shale', 12, 60).replace('6.625 x 0.28', '5.563 x 0.258')],
  [
    'wall-too-thin',
    'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 4.78',
    'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 4.77',
  ],
  [
    'rock-seat-short',
    rock('basalt', 20, 25).replace('wisconsin-nr812', 'oregon-690-210'),
    rock('basalt', 20, 24.9).replace('wisconsin-nr812', 'oregon-690-210'),
  ],
  [
    'seal-shorter-than-pack',
    'rules california-b74\nunits ft in\nuse domestic\ncasing +1 - 60 pvc 4.5\n  seal 0.5 - 5 bentonite chips\n  grout 5.5 - 20 neat cement',
    'rules california-b74\nunits ft in\nuse domestic\ncasing +1 - 60 pvc 4.5\n  seal 0 - 5 bentonite chips\n  grout 7 - 20 neat cement',
  ],
  ['well-too-shallow', 'rules ontario-903\nhole\n  0 - 6 152', 'rules ontario-903\nhole\n  0 - 5.99 152'],
  [
    'gravity-placement-too-deep',
    'rules minnesota-4725\nunits ft in\ncasing +1 - 30 steel 6.625\n  grout 0 - 10 neat cement, gravity',
    'rules minnesota-4725\nunits ft in\ncasing +1 - 30 steel 6.625\n  grout 0 - 10.1 neat cement, gravity',
  ],
  [
    'bentonite-in-rock',
    'rules minnesota-4725\nstrata\n  0 - 6 clay\n  - 60 slate\ncasing +0.45 - 9 steel 168.3\n  grout 0 - 6 bentonite slurry',
    'rules minnesota-4725\nstrata\n  0 - 6 clay\n  - 60 slate\ncasing +0.45 - 9 steel 168.3\n  grout 0 - 6.1 bentonite slurry',
  ],
  [
    'bentonite-share-high',
    fill('washington-173-160', 'cement-bentonite, bentonite 5 %'),
    fill('washington-173-160', 'cement-bentonite, bentonite 5.1 %'),
  ],
  [
    'solids-too-low',
    fill('ontario-903', 'bentonite slurry, 20 % solids'),
    fill('ontario-903', 'bentonite slurry, 19.9 % solids'),
  ],
  // 6 US gal to 94 lb are 0.5327 by mass; 5 % of bentonite takes 5 x 0.6 gal more: 9 gal, 0.799.
  ['mix-too-wet', fill('michigan-r325', 'neat cement, w/c 0.53'), fill('michigan-r325', 'neat cement, w/c 0.54')],
  [
    'mix-too-wet',
    fill('michigan-r325', 'cement-bentonite, w/c 0.8, bentonite 5 %'),
    fill('michigan-r325', 'cement-bentonite, w/c 0.81, bentonite 5 %'),
  ],
  [
    'disinfection-under-strength',
    'rules ontario-903\ndisinfection 50 mg/L, 12 h',
    'rules ontario-903\ndisinfection 49 mg/L, 12 h',
  ],
  [
    'disinfection-over-strength',
    'rules ontario-903\ndisinfection 200 mg/L, 12 h',
    'rules ontario-903\ndisinfection 201 mg/L, 12 h',
  ],
  [
    'disinfection-too-short',
    'rules wisconsin-nr812\ndisinfection 100 mg/L, 2 h',
    'rules wisconsin-nr812\ndisinfection 100 mg/L, 119 min',
  ],
  ['test-too-short', 'rules ontario-903\ntest bail 10 L/min, 60 min', 'rules ontario-903\ntest bail 10 L/min, 59 min'],
  [
    'shoe-required-by-pack',
    'rules wisconsin-nr812\nunits ft in\ncasing +1 - 80 steel 6.625 x 0.28',
    'rules wisconsin-nr812\nunits ft in\ncasing +1 - 80.1 steel 6.625 x 0.28',
  ],
  [
    'stickup-low',
    'rules washington-173-160\nunits ft in\ncasing +0.5 - 30 steel 6.625',
    'rules washington-173-160\nunits ft in\ncasing +0.49 - 30 steel 6.625',
  ],
];

test.each(edges)('%s: %j keeps the limit', (rule, kept) => {
  expect(messagesOf(rule, kept)).toEqual([]);
});

test.each(edges)('%s: not %j, but %j breaks it', (rule, _, broken) => {
  expect(messagesOf(rule, broken)).toHaveLength(1);
});

describe('an annulus as each code counts it', () => {
  const grouted = (packs: string, hole: number, size: string, words = 'tremie') =>
    `rules ${packs}\nunits ft in\nhole\n  0 - 24 ${hole}\n  - 200 6\nstrata\n  0 - 12 clay\n  - 200 limestone\ncasing +1.5 - 24 steel ${size}\n  shoe 24\n  grout 0 - 24 neat cement, ${words}`;

  // ASME B36.10M: 6 in nominal pipe is 6.625 in outside.
  test.each([
    ['wisconsin-nr812', 10, '6.625 x 0.28', 'tremie', []],
    ['wisconsin-nr812', 9.9, '6.625 x 0.28', 'tremie', ['wisconsin-nr812/limits/oversize-least']],
    ['wisconsin-nr812', 8, '6.625 x 0.28 welded', 'pressure', []],
    ['wisconsin-nr812', 8, '6.625 x 0.28 threaded', 'pressure', ['wisconsin-nr812/limits/oversize-least']],
    ['wisconsin-nr812', 7.9, '6.625 x 0.28 welded', 'pressure', ['wisconsin-nr812/cases/5']],
    ['minnesota-4725', 9.625, '6.625 x 0.28', 'tremie', []],
    ['minnesota-4725', 10, '6.625 x 0.28 coupling 7.39', 'tremie', ['minnesota-4725/cases/2']],
    ['california-b74', 10.625, '6.625 x 0.28', 'tremie', []],
    ['california-b74', 10.5, '6.625 x 0.28', 'tremie', ['california-b74/limits/oversize-least']],
    ['michigan-r325', 9.4, '6.625 x 0.28', 'tremie', ['michigan-r325/cases/0']],
    ['michigan-r325', 9.4, '6.625 x 0.28', 'pumped', []],
  ] as const)('%s, hole of %d in, %s, %s', (pack, hole, size, words, limits) => {
    expect(limitsOf('annulus-thin', grouted(pack, hole, size, words))).toEqual(limits);
  });

  test('two packs that count in different ways are both told, each with its own figures', () => {
    const told = messagesOf('annulus-thin', grouted('wisconsin-nr812 california-b74', 9.5, '6.625 x 0.28'));
    expect(told).toHaveLength(2);
    expect(told.join('\n')).toMatch(
      /only 3\.5 in wider than the nominal diameter of the casing .* \(9\.5 in and 6 in\)/,
    );
    expect(told.join('\n')).toMatch(/only 2\.875 in wider than the casing .* \(9\.5 in and 6\.625 in\)/);
  });

  test('of two that count in one way the stricter is told and named', () => {
    expect(limitsOf('annulus-thin', grouted('montana-36-21 california-b74', 9, '6.625 x 0.28'))).toEqual([
      'california-b74/limits/oversize-least',
    ]);
  });
});

describe('a figure that is only remembered', () => {
  test('says so in the message', () => {
    expect(messagesOf('disinfection-too-short', 'rules ontario-903\ndisinfection 100 mg/L, 1 h')[0]).toContain(
      '12 h (ontario-903, from memory)',
    );
    expect(messagesOf('well-too-shallow', 'rules ontario-903\nhole\n  0 - 5 152')[0]).toContain('6 m (ontario-903);');
  });
});

describe('when the record is due', () => {
  const due = (text: string) => findingsIn(text).filter(({ rule }) => rule === 'record-due');

  // Examples are read on 2026-12-31: 30 days after 2026-12-11 is 2027-01-10, by the Gregorian calendar.
  test.each([
    ['2026-12-11', '2027-01-10, in 10 days'],
    ['2026-12-02', '2027-01-01, in 1 day'],
    ['2026-12-01', '2026-12-31, today'],
    ['2026-11-30', '2026-12-30, 1 day ago'],
  ])('finished %s: %s', (finished, words) => {
    const [finding] = due(`rules washington-173-160\nfinished ${finished}`);
    expect(finding).toMatchObject({ severity: 'information', span: { line: 1 } });
    expect(finding?.message).toContain(
      `is due ${words}: 30 days (washington-173-160) from the finish, which is assumed`,
    );
  });

  test('a record sent late is a warning at the day it was sent', () => {
    const late = due('rules washington-173-160\nfinished 2026-10-01\nreported 2026-11-02');
    expect(late).toMatchObject([{ severity: 'warning', span: { line: 2 } }]);
    expect(late[0]?.message).toContain('2 days after the record was due, 2026-10-31');
  });

  test('every pack named has its own', () => {
    expect(due('rules record-nm montana-36-21 ontario-903\nfinished 2026-12-20')).toHaveLength(4);
  });
});
