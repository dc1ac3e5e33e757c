import { describe, expect, test } from 'vitest';
import { deadlinePacks, deadlines } from '../../server/packs/deadlines.ts';
import { packById } from '../../server/packs/index.ts';
import { findingsIn } from '../rules/checked.ts';

/** The date so many days after another, by the calendar of the machine. */
const dayAfter = (date: string, days: number): string =>
  new Date(Date.parse(date) + days * 86_400_000).toISOString().slice(0, 10);

const dueIn = (text: string) => findingsIn(text).filter(({ rule }) => rule === 'record-due');

describe('deadlines of states', () => {
  // US EPA's compilation of state codes: NM 20 days; AL, LA, MA, NV, ND, VA, WV 30; MI, MT, OK, TN 60; AR 90.
  test.each([
    [20, ['nm']],
    [30, ['al', 'la', 'ma', 'nd', 'nv', 'va', 'wv']],
    [60, ['mi', 'mt', 'ok', 'tn']],
    [90, ['ar']],
  ])('%i days', (days, codes) => {
    expect(deadlines.filter((each) => each.days === days).map(({ code }) => code)).toEqual(codes);
  });

  test('agree with the packs of states that have one', () => {
    const days = (code: string) => deadlines.find((each) => each.code === code)?.days;
    expect(packById('michigan-r325')?.due[0]?.days).toBe(days('mi'));
    expect(packById('montana-36-21')?.due[0]?.days).toBe(days('mt'));
  });

  test.each(deadlinePacks.map(({ id, due }) => [id, due[0]?.days ?? 0] as const))(
    '%s is told, and kept',
    (id, days) => {
      const last = dayAfter('2026-01-01', days);
      const text = (reported: string) => `rules ${id}\nfinished 2026-01-01\n${reported}`;
      const [open] = dueIn(text(''));
      expect(open).toMatchObject({ severity: 'information', limit: `${id}/due/0`, span: { line: 1 } });
      expect(open?.message).toContain(`is due ${last}, ${364 - days} days ago`);
      expect(dueIn(text(`reported ${last}`))).toEqual([]);
      expect(dueIn(text(`reported ${dayAfter('2026-01-01', days + 1)}`))[0]?.severity).toBe('warning');
    },
  );
});
