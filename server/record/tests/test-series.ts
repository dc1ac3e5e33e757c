import { cooperJacob } from '../../calculations/pumping/cooper-jacob.ts';
import type { Reading as Drawdown } from '../../calculations/pumping/readings.ts';
import { recovery } from '../../calculations/pumping/recovery.ts';
import { theisDrawdown } from '../../calculations/pumping/theis-drawdown.ts';
import type { Depth, Phase, WellLog } from '../../model/log.ts';
import type { Figure, FittedCurve, TestSeries } from '../record.ts';
import { drawdownOf, observedWell, pumpedWell, type ReadWell } from './drawdowns.ts';

const whole = { from: null, to: null };

/** The figures of a log, by id. */
type Figures = ReadonlyMap<string, Figure>;

const inputOf = (figure: Figure | undefined, name: string): number | null =>
  figure?.inputs.find((input) => input.name.startsWith(name))?.value ?? null;

/** The readings that a figure was fitted to: the last so many after the start. */
function usedFor(figure: Figure | undefined, readings: readonly Drawdown[]): Drawdown[] {
  const count = inputOf(figure, 'readings of') ?? 0;
  return count > 0 ? readings.filter(({ time }) => time > 0).slice(-count) : [];
}

const pointsAt = (times: readonly number[], drawdownAt: (time: number) => number): FittedCurve['points'] =>
  times.map((time) => ({ time, drawdown: drawdownAt(time) })).filter(({ drawdown }) => Number.isFinite(drawdown));

const pointsOfCurve = 40;

/** Times from the first to the last, even on a logarithmic axis. */
function spreadTimes(from: number, to: number): number[] {
  const ratio = (to / from) ** (1 / (pointsOfCurve - 1));
  return Array.from({ length: pointsOfCurve }, (_, n) => from * ratio ** n);
}

const windowOf = (used: readonly Drawdown[]): { from: number; to: number } => {
  const times = used.map(({ time }) => time);
  return { from: Math.min(...times), to: Math.max(...times) };
};

/* A line or a curve through as many readings as anyone takes by hand; of more none is drawn. */
const mostReadings = 2000;

const isDrawable = (used: readonly Drawdown[]): boolean => used.length >= 2 && used.length <= mostReadings;

function cooperJacobLine(prefix: string, readings: readonly Drawdown[], figures: Figures): FittedCurve[] {
  const id = `${prefix}.cooper-jacob`;
  const figure = figures.get(`${id}.transmissivity`);
  const used = usedFor(figure, readings);
  const rate = inputOf(figure, 'pumping rate');
  if (figure?.value == null || rate === null || !isDrawable(used)) return [];
  const fit = cooperJacob(rate, used, whole, null);
  if (!fit.ok) return [];
  const { slope, zeroTime } = fit.value;
  const { from, to } = windowOf(used);
  const points = pointsAt(spreadTimes(from, to), (time) => slope * Math.log10(time / zeroTime));
  return [{ method: 'cooper-jacob', figures: id, from, to, points }];
}

const [leastLog, mostLog, halvings] = [Math.log(1e-14), Math.log(1e10), 60];

/**
 * r²S in m² of the Theis curve of that transmissivity nearest to the readings: where the sum of squares has no slope
 * over ln S, that is where the residuals weighted by e^-u come to nothing. By halving.
 */
function storageTimesSquare(rate: number, transmissivity: number, used: readonly Drawdown[]): number {
  let [low, high] = [leastLog, mostLog];
  for (let n = 0; n < halvings; n += 1) {
    const middle = (low + high) / 2;
    const square = Math.exp(middle);
    const sum = used.reduce((total, { time, drawdown }) => {
      const computed = theisDrawdown(rate, transmissivity, square, 1, time);
      const weight = Math.exp(-square / (4 * transmissivity * time));
      return computed.ok ? total + (drawdown - computed.value) * weight : total;
    }, 0);
    if (sum < 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

function theisCurve(prefix: string, readings: readonly Drawdown[], figures: Figures): FittedCurve[] {
  const id = `${prefix}.theis`;
  const figure = figures.get(`${id}.transmissivity`);
  const used = usedFor(figure, readings);
  const rate = inputOf(figure, 'pumping rate');
  const transmissivity = figure?.value ?? null;
  if (transmissivity === null || rate === null || !isDrawable(used)) return [];
  const square = storageTimesSquare(rate, transmissivity, used);
  const { from, to } = windowOf(used);
  const points = pointsAt(spreadTimes(from, to), (time) => {
    const drawdown = theisDrawdown(rate, transmissivity, square, 1, time);
    return drawdown.ok ? drawdown.value : Number.NaN;
  });
  return [{ method: 'theis', figures: id, from, to, points }];
}

/** Times of the recovery's line are t′ since the pump stopped; `pumped` is the time pumped that t is reckoned with. */
function recoveryLine(prefix: string, readings: readonly Drawdown[], figures: Figures): FittedCurve[] {
  const id = `${prefix}.recovery`;
  const figure = figures.get(`${id}.transmissivity`);
  const used = usedFor(figure, readings);
  const [rate, pumped] = [inputOf(figure, 'pumping rate'), inputOf(figure, 'time pumped')];
  if (figure?.value == null || rate === null || pumped === null || !isDrawable(used)) return [];
  const fit = recovery(rate, pumped, used, whole);
  if (!fit.ok) return [];
  const { slope, zeroRatio } = fit.value;
  const { from, to } = windowOf(used);
  const points = pointsAt(spreadTimes(from, to), (time) => slope * Math.log10((pumped + time) / time / zeroRatio));
  return [{ method: 'recovery', figures: id, from, to, points }];
}

type SeriesReading = TestSeries['readings'][number];

function readingsOf(phase: Phase, rest: Depth | null): SeriesReading[] {
  return phase.readings.flatMap((reading) => {
    const [time, drawdown] = [reading.elapsed?.value ?? null, drawdownOf(reading, rest)];
    return time === null || drawdown === null ? [] : [{ line: reading.line, phase: phase.kind, time, drawdown }];
  });
}

interface Read {
  readonly test: number;
  readonly well: string | null;
  readonly line: number;
  readonly prefix: string;
  readonly from: ReadWell;
}

const pumpingOf = (from: ReadWell): Phase | undefined => from.phases.find(({ kind }) => kind === 'pumping');
const recoveryOf = (from: ReadWell): Phase | undefined => from.phases.find(({ kind }) => kind === 'recovery');

function seriesOf({ test, well, line, prefix, from }: Read, figures: Figures): TestSeries {
  const first = pumpingOf(from);
  const after = recoveryOf(from);
  const pumping = first ? readingsOf(first, from.rest) : [];
  const recovering = after ? readingsOf(after, from.rest) : [];
  return {
    test,
    well,
    line,
    stop: after?.stop ?? null,
    pumped: inputOf(figures.get(`${prefix}.recovery.transmissivity`), 'time pumped'),
    readings: from.phases.flatMap((phase) => readingsOf(phase, from.rest)),
    curves: [
      ...cooperJacobLine(prefix, pumping, figures),
      ...theisCurve(prefix, pumping, figures),
      ...recoveryLine(prefix, recovering, figures),
    ],
  };
}

/** The drawdowns of every well that was read in a test, with the lines and curves that its figures rest on. */
export function testSeries(log: WellLog, all: readonly Figure[]): TestSeries[] {
  if (log.tests.length === 0) return [];
  const figures: Figures = new Map(all.map((figure) => [figure.id, figure]));
  return log.tests.flatMap((test) => {
    const prefix = `test.${test.number}`;
    const pumped = { test: test.number, well: null, line: test.line, prefix, from: pumpedWell(test, log) };
    const observed = test.observed.map((each, n) => ({
      test: test.number,
      well: each.name?.text ?? `observation well ${n + 1}`,
      line: each.line,
      prefix: `${prefix}.observed.${n + 1}`,
      from: observedWell(each),
    }));
    return [pumped, ...observed].map((read) => seriesOf(read, figures));
  });
}
