import { describe, expect, it } from 'vitest';
import type { Phase } from '../../server/model/log.ts';
import { logOf, testOf } from './log-of.ts';

const elapsedOf = (phase: Phase | undefined) => phase?.readings.map(({ elapsed }) => elapsed?.value ?? null);
const outline = (phases: readonly Phase[]) => phases.map((phase) => [phase.kind, phase.stop, elapsedOf(phase)]);

describe('elapsed time', () => {
  it('is minutes, or what its unit says', () => {
    const test = testOf('test pump 40 L/min', '0 5', '2.5 5.1', '30 s 5.2', '1h 5.3', '1h30 5.4');
    expect(elapsedOf(test.phases[0])).toEqual([0, 150, 30, 3600, 5400]);
  });

  it('is reckoned from the start where a time of day is written', () => {
    const test = testOf('test pump 40 L/min, 2026-05-07 08:00', '08:00 5', '08:15 6', '90 7');
    expect(elapsedOf(test.phases[0])).toEqual([0, 900, 5400]);
    expect(test.phases[0]?.readings[1]).toMatchObject({ clock: { time: '08:15' }, elapsed: { written: '08:15' } });
  });

  it('goes on past midnight', () => {
    const test = testOf('test pump 40 L/min, 2026-05-07 22:00', '23:30 5', '01:00 6', '23:00 7');
    expect(elapsedOf(test.phases[0])).toEqual([5400, 10_800, 90_000]);
  });

  it('is unknown for a time of day where the start has none', () => {
    const test = testOf('test pump 40 L/min, 2026-05-07', '08:15 6');
    expect(elapsedOf(test.phases[0])).toEqual([null]);
    expect(test.phases[0]?.readings[0]?.clock?.time).toBe('08:15');
  });
});

describe('phases', () => {
  it('a rate opens one, the clock running on', () => {
    const test = testOf('test pump 40 L/min', '0 5', '60 6', 'rate 60 L/min', '61 6.5', '120 7');
    expect(outline(test.phases)).toEqual([
      ['pumping', null, [0, 3600]],
      ['pumping', null, [3660, 7200]],
    ]);
    expect(test.phases.map(({ rate }) => rate?.written)).toEqual(['40 L/min', '60 L/min']);
  });

  it('a rate before any reading leaves no empty phase behind', () => {
    expect(outline(testOf('test pump', 'rate 60 L/min', '0 5').phases)).toEqual([['pumping', null, [0]]]);
  });

  it('recovery starts the clock again at the stop that it names', () => {
    const test = testOf('test pump 40 L/min', '0 5', '60 6', 'recovery 62', '1 5.5');
    expect(outline(test.phases)[1]).toEqual(['recovery', 3720, [60]]);
  });

  it('recovery starts at the last pumping reading where it names no stop', () => {
    const test = testOf('test pump 40 L/min', '0 5', '60 6', 'recovery', '1 5.5');
    expect(outline(test.phases)[1]).toEqual(['recovery', 3600, [60]]);
    expect(outline(testOf('test pump 40 L/min', 'recovery', '1 5.5').phases)).toEqual([['recovery', null, [60]]]);
  });

  it('recovery takes times of day too', () => {
    const test = testOf('test pump 40 L/min, 2026-05-07 08:00', '08:00 5', '09:00 6', 'recovery 09:05', '09:06 5.5');
    expect(outline(test.phases)[1]).toEqual(['recovery', 3900, [60]]);
  });

  it('has none where there are no readings', () => {
    const test = testOf('test blow 75 L/min, stem 60, 1 h');
    expect(test).toMatchObject({ method: { id: 'blow' }, stem: { value: 60 }, duration: { value: 3600 }, phases: [] });
  });
});

describe('observed wells', () => {
  const test = testOf(
    'test pump 40 L/min',
    '0 5',
    '60 6',
    'recovery 61',
    '1 5.5',
    'observed OW-1, r 30 m, dd',
    '1 0.02',
    '59 0.4',
    'recovery',
    '1 0.39',
    'observed OW-2, r 60 m',
    '0 3.1',
    '1 dd 0.23',
  );

  it('have their readings on the pumping clock, until the next', () => {
    expect(test.observed.map(({ name, distance }) => [name?.text, distance?.value])).toEqual([
      ['OW-1', 30],
      ['OW-2', 60],
    ]);
    expect(outline(test.observed[1]?.phases ?? [])).toEqual([['pumping', null, [0, 60]]]);
    expect(outline(test.phases)).toEqual([
      ['pumping', null, [0, 3600]],
      ['recovery', 3660, [60]],
    ]);
  });

  it('have a recovery of their own, from the stop of the pump', () => {
    expect(outline(test.observed[0]?.phases ?? [])).toEqual([
      ['pumping', null, [60, 3540]],
      ['recovery', 3660, [60]],
    ]);
  });

  it('have drawdowns where the head or a line says so, else levels', () => {
    const readings = test.observed.flatMap(({ phases }) => phases.flatMap((phase) => phase.readings));
    expect(readings.map(({ level, drawdown }) => [level?.value ?? null, drawdown?.value ?? null])).toEqual([
      [null, 0.02],
      [null, 0.4],
      [null, 0.39],
      [3.1, null],
      [null, 0.23],
    ]);
  });

  it('of the pumped well, a drawdown may stand too', () => {
    const reading = testOf('test pump 40 L/min', '10 dd 1.4').phases[0]?.readings[0];
    expect(reading).toMatchObject({ level: null, drawdown: { value: 1.4 } });
  });
});

describe('several tests', () => {
  it('are tests of their own', () => {
    const log = logOf('test bail 10 L/min', '0 5', 'test pump 40 L/min', '0 5', '1 6');
    expect(log.tests.map(({ number, phases }) => [number, phases[0]?.readings.length])).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });
});
