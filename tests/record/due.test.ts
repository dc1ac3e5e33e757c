import { describe, expect, test } from 'vitest';
import { recordText } from '../../server/export/index.ts';
import { daysLeft, dueText } from '../../server/record/due.ts';
import type { DueDate } from '../../server/record/record.ts';
import { recordOf } from './record-of.ts';

const dueIn = (text: string): readonly DueDate[] => recordOf(text).due;

const first = (text: string): DueDate => {
  const [due] = dueIn(text);
  if (!due) throw new Error('nothing is due');
  return due;
};

describe('what is due', () => {
  // 2026-11-02 and 60 days: 28 days of November, 31 of December, 1 of January; ISO 8601 calendar.
  test('counts from the finish, and says that this is assumed', () => {
    expect(first('rules montana-36-21\nfinished 2026-11-02')).toMatchObject({
      what: 'record',
      key: 'montana-36-21/due/0',
      from: '2026-11-02',
      due: '2027-01-01',
      assumed: true,
      sent: null,
      span: { line: 1 },
    });
  });

  // 2028 is a leap year.
  test('goes over the end of February', () => {
    expect(first('rules record-nm\nfinished 2028-02-10').due).toBe('2028-03-01');
  });

  test('counts a plugging report from the abandonment', () => {
    const due = dueIn('rules texas-16-76\nfinished 2026-01-01\nabandonment 2026-12-02\n  0 - 61 neat cement');
    expect(due.map(({ what, due: day }) => `${what} ${day}`)).toEqual([
      'record 2026-03-02',
      'plugging report 2027-01-01',
    ]);
  });

  test.each([
    'rules montana-36-21',
    'rules montana-36-21\nfinished ?',
    'rules montana-36-21\nfinished 2026-13-45',
    'finished 2026-11-02',
  ])('is nothing without a date and a pack: %j', (text) => {
    expect(dueIn(text)).toEqual([]);
  });

  test('knows when it was sent, but not when the owner had a copy', () => {
    const due = dueIn('rules ontario-903\nfinished 2026-11-01\nreported 2026-11-20');
    expect(due.map(({ what, sent }) => [what, sent])).toEqual([
      ['copy for the owner', null],
      ['record', '2026-11-20'],
    ]);
  });
});

describe('days left', () => {
  const due = first('rules montana-36-21\nfinished 2026-11-02');

  test.each([
    ['2026-12-31', 1, ', in 1 day:'],
    ['2026-12-01', 31, ', in 31 days:'],
    ['2027-01-01', 0, ', today:'],
    ['2027-01-02', -1, ', 1 day ago:'],
    ['2027-01-11', -10, ', 10 days ago:'],
  ])('on %s', (today, left, words) => {
    expect(daysLeft(due, today)).toBe(left);
    expect(dueText(due, today)).toContain(`record due 2027-01-01${words}`);
  });

  test('are not counted where nobody says which day it is, or says no date', () => {
    const said = 'record due 2027-01-01: 60 days (montana-36-21) from the finish, which is assumed to start the clock';
    expect(dueText(due, null)).toBe(said);
    expect(dueText(due, 'tomorrow')).toBe(said);
  });

  test('of what was sent are not told', () => {
    const sent = first('rules montana-36-21\nfinished 2026-11-02\nreported 2026-12-01');
    expect(dueText(sent, '2026-12-31')).toContain('due 2027-01-01, sent 2026-12-01: 60 days');
  });
});

test('the record as text tells what is due, with the day from outside', () => {
  const record = recordOf('rules montana-36-21\nfinished 2026-11-02');
  expect(recordText(record, '2026-12-31')).toContain('Record due 2027-01-01, in 1 day: 60 days');
  expect(recordText(record)).toContain('Record due 2027-01-01: 60 days');
  expect(recordText(recordOf('hole'))).not.toContain('When it is due');
});
