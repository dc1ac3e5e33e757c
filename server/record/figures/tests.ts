import { casingStorageTime, about as ofStorage } from '../../calculations/pumping/casing-storage.ts';
import { cooperJacob } from '../../calculations/pumping/cooper-jacob.ts';
import { about as ofCapacity, specificCapacity } from '../../calculations/pumping/specific-capacity.ts';
import { innermost } from '../../model/casing-top.ts';
import type { Depth, ObservedWell, Phase, Test, WellLog } from '../../model/log.ts';
import { figureOf } from '../figure.ts';
import { stringInDoubt } from '../geometry/strings.ts';
import { type Ingredient, measured, worked } from '../ingredient.ts';
import { inDoubt } from '../intervals.ts';
import { linesInDoubt } from '../lines-in-doubt.ts';
import type { Figure } from '../record.ts';
import {
  drawdownOf,
  observedWell,
  pumpedWell,
  pumpingPhases,
  type ReadWell,
  recoveryPhase,
  seriesOf,
  startsOf,
} from '../tests/drawdowns.ts';
import type { Family } from './family.ts';
import {
  type Analysed,
  cooperJacobFigures,
  decadeEnd,
  mostCurves,
  recoveryFigure,
  theisFigures,
} from './test-lines.ts';
import { stepFigures } from './test-steps.ts';

/** `test.N.specific-capacity`, `.cooper-jacob.…`, `.theis.…`, `.recovery.…`, `.step.K.…`, `.observed.K.…`. */
export const testFigures: Family = ({ log }) => {
  const wells = log.tests.reduce((sum, test) => sum + 1 + test.observed.length, 0);
  return log.tests.flatMap((test) => figuresOf(test, log, wells <= mostCurves));
};

function figuresOf(test: Test, log: WellLog, curves: boolean): Figure[] {
  const well = pumpedWell(test, log);
  const own = pumpedAnalysis(test, well, log);
  const observed = test.observed.map((each, index) => {
    const analysed = observedAnalysis(test, each, index, log);
    const figures = onlyRecovered(each) ? [] : linesOf(analysed, nominalRadius, curves);
    return { usable: usable(analysed), prefix: analysed.id, figures };
  });
  const other = usable(own.analysed) ? undefined : observed.find((each) => each.usable);
  return [
    capacityFigure(test, well, log),
    ...(other ? standingIn(other, `test.${test.number}`) : ownLines(own, curves)),
    ...recoveryFigures(test, well, log),
    ...stepFigures(test, well, log),
    ...observed.flatMap((each) => each.figures),
    ...observedRecoveries(test, log),
  ];
}

/** True where a well was read after the pump stopped and not before. */
const onlyRecovered = ({ phases }: ObservedWell): boolean =>
  phases.some(({ kind }) => kind === 'recovery') &&
  !phases.some(({ readings, kind }) => kind === 'pumping' && readings.length > 0);

const ownLines = ({ analysed, storage, radius }: Own, curves: boolean): Figure[] =>
  analysed.series.readings.length > 1 ? [...storage, ...linesOf(analysed, radius, curves)] : [];

/** The first observation well speaks for the test where the pumped well was not read often enough. */
const standingIn = (other: { prefix: string; figures: readonly Figure[] }, id: string): Figure[] =>
  other.figures
    .filter((figure) => !figure.id.includes(decadeEnd))
    .map((figure) => ({ ...figure, id: figure.id.replace(other.prefix, id) }));

const linesOf = (analysed: Analysed, radius: number, curves: boolean): Figure[] => [
  ...cooperJacobFigures(analysed),
  ...theisFigures(analysed, radius, curves),
];

const fewestReadings = 3;

const usable = ({ series }: Analysed): boolean =>
  series.readings.filter((reading) => reading.time > 0).length >= fewestReadings;

function lastReading(phase: Phase | undefined, rest: Depth | null) {
  const reading = phase?.readings.findLast((each) => drawdownOf(each, rest) !== null && (each.elapsed?.value ?? 1) > 0);
  return reading ? { reading, drawdown: drawdownOf(reading, rest) } : null;
}

/** Rate over drawdown at the last reading while pumping. */
function capacityFigure(test: Test, well: ReadWell, { units }: WellLog): Figure {
  const phase = pumpingPhases(well).findLast((each) => each.readings.length > 0);
  const last = lastReading(phase, well.rest);
  const rate = phase?.rate ?? test.rate;
  const level = last?.reading.level ?? last?.reading.drawdown ?? null;
  const drawdown = worked('drawdown at the last reading', last?.drawdown ?? null, 'length', units, {
    waitsFor: [well.rest || !phase ? 'the drawdown while pumping' : 'the level at rest'],
    doubtful: inDoubt(level) || inDoubt(well.rest),
    line: last?.reading.line ?? null,
  });
  return figureOf(
    {
      id: `test.${test.number}.specific-capacity`,
      title: 'specific capacity at the last reading',
      shown: 'specific-capacity',
      formula: ofCapacity,
      ingredients: [measured('rate', rate, 'm3/s', test.line, 'the rate of the test'), drawdown],
      compute: specificCapacity,
      at: test,
    },
    units,
  );
}

/** Radius that the curve is fitted at where the well's own is not known; the transmissivity does not depend on it. */
const nominalRadius = 0.1;

interface Own {
  readonly analysed: Analysed;
  readonly storage: readonly Figure[];
  readonly radius: number;
}

function pumpedAnalysis(test: Test, well: ReadWell, log: WellLog): Own {
  const [first] = pumpingPhases(well);
  const series = seriesOf(first ?? null, well.rest);
  const rate = first?.rate ?? test.rate;
  const casing = innermost(log.strings, { moment: test.start?.from ?? null, line: test.line });
  const inside = casing?.size.insideDiameter ?? null;
  const base = { id: `test.${test.number}`, well: 'the pumped well', at: test, rate, series, units: log.units };
  const analysed = { ...base, distance: null, distanceFrom: null, from: 0, fromInDoubt: false };
  if (inside === null || rate?.value == null) return { analysed, storage: [], radius: nominalRadius };
  const fit = cooperJacob(rate.value, series.readings, { from: null, to: null }, null);
  const end = fit.ok ? casingStorageTime(inside / 2, 0, fit.value.transmissivity) : null;
  const from = end?.ok ? end.value : 0;
  const fromInDoubt = (casing !== null && stringInDoubt(casing)) || inDoubt(rate) || series.doubtful;
  const radius = worked('inside radius of the casing', inside / 2, 'diameter', log.units, {
    line: casing?.line ?? null,
    doubtful: fromInDoubt,
  });
  const storage = fit.ok ? [storageFigure(test, radius, fit.value.transmissivity, log)] : [];
  return { analysed: { ...analysed, from, fromInDoubt }, storage, radius: inside / 2 };
}

const storageFigure = (test: Test, radius: Ingredient, transmissivity: number, { units }: WellLog): Figure =>
  figureOf(
    {
      id: `test.${test.number}.casing-storage-end`,
      title: 'time from which the casing’s own water no longer rules the drawdown',
      shown: 'minutes',
      formula: { ...ofStorage, text: `${ofStorage.text}; rp taken as 0, T of the line through all readings` },
      ingredients: [radius, worked('transmissivity', transmissivity, 'transmissivity', units)],
      compute: (casing, t) => casingStorageTime(casing, 0, t),
      at: test,
    },
    units,
  );

function observedAnalysis(test: Test, observed: ObservedWell, index: number, log: WellLog): Analysed {
  const well = observedWell(observed);
  const [first] = pumpingPhases(well);
  return {
    id: `test.${test.number}.observed.${index + 1}`,
    well: observed.name?.text ?? `observation well ${index + 1}`,
    at: observed,
    rate: first?.rate ?? test.rate,
    series: seriesOf(first ?? null, well.rest),
    distance: observed.distance?.value ?? Number.NaN,
    distanceFrom: observed.distance,
    from: 0,
    fromInDoubt: false,
    units: log.units,
  };
}

/** Time pumped at the last rate that takes the volume of all rates, s: the usual stand-in for a pump that ran at several. */
function timePumped(phases: readonly Phase[], stop: number | null, test: Test): number | null {
  const last = phases.at(-1)?.rate?.value ?? test.rate?.value ?? null;
  if (phases.length === 0 || stop === null || last === null || !(last > 0)) return stop;
  const starts = startsOf(phases);
  let volume = 0;
  for (const [index, phase] of phases.entries()) {
    const rate = phase.rate?.value ?? last;
    volume += rate * Math.max(0, Math.min(stop, starts[index + 1] ?? stop) - (starts[index] ?? 0));
  }
  return volume / last;
}

function recoveryFigures(test: Test, well: ReadWell, log: WellLog): Figure[] {
  const phase = recoveryPhase(well);
  if (!phase) return [];
  const pumping = pumpingPhases(well);
  const analysed: Analysed = {
    id: `test.${test.number}`,
    well: 'the pumped well',
    at: test,
    rate: pumping.at(-1)?.rate ?? test.rate,
    series: seriesOf(phase, well.rest),
    distance: null,
    distanceFrom: null,
    from: 0,
    fromInDoubt: false,
    units: log.units,
  };
  return [
    recoveryFigure(analysed, timePumped(pumping, stopOf(phase, test), test), timeInDoubt(pumping, phase, test, log)),
  ];
}

/** True where a rate, a time of the pumping, or the line of the recovery itself is in doubt. */
const timeInDoubt = (pumping: readonly Phase[], recovered: Phase, test: Test, log: WellLog): boolean =>
  linesInDoubt(log).has(recovered.span.line) ||
  inDoubt(test.duration) ||
  pumping.some(({ rate, readings }) => inDoubt(rate) || readings.some(({ elapsed }) => inDoubt(elapsed)));

/** When the pump stopped, s on the pumping clock: as written, else after the duration in the head of the test. */
const stopOf = (phase: Phase, test: Test): number | null => phase.stop ?? test.duration?.value ?? null;

const observedRecoveries = (test: Test, log: WellLog): Figure[] =>
  test.observed.flatMap((observed, index) => {
    const well = observedWell(observed);
    const phase = recoveryPhase(well);
    if (!phase) return [];
    const pumping = pumpingPhases(pumpedWell(test, log));
    const base = observedAnalysis(test, observed, index, log);
    const analysed = { ...base, rate: pumping.at(-1)?.rate ?? test.rate, series: seriesOf(phase, well.rest) };
    return [
      recoveryFigure(analysed, timePumped(pumping, stopOf(phase, test), test), timeInDoubt(pumping, phase, test, log)),
    ];
  });
