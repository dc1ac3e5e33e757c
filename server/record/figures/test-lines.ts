import { type Formula, known, type Outcome, refused } from '../../calculations/formula.ts';
import {
  type CooperJacob,
  cooperJacob,
  about as ofCooperJacob,
  STRICT_U,
} from '../../calculations/pumping/cooper-jacob.ts';
import type { Reading } from '../../calculations/pumping/readings.ts';
import { about as ofRecovery, recovery } from '../../calculations/pumping/recovery.ts';
import { about as ofTheis, theisFit } from '../../calculations/pumping/theis-fit.ts';
import type { FileUnits, Measure } from '../../model/log.ts';
import type { Shown } from '../display.ts';
import { type At, figureOf } from '../figure.ts';
import { formatNumber, significant } from '../format-number.ts';
import { type Ingredient, measured, worked } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import type { Series } from '../tests/drawdowns.ts';
import { timeText, windowText } from '../tests/window-text.ts';

/** One well's drawdowns at one rate, ready for a straight line or a curve. */
export interface Analysed {
  /** Id that the figures' ids begin with: `test.1`, `test.1.observed.1`. */
  readonly id: string;
  readonly well: string;
  readonly at: At;
  readonly rate: Measure | null;
  readonly series: Series;
  /** Distance from the pumped well, m; null in the pumped well itself. */
  readonly distance: number | null;
  readonly distanceFrom: Measure | null;
  /** Time from which the casing's storage no longer rules, s; 0 in an observation well. */
  readonly from: number;
  /** True where `from` rests on a doubtful size or rate. */
  readonly fromInDoubt: boolean;
  readonly units: FileUnits;
}

const readingsIngredient = ({ series, well, fromInDoubt }: Analysed, used: readonly Reading[]): Ingredient => {
  const [first, last] = [used[0]?.time ?? 0, used.at(-1)?.time ?? 0];
  const enough = used.length > 0;
  return {
    value: enough ? used.length : null,
    inputs: [
      {
        name: `readings of ${well}`,
        value: used.length,
        unit: '1',
        text: enough ? `${used.length}, ${windowText(first, last)}` : 'none',
        line: series.firstLine,
      },
    ],
    waitsFor: enough ? [] : [`drawdowns of ${well}`],
    doubtful: series.doubtful || fromInDoubt,
    significant: null,
    decimals: null,
    unit: null,
  };
};

const rateOf = ({ rate, at }: Analysed): Ingredient =>
  measured('pumping rate', rate, 'm3/s', at.line, 'the pumping rate');

const distanceOf = ({ distanceFrom, distance, at }: Analysed): Ingredient[] =>
  distance === null ? [] : [measured('distance', distanceFrom, 'm', at.line, 'the distance of the observation well')];

interface Result {
  readonly name: string;
  readonly title: string;
  readonly shown: Shown;
}

const transmissivity: Result = { name: 'transmissivity', title: 'transmissivity', shown: 'transmissivity' };
const storativity: Result = { name: 'storativity', title: 'storage coefficient', shown: 'small-ratio' };
const slope: Result = { name: 'slope', title: 'drawdown in a tenfold of time', shown: 'length' };
const misfit: Result = { name: 'misfit', title: 'misfit of the readings', shown: 'length' };

function resultFigure(
  analysed: Analysed,
  method: string,
  { name, title, shown }: Result,
  used: readonly Reading[],
  formula: Formula,
  value: Outcome,
  warning: string | null = null,
): Figure {
  const window = used.length > 0 ? `, ${windowText(used[0]?.time ?? 0, used.at(-1)?.time ?? 0)}` : '';
  return figureOf(
    {
      id: `${analysed.id}.${method}.${name}`,
      title: `${title}, ${formula.name.replace('transmissivity ', '')}, ${analysed.well}${window}`,
      shown,
      formula,
      ingredients: [rateOf(analysed), readingsIngredient(analysed, used), ...distanceOf(analysed)],
      compute: () => value,
      at: analysed.at,
      caution: cautionOf(analysed, used, formula, warning),
    },
    analysed.units,
  );
}

/** Readings from before casing storage ends are used only where there are no others; then the figure says so. */
function cautionOf(
  { from }: Analysed,
  used: readonly Reading[],
  { caution }: Formula,
  warning: string | null,
): string | null {
  const early =
    (used[0]?.time ?? from) < from
      ? `Readings before ${timeText(from)} are in it, while the casing's own water still ruled the drawdown.`
      : null;
  return [early, warning, caution].filter(Boolean).join(' ') || null;
}

/** Where u is not small the readings lie beside the straight line: told, not refused. */
function warningOf(fit: Outcome<CooperJacob>): string | null {
  if (!fit.ok || fit.value.largestU === null || fit.value.largestU <= STRICT_U) return null;
  const { largestU, from, to } = fit.value;
  const [most, least] = [largestU, (largestU * from) / to].map((u) => formatNumber(u, significant(2)));
  return `u runs from ${most} down to ${least} in this window; strictly the line holds below ${STRICT_U}, so that a later window may be better.`;
}

const inWindow = (readings: readonly Reading[], from: number, to: number): Reading[] =>
  readings.filter((reading) => reading.time > 0 && reading.time >= from && reading.time <= to);

const whole = { from: null, to: null };

function line(analysed: Analysed, used: readonly Reading[]): Outcome<CooperJacob> {
  const rate = analysed.rate?.value ?? null;
  return rate === null ? refused('nothing was pumped') : cooperJacob(rate, used, whole, analysed.distance);
}

const pick = <T>(outcome: Outcome<T>, part: (value: T) => number | null): Outcome => {
  if (!outcome.ok) return outcome;
  const value = part(outcome.value);
  return value === null ? refused('one well’s own drawdown gives no storage coefficient') : known(value);
};

/** Straight line over the readings after casing storage, and over each tenfold of time: the window decides the answer. */
export function cooperJacobFigures(analysed: Analysed): Figure[] {
  const { readings } = analysed.series;
  const late = inWindow(readings, analysed.from, Number.POSITIVE_INFINITY);
  const used = late.length >= fewestReadings ? late : inWindow(readings, 0, Number.POSITIVE_INFINITY);
  const fit = line(analysed, used);
  const results =
    analysed.distance === null ? [transmissivity, slope, misfit] : [transmissivity, storativity, slope, misfit];
  return [
    ...results.map((result) =>
      resultFigure(
        analysed,
        'cooper-jacob',
        result,
        used,
        ofCooperJacob,
        pick(fit, valueFor[result.name] ?? none),
        warningOf(fit),
      ),
    ),
    ...decadeFigures(analysed),
  ];
}

const none = (): null => null;

const valueFor: Readonly<Record<string, (fit: CooperJacob) => number | null>> = {
  transmissivity: (fit) => fit.transmissivity,
  storativity: (fit) => fit.storativity,
  slope: (fit) => fit.slope,
  misfit: (fit) => fit.misfit,
};

const fewestReadings = 3;
const minute = 60;

/** What the ids of lines over one tenfold of time have in them: `cooper-jacob.1-10-min.transmissivity`. */
export const decadeEnd = '-min';

/** One line for each tenfold of minutes that has three readings, where there is more than one. */
function decadeFigures(analysed: Analysed): Figure[] {
  const decades = [0, 1, 2, 3, 4].map((power) => {
    const [from, to] = [minute * 10 ** power, minute * 10 ** (power + 1)];
    return {
      name: `${10 ** power}-${10 ** (power + 1)}${decadeEnd}`,
      used: inWindow(analysed.series.readings, from, to),
    };
  });
  const worth = decades.filter(({ used }) => used.length >= fewestReadings);
  if (worth.length < 2) return [];
  const results = analysed.distance === null ? [transmissivity] : [transmissivity, storativity];
  return worth.flatMap(({ name, used }) => {
    const fit = line(analysed, used);
    if (!fit.ok) return [];
    return results.map((result) =>
      resultFigure(
        analysed,
        `cooper-jacob.${name}`,
        result,
        used,
        ofCooperJacob,
        pick(fit, valueFor[result.name] ?? none),
        warningOf(fit),
      ),
    );
  });
}

/** More readings than anyone takes by hand; the fit walks through all of them many times. */
const mostReadings = 2000;

/** More wells than anyone reads in one test; a curve is fitted to each of those up to here. */
export const mostCurves = 40;

/**
 * The Theis curve nearest to the readings; in the pumped well, at `radius`, it gives no storage coefficient. `fits` is
 * false where there are too many wells to fit curves to.
 */
export function theisFigures(analysed: Analysed, radius: number, fits: boolean): Figure[] {
  const all = inWindow(analysed.series.readings, analysed.from, Number.POSITIVE_INFINITY);
  const used = all.length >= fewestReadings ? all : inWindow(analysed.series.readings, 0, Number.POSITIVE_INFINITY);
  const rate = analysed.rate?.value ?? null;
  const reason = fits ? whyNoFit(rate, used) : `more than ${mostCurves} wells were read: no curves are fitted`;
  const fit = reason === null ? theisFit(rate ?? 0, used, whole, analysed.distance ?? radius) : refused(reason);
  const value = (part: 'transmissivity' | 'storativity' | 'misfit') => pick(fit, (found) => found[part]);
  const figures = [resultFigure(analysed, 'theis', transmissivity, used, ofTheis, value('transmissivity'))];
  if (analysed.distance !== null) {
    figures.push(resultFigure(analysed, 'theis', storativity, used, ofTheis, value('storativity')));
  }
  return [...figures, resultFigure(analysed, 'theis', misfit, used, ofTheis, value('misfit'))];
}

function whyNoFit(rate: number | null, used: readonly Reading[]): string | null {
  if (rate === null) return 'nothing was pumped';
  return used.length > mostReadings ? `more than ${mostReadings} readings: no curve is fitted` : null;
}

/** Residual drawdown against t/t′. `pumped` is the time pumped, s, at the last rate. */
export function recoveryFigure(analysed: Analysed, pumped: number | null, doubtful: boolean): Figure {
  const used = inWindow(analysed.series.readings, 0, Number.POSITIVE_INFINITY);
  const rate = analysed.rate?.value ?? null;
  const fit = rate === null || pumped === null ? refused('nothing was pumped') : recovery(rate, pumped, used, whole);
  const time = worked('time pumped', pumped, 'time', analysed.units, {
    waitsFor: ['the time that the pump stopped'],
    doubtful,
  });
  return figureOf(
    {
      id: `${analysed.id}.recovery.transmissivity`,
      title: `transmissivity, by recovery, ${analysed.well}`,
      shown: 'transmissivity',
      formula: ofRecovery,
      ingredients: [rateOf(analysed), time, readingsIngredient(analysed, used)],
      compute: () => pick(fit, (found) => found.transmissivity),
      at: analysed.at,
    },
    analysed.units,
  );
}
