import type { Formula, Outcome } from '../../calculations/formula.ts';
import { known, refused } from '../../calculations/formula.ts';
import { about as ofCapacity, specificCapacity } from '../../calculations/pumping/specific-capacity.ts';
import { about as ofDrawdowns, type StepReadings, stepDrawdowns } from '../../calculations/pumping/step-drawdowns.ts';
import {
  linearShare,
  about as ofSteps,
  type Step,
  type StepTest,
  stepTest,
} from '../../calculations/pumping/step-test.ts';
import type { Phase, Test, WellLog } from '../../model/log.ts';
import type { Shown } from '../display.ts';
import { figureOf } from '../figure.ts';
import { type Ingredient, measured, together, worked } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import { pumpingPhases, type ReadWell, seriesOf, startsOf } from '../tests/drawdowns.ts';

interface Steps {
  readonly phases: readonly Phase[];
  readonly rates: readonly Ingredient[];
  /** Time after the start of each step at which they are compared, s. */
  readonly after: number;
  readonly each: Outcome<Step[]>;
  readonly fit: Outcome<StepTest>;
  readonly doubtful: boolean;
}

/** `test.N.step.linear-loss`, `.step.square-loss`, and for each step `.step.K.drawdown`, `.specific-capacity`, `.linear-share`. */
export function stepFigures(test: Test, well: ReadWell, log: WellLog): Figure[] {
  const phases = pumpingPhases(well).filter((phase) => phase.readings.length > 0);
  if (phases.length < 2) return [];
  const steps = stepsOf(phases, well, test);
  return [...lossFigures(test, steps, log), ...phases.flatMap((_, index) => figuresOfStep(test, index, steps, log))];
}

function stepsOf(phases: readonly Phase[], well: ReadWell, test: Test): Steps {
  const starts = startsOf(phases);
  const series = phases.map((phase) => seriesOf(phase, well.rest));
  const lasting = series.map(({ readings }, index) => (readings.at(-1)?.time ?? 0) - (starts[index] ?? 0));
  const after = lasting.reduce((least, time) => Math.min(least, time), Number.POSITIVE_INFINITY);
  const rates = phases.map((phase, index) =>
    measured(`rate of step ${index + 1}`, phase.rate, 'm3/s', test.line, `the rate of step ${index + 1}`),
  );
  const read: StepReadings[] = series.map(({ readings }, index) => ({
    rate: rates[index]?.value ?? Number.NaN,
    start: starts[index] ?? 0,
    readings: readings.filter((reading) => reading.time > 0),
  }));
  const each = after > 0 ? stepDrawdowns(read, after) : refused('a step was not read');
  const fit = each.ok ? stepTest(each.value) : each;
  return { phases, rates, after, each, fit, doubtful: series.some((one) => one.doubtful) };
}

const timeIngredient = (steps: Steps, log: WellLog): Ingredient =>
  worked('time after the start of each step', steps.after, 'minutes', log.units, { doubtful: steps.doubtful });

function lossFigures(test: Test, steps: Steps, log: WellLog): Figure[] {
  const { fit } = steps;
  const figure = (name: string, title: string, shown: Shown, value: Outcome): Figure =>
    stepFigure(test, `step.${name}`, title, shown, ofSteps, [together(steps.rates, () => 0)], steps, value, log);
  const linear = fit.ok ? known(fit.value.linear) : fit;
  const square = fit.ok ? known(fit.value.square) : fit;
  return [
    figure('linear-loss', 'loss in proportion to the rate, B', 'linear-loss', linear),
    figure('square-loss', 'loss with the square of the rate, C', 'well-loss', square),
  ];
}

function figuresOfStep(test: Test, index: number, steps: Steps, log: WellLog): Figure[] {
  const rate = steps.rates[index];
  if (!rate) return [];
  const step = steps.each.ok ? steps.each.value[index] : undefined;
  const { fit } = steps;
  const reason = steps.each.ok ? refused('the step was not read') : steps.each;
  const figure = (name: string, title: string, shown: Shown, formula: Formula, value: Outcome): Figure =>
    stepFigure(test, `step.${index + 1}.${name}`, title, shown, formula, [rate], steps, value, log);
  const title = `step ${index + 1}`;
  return [
    figure('drawdown', `drawdown of ${title}`, 'length', ofDrawdowns, step ? known(step.drawdown) : reason),
    figure(
      'specific-capacity',
      `specific capacity of ${title}`,
      'specific-capacity',
      ofCapacity,
      step ? specificCapacity(step.rate, step.drawdown) : reason,
    ),
    figure(
      'linear-share',
      `share of the drawdown of ${title} in proportion to the rate`,
      'share',
      ofSteps,
      step && fit.ok ? linearShare(fit.value, step.rate) : fit.ok ? reason : fit,
    ),
  ];
}

const stepFigure = (
  test: Test,
  name: string,
  title: string,
  shown: Shown,
  formula: Formula,
  rates: readonly Ingredient[],
  steps: Steps,
  value: Outcome,
  log: WellLog,
): Figure =>
  figureOf(
    {
      id: `test.${test.number}.${name}`,
      title,
      shown,
      formula,
      ingredients: [...rates, timeIngredient(steps, log)],
      compute: () => value,
      at: test,
    },
    log.units,
  );
