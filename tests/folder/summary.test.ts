import { expect, test } from 'vitest';
import { countsOf, countsTogether, summaryOf } from '../../server/folder/summary.ts';
import { countsText, dueText, levelOf, stringText, yieldOf } from '../../server/folder/summary-text.ts';
import { snapshotOf, today } from './wells.ts';

const summaryIn = (...lines: string[]) => {
  const snapshot = snapshotOf(lines.join('\n'));
  return summaryOf(snapshot, snapshot.findings, today);
};

test('what a log lacks, or marks with "?", is null', () => {
  expect(summaryIn('well ?', 'place ?', 'finished ?')).toMatchObject({
    id: null,
    location: null,
    place: null,
    depth: null,
    strings: [],
    level: null,
    yield: null,
    finished: null,
    due: null,
  });
});

test('a place on a grid is told in degrees, with its datum', () => {
  // Zone 17 N, 630,084 E, 4,833,438 N is 43°38′33.24″ N, 79°23′13.7″ W (published worked example, from memory).
  const { place } = summaryIn('place utm 17T 630084 4833438 WGS84');
  expect(place?.latitude).toBeCloseTo(43.642567, 4);
  expect(place?.longitude).toBeCloseTo(-79.387139, 4);
  expect(place?.datum).toEqual({ id: 'wgs84', name: 'WGS84' });
});

test('strings that were pulled are not among those that stay', () => {
  const { strings } = summaryIn(
    'casing 0 - 12 steel 219.1 x 6.4 temporary',
    'casing +0.5 - 7.2 steel 168.3 x 6.4',
    'liner 6 - 30 pvc 114.3',
  );
  expect(strings).toEqual([
    { kind: 'casing', top: -0.5, bottom: 7.2, outside: 0.1683 },
    { kind: 'liner', top: 6, bottom: 30, outside: 0.1143 },
  ]);
});

test.each([
  [['water', '  12 - 13 fresh, 20 L/min', 'test pump 40 L/min, 2026-05-07 08:00'], 40, 'tested'],
  [['water', '  12 - 13 fresh, 20 L/min'], 20, 'found'],
  [['water', '  flowing 90 L/min, 2026-05-14'], 90, 'flowing'],
])('of several rates the tested one counts: %j', (lines, rate, basis) => {
  const summary = summaryIn(...lines);
  expect(summary.yield?.basis).toBe(basis);
  expect((summary.yield?.rate ?? 0) * 60_000).toBeCloseTo(rate, 6);
});

test('of two pumping rates of a test the greater counts', () => {
  const summary = summaryIn('test pump 20 L/min, 2026-05-07 08:00', '  0 5', 'test pump 35 L/min, 2026-05-08 08:00');
  expect(yieldOf(summary)).toBe('35.0 L/min');
});

test('what is due next is the soonest that was not sent', () => {
  const summary = summaryIn('rules montana-36-21, record-nm', 'finished 2026-12-20');
  // 20 days for New Mexico (US EPA compilation), 60 for Montana (ARM 36.21): the first is sooner.
  expect(summary.due).toMatchObject({ pack: 'record-nm', day: '2027-01-09', left: 9 });
  expect(summary.due && dueText(summary.due)).toBe('record 2027-01-09 (9 days left)');
  expect(summaryIn('rules montana-36-21', 'finished 2026-12-20', 'reported 2026-12-22').due).toBeNull();
});

test('findings are counted by severity, and added up', () => {
  const counts = countsOf(snapshotOf('strata\n  4 - 2 clay\n  2 - 3 zorgly\n').findings);
  expect(counts.error).toBe(1);
  expect(countsText({ error: 2, warning: 0, information: 0, hint: 1 })).toBe('2 errors, 1 hint');
  expect(countsTogether(counts, { error: 1, warning: 2, information: 0, hint: 0 })).toMatchObject({ error: 2 });
  expect(countsText({ error: 0, warning: 0, information: 0, hint: 0 })).toBe('no findings');
});

test('texts are in the units of the log', () => {
  const summary = summaryIn('units ft in', 'casing +2 - 40 steel 6.625 x 0.25', 'water', '  level 27.33 2026-05-01');
  expect(levelOf(summary)).toBe('27.33 ft');
  const [string] = summary.strings;
  expect(string && stringText(string, summary)).toBe('casing to 40 ft, 6.625 in');
});
