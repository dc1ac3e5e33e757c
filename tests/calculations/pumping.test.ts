import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  casingStorageTime,
  cooperJacob,
  linearShare,
  type Reading,
  readingsWithin,
  recovery,
  rootMeanSquare,
  specificCapacity,
  stepDrawdowns,
  stepTest,
  straightLine,
  theisDrawdown,
  theisFit,
  wellFunction,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const everything = { from: null, to: null };
const reading = (time: number, drawdown: number): Reading => ({ time, drawdown });
/** Drawdown on a straight line: 1 m at 100 s, 0.5 m more in each tenfold of time. */
const straight = [100, 1000, 10_000].map((time) => reading(time, 1 + 0.5 * Math.log10(time / 100)));

describe('straight line', () => {
  it('goes through points that lie on one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (intercept, slope) => {
          const points = [1, 2, 4, 9].map((x) => ({ x, y: intercept + slope * x }));
          const line = figureOf(straightLine(points));
          expect(line.intercept).toBeCloseTo(intercept, 8);
          expect(line.slope).toBeCloseTo(slope, 8);
          expect(line.misfit).toBeCloseTo(0, 8);
          expect(line.points).toBe(4);
        },
      ),
    );
  });

  it('leaves a misfit where they do not', () => {
    const points = [
      { x: 0, y: 0 },
      { x: 1, y: 3 },
      { x: 2, y: 0 },
    ];
    expect(figureOf(straightLine(points))).toMatchObject({ intercept: 1, slope: 0, misfit: Math.sqrt(2) });
    expect(rootMeanSquare([3, 4])).toBeCloseTo(Math.sqrt(12.5), 12);
    expect(rootMeanSquare([])).toBe(0);
  });

  it('is refused through one place', () => {
    expectRefused(
      /two readings/,
      straightLine([]),
      straightLine([{ x: 1, y: 1 }]),
      straightLine([
        { x: 1, y: 1 },
        { x: 1, y: 2 },
      ]),
    );
  });
});

describe('windows', () => {
  it('hold their ends, and no reading at the start', () => {
    const readings = [0, 60, 120, 180].map((time) => reading(time, 1));
    const times = (from: number | null, to: number | null): number[] =>
      readingsWithin(readings, { from, to }).map(({ time }) => time);
    expect(times(null, null)).toEqual([60, 120, 180]);
    expect(times(60, 120)).toEqual([60, 120]);
    expect(times(61, null)).toEqual([120, 180]);
  });
});

describe('specific capacity', () => {
  it('is rate over drawdown', () => {
    expect(figureOf(specificCapacity(0.04 / 60, 6.7))).toBeCloseTo(0.0000995, 7);
    expectRefused(/nothing was pumped/, specificCapacity(0, 1));
    expectRefused(/no drawdown/, specificCapacity(1, 0));
  });
});

describe('Cooper and Jacob', () => {
  it('reads slope, start and window off a straight line', () => {
    const found = figureOf(cooperJacob(0.01, straight, everything, 10));
    expect(found.slope).toBeCloseTo(0.5, 10);
    expect(found.zeroTime).toBeCloseTo(1, 8);
    expect(found.transmissivity).toBeCloseTo((Math.LN10 * 0.01) / (4 * Math.PI * 0.5), 12);
    // 2.25 T t₀ / r² (Cooper and Jacob).
    expect((found.storativity ?? 0) / ((2.2458 * found.transmissivity * 1) / 100)).toBeCloseTo(1, 4);
    expect(found).toMatchObject({ readings: 3, from: 100, to: 10_000 });
    expect(found.largestU).toBeCloseTo((100 * (found.storativity ?? 0)) / (4 * found.transmissivity * 100), 12);
    expect(found.misfit).toBeCloseTo(0, 10);
  });

  it('takes as many readings as a logger makes, in any order', () => {
    const many = Array.from({ length: 200_000 }, (_, index) => reading(200_000 - index, Math.log10(200_000 - index)));
    const found = figureOf(cooperJacob(0.01, many, everything, null));
    expect(found).toMatchObject({ readings: 200_000, from: 1, to: 200_000 });
    expect(found.slope).toBeCloseTo(1, 6);
  });

  it('gives no storage coefficient from the pumped well itself', () => {
    const found = figureOf(cooperJacob(0.01, straight, everything, null));
    expect([found.storativity, found.largestU]).toEqual([null, null]);
  });

  it('is refused where nothing can be read', () => {
    expectRefused(/nothing was pumped/, cooperJacob(0, straight, everything, null));
    expectRefused(/fewer than three/, cooperJacob(1, straight.slice(1), everything, null));
    expectRefused(/fewer than three/, cooperJacob(1, straight, { from: 200, to: null }, null));
    expectRefused(/distance/, cooperJacob(1, straight, everything, 0));
    expectRefused(
      /does not grow/,
      cooperJacob(
        1,
        [1, 2, 3].map((time) => reading(time, 1)),
        everything,
        null,
      ),
    );
    expectRefused(
      /two readings/,
      cooperJacob(
        1,
        [1, 2, 3].map((depth) => reading(60, depth)),
        everything,
        null,
      ),
    );
  });
});

describe('Theis', () => {
  it('has a well function that falls, without a jump where series and fraction meet', () => {
    expect(figureOf(wellFunction(1)) - figureOf(wellFunction(1 + 1e-9))).toBeLessThan(1e-8);
    expect(figureOf(wellFunction(1)) - figureOf(wellFunction(1 + 1e-9))).toBeGreaterThan(0);
    expect(figureOf(wellFunction(800))).toBe(0);
    expectRefused(/not above zero/, wellFunction(0), wellFunction(-1), wellFunction(Number.NaN));
  });

  it('gives T and S back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 1e-1, noNaN: true }),
        fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
        (transmissivity, storativity) => {
          const unit = (400 * storativity) / (4 * transmissivity);
          const readings = [1, 3, 10, 30, 100, 300].map((factor) =>
            reading(unit * factor, figureOf(theisDrawdown(0.01, transmissivity, storativity, 20, unit * factor))),
          );
          const found = figureOf(theisFit(0.01, readings, everything, 20));
          expect(found.transmissivity / transmissivity).toBeCloseTo(1, 3);
          expect(found.storativity / storativity).toBeCloseTo(1, 2);
          expect(found.readings).toBe(6);
          expect(found.from / unit).toBeCloseTo(1, 12);
          expect(found.to / unit).toBeCloseTo(300, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('keeps to its window', () => {
    const readings = [60, 120, 600, 1200, 6000].map((time) =>
      reading(time, figureOf(theisDrawdown(0.01, 0.004, 1e-4, 20, time))),
    );
    const spoilt = [...readings, reading(12_000, 99)];
    expect(figureOf(theisFit(0.01, spoilt, { from: null, to: 6000 }, 20)).transmissivity / 0.004).toBeCloseTo(1, 3);
  });

  it('is refused where nothing can be fitted', () => {
    expectRefused(/distance/, theisFit(1, straight, everything, 0));
    expectRefused(/fewer than three/, theisFit(1, [], everything, 1));
    expectRefused(/nothing was pumped/, theisFit(0, straight, everything, 1));
    for (const position of [0, 1, 2, 3, 4] as const) {
      const inputs: [number, number, number, number, number] = [1, 1, 1, 1, 1];
      inputs[position] = 0;
      expectRefused(/must be above zero/, theisDrawdown(...inputs));
    }
  });
});

describe('recovery', () => {
  it('reads the slope against t/t′', () => {
    const readings = [100, 1000, 9000].map((time) => reading(time, 0.2 * Math.log10((1000 + time) / time / 1.5)));
    const found = figureOf(recovery(0.01, 1000, readings, everything));
    expect(found.slope).toBeCloseTo(0.2, 10);
    expect(found.zeroRatio).toBeCloseTo(1.5, 8);
    expect(found.transmissivity).toBeCloseTo((Math.LN10 * 0.01) / (4 * Math.PI * 0.2), 12);
    expect(found.misfit).toBeCloseTo(0, 10);
    expect(found.readings).toBe(3);
  });

  it('is refused where nothing recovers', () => {
    const flat = [1, 2, 3].map((time) => reading(time, 1));
    expectRefused(/does not recover/, recovery(1, 100, flat, everything));
    expectRefused(/nothing was pumped/, recovery(0, 100, flat, everything));
    expectRefused(/time pumped/, recovery(1, 0, flat, everything));
    expectRefused(/fewer than three/, recovery(1, 100, flat.slice(1), everything));
    expectRefused(
      /two readings/,
      recovery(
        1,
        100,
        [1, 2, 3].map((depth) => reading(60, depth)),
        everything,
      ),
    );
  });
});

describe('steps', () => {
  it('give B and C back, and the share of B', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 10_000, noNaN: true }),
        (linear, square) => {
          const steps = [0.01, 0.02, 0.03].map((rate) => ({ rate, drawdown: linear * rate + square * rate ** 2 }));
          const found = stepTest(steps);
          if (square > 1) {
            expect(figureOf(found).linear / linear).toBeCloseTo(1, 6);
            expect(figureOf(found).square / square).toBeCloseTo(1, 4);
            expect(figureOf(found).misfit).toBeLessThan(1e-6);
          }
        },
      ),
    );
    expect(figureOf(linearShare({ linear: 2, square: 1, misfit: 0 }, 2))).toBe(0.5);
    expectRefused(/no drawdown/, linearShare({ linear: 2, square: 1, misfit: 0 }, 0));
  });

  it('are refused where the loss falls, or the rates do not differ', () => {
    expectRefused(
      /loss falls/,
      stepTest([
        { rate: 1, drawdown: 2 },
        { rate: 2, drawdown: 3 },
      ]),
    );
    expectRefused(/two steps/, stepTest([{ rate: 1, drawdown: 2 }]), stepTest([]));
    expectRefused(
      /without a rate/,
      stepTest([
        { rate: 0, drawdown: 2 },
        { rate: 2, drawdown: 3 },
      ]),
    );
    expect(
      figureOf(
        stepTest([
          { rate: 1, drawdown: 2 },
          { rate: 2, drawdown: 4 },
        ]),
      ),
    ).toMatchObject({ linear: 2, square: 0 });
  });

  it('are taken each by itself, the step before drawn on', () => {
    // First step 1 m at 100 s and 0.1 m in a tenfold; the second adds 0.8 m at once.
    const first = [10, 100, 1000, 3600].map((time) => reading(time, 1 + 0.1 * Math.log10(time / 100)));
    const second = [4200, 5400, 7200].map((time) => reading(time, 1.8 + 0.1 * Math.log10(time / 100)));
    const steps = [
      { rate: 0.01, start: 0, readings: [...first].reverse() },
      { rate: 0.02, start: 3600, readings: second },
    ];
    const [one, two] = figureOf(stepDrawdowns(steps, 1800));
    expect(one?.rate).toBe(0.01);
    // Read between 1000 s and 3600 s in a straight line.
    const between = 1.1 + ((1800 - 1000) / 2600) * (0.1 * Math.log10(3.6));
    expect(one?.drawdown).toBeCloseTo(between, 10);
    expect((two?.drawdown ?? 0) - (one?.drawdown ?? 0)).toBeCloseTo(0.8, 10);
  });

  it('draw on the line of the later half, in whatever order it was read', () => {
    // The first readings lie off the line on which the later ones lie: 1 m at 100 s and 0.1 m in a tenfold.
    const late = [300, 600, 1200, 3000].map((time) => reading(time, 1 + 0.1 * Math.log10(time / 100)));
    const first = [
      late[2],
      reading(20, 9),
      late[0],
      reading(50, 5),
      late[3],
      late[1],
      reading(100, 4),
      reading(150, 3),
    ];
    const second = [3900, 4800, 6600].map((time) => reading(time, 2 + 0.1 * Math.log10(time / 100)));
    const steps = [
      { rate: 0.01, start: 0, readings: first.filter((each) => each !== undefined) },
      { rate: 0.03, start: 3000, readings: second },
    ];
    const [one, two] = figureOf(stepDrawdowns(steps, 1800));
    expect((two?.drawdown ?? 0) - (one?.drawdown ?? 0)).toBeCloseTo(1, 10);
    expectRefused(/without a rate/, stepDrawdowns([{ rate: 0, start: 0, readings: second }], 60));
  });

  it('are refused where a step was too short or hardly read', () => {
    const readings = [60, 600, 1200, 1800].map((time) => reading(time, time / 1000));
    expectRefused(/not read for as long/, stepDrawdowns([{ rate: 1, start: 0, readings }], 3600));
    expectRefused(/not read for as long/, stepDrawdowns([{ rate: 1, start: 0, readings }], 30));
    expectRefused(/fewer than two/, stepDrawdowns([{ rate: 1, start: 0, readings: readings.slice(0, 1) }], 60));
    expect(figureOf(stepDrawdowns([{ rate: 1, start: 0, readings }], 600))).toEqual([{ rate: 1, drawdown: 0.6 }]);
    expect(figureOf(stepDrawdowns([], 600))).toEqual([]);
  });
});

describe('casing storage', () => {
  it('ends the later, the wider the casing and the tighter the ground', () => {
    expect(figureOf(casingStorageTime(0.076, 0.016, 10 / 86_400))).toBeCloseTo(1192.32, 2);
    expect(figureOf(casingStorageTime(0.1, 0, 1))).toBeCloseTo(0.25, 12);
    expectRefused(/does not fit/, casingStorageTime(0.1, 0.1, 1), casingStorageTime(0.1, -0.1, 1));
    expectRefused(/transmissivity/, casingStorageTime(0.1, 0, 0));
  });
});
