import type { FittedCurve, TestSeries, Record as WellRecord } from '../../record/record.ts';
import { metresIn } from '../lengths.ts';
import type { Drawing } from '../scene.ts';
import { type Box, line, type Part, type Shape, stroked } from '../shapes.ts';
import { fitted, rowHeight, textRow, types, wrapped } from '../text.ts';
import { wellName } from '../title.ts';
import { unitName } from '../words.ts';
import { type Axis, linearAxis, logAxis, plotBox } from './axes.ts';
import { plotFrame } from './frame.ts';
import { fitStyles, type Mark, markOf, windowEnds } from './marks.ts';

/** A value of a reading or of a curve that is put on a plot. */
interface Point {
  readonly across: number;
  readonly drawdown: number;
}

interface PlottedReading extends Point {
  readonly line: number;
  readonly words: string;
}

interface PlottedCurve {
  readonly method: FittedCurve['method'];
  readonly name: string;
  readonly points: readonly Point[];
}

/** What was read in one well, as one plot shows it. */
interface PlottedWell {
  readonly name: string;
  readonly line: number;
  readonly mark: Mark;
  readonly readings: readonly PlottedReading[];
  /** Whether the readings are joined by a line. */
  readonly joined: boolean;
  readonly curves: readonly PlottedCurve[];
}

type AxisMaker = (title: string, domain: readonly [number, number], start: number, end: number) => Axis;

interface Plot {
  readonly name: string;
  readonly across: string;
  readonly axis: AxisMaker;
  readonly down: string;
  readonly wells: readonly PlottedWell[];
  /** Whether the axis across runs from right to left. */
  readonly turned: boolean;
}

const secondsAMinute = 60;
const secondsAnHour = 3600;
/* Longer tests are read in hours. */
const longInMinutes = 12 * secondsAnHour;
/* A plot has room for no more marks; of a logger's readings every nth is shown. */
const mostMarks = 600;

/* No clock of a test reads less or more, in minutes or hours, and no well is deeper: a slip. */
const [leastAcross, mostAcross, mostDrawdown] = [1e-6, 1e9, 1e5];

const usable = ({ across, drawdown }: Point): boolean =>
  (across === 0 || Math.abs(across) >= leastAcross) &&
  Math.abs(across) <= mostAcross &&
  Math.abs(drawdown) <= mostDrawdown;

function thinned<T>(list: readonly T[]): readonly T[] {
  const every = Math.ceil(list.length / mostMarks);
  return every <= 1 ? list : list.filter((_, n) => n % every === 0);
}

const short = (value: number): string => String(Number(value.toPrecision(4)));

const wellNameOf = ({ well }: TestSeries): string => well ?? 'Pumped well';

const methodNames: Readonly<{ [M in FittedCurve['method']]: string }> = {
  'cooper-jacob': 'straight line (Cooper and Jacob)',
  theis: 'Theis curve',
  recovery: 'straight line through the recovery',
};

const timeText = (seconds: number): string =>
  seconds >= 2 * secondsAnHour ? `${short(seconds / secondsAnHour)} h` : `${short(seconds / secondsAMinute)} min`;

/** The figures of a fit in words: transmissivity, storage coefficient, misfit, and the window of its readings. */
function fitText(record: WellRecord, { method, figures, from, to }: FittedCurve): string {
  const textOf = (name: string, what: string): string => {
    const figure = record.figures.find(({ id }) => id === `${figures}.${name}`);
    return figure?.value == null ? '' : `${what} ${figure.text}`;
  };
  const parts = [
    `${timeText(from)} – ${timeText(to)}`,
    textOf('transmissivity', 'transmissivity'),
    textOf('storativity', 'storage coefficient'),
    textOf('misfit', 'misfit'),
  ];
  return `${methodNames[method]}: ${parts.filter(Boolean).join(', ')}`;
}

interface Taking {
  readonly across: (reading: TestSeries['readings'][number], series: TestSeries) => number | null;
  readonly curveAt: (time: number, series: TestSeries) => number;
  readonly methods: readonly FittedCurve['method'][];
  readonly joined: boolean;
}

function plottedWell(record: WellRecord, series: TestSeries, index: number, unit: string, take: Taking): PlottedWell {
  const inFile = (metres: number): number => metres / metresIn(unit);
  const readings = series.readings.flatMap((reading) => {
    const across = take.across(reading, series);
    const drawdown = inFile(reading.drawdown);
    const when = reading.phase === 'recovery' ? `${timeText(reading.time)} after the stop` : timeText(reading.time);
    const words = `${wellNameOf(series)}, ${when}: drawdown ${short(drawdown)} ${unitName(unit)}`;
    return across === null ? [] : [{ across, drawdown, line: reading.line, words }];
  });
  const curves = series.curves
    .filter(({ method }) => take.methods.includes(method))
    .map((curve) => ({
      method: curve.method,
      name: `${wellNameOf(series)}, ${fitText(record, curve)}`,
      points: curve.points
        .map(({ time, drawdown }) => ({ across: take.curveAt(time, series), drawdown: inFile(drawdown) }))
        .filter(usable),
    }));
  return {
    name: wellNameOf(series),
    line: series.line,
    mark: markOf(index),
    readings: thinned(readings.filter(usable)),
    joined: take.joined,
    curves,
  };
}

const extentOf = (values: readonly number[]): readonly [number, number] =>
  values.reduce<readonly [number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );

const width = 180;
const plotHeight = 92;
const margin = 3;
const headHeight = 9;

function wellParts({ readings, curves, mark, joined, name, line: at }: PlottedWell, across: Axis, down: Axis): Part[] {
  const placeOf = (point: Point): readonly [number, number] => [
    across.placeOf(point.across),
    down.placeOf(point.drawdown),
  ];
  const join = joined && readings.length > 1 ? [line(readings.map(placeOf), stroked(mark.paint, 0.2))] : [];
  return [
    { name: 'plot-line', line: at, title: name, shapes: join },
    ...curves
      .filter(({ points }) => points.length > 1)
      .map((curve) => {
        const points = curve.points.map(placeOf);
        const style = fitStyles[curve.method] ?? stroked('doubt', 0.4);
        return {
          name: `fit-${curve.method}`,
          line: at,
          title: curve.name,
          shapes: [line(points, style), ...windowEnds(points)],
        };
      }),
    ...readings.map((reading) => ({
      name: 'reading',
      line: reading.line,
      title: reading.words,
      shapes: mark.shapes(...placeOf(reading)),
    })),
  ];
}

const keyWidth = 10;

/** What the marks and lines stand for, with the figures of the fits. */
function keyParts(wells: readonly PlottedWell[], top: number): { parts: Part[]; foot: number } {
  let y = top;
  const row = (text: string, swatch: (middle: number) => Shape[], at: number): Part => {
    const rows = wrapped(text, types.small, width - 2 * margin - keyWidth, 3);
    const shapes = [
      ...swatch(y + rowHeight(types.small) / 2),
      ...rows.map((each, n) => textRow(each, margin + keyWidth, y + n * rowHeight(types.small), types.small)),
    ];
    y += rows.length * rowHeight(types.small) + 0.8;
    return { name: 'key', line: at, title: text, shapes };
  };
  const parts = wells.flatMap((well) => [
    row(well.name, (middle) => well.mark.shapes(margin + keyWidth / 2 - 1, middle), well.line),
    ...well.curves.map((curve) =>
      row(
        curve.name,
        (middle) => [
          line(
            [
              [margin, middle],
              [margin + keyWidth - 2, middle],
            ],
            fitStyles[curve.method] ?? stroked('doubt', 0.4),
          ),
        ],
        well.line,
      ),
    ),
  ]);
  return { parts, foot: y };
}

function drawPlot(record: WellRecord, test: number, plot: Plot): Drawing[] {
  const wells = plot.wells.filter(({ readings }) => readings.length > 1);
  if (wells.length === 0) return [];
  const points = wells.flatMap(({ readings, curves }) => [...readings, ...curves.flatMap((curve) => curve.points)]);
  const outside: Box = { x: margin, y: margin + headHeight, width: width - 2 * margin, height: plotHeight };
  const box = plotBox(outside);
  const ends = plot.turned ? ([box.x + box.width, box.x] as const) : ([box.x, box.x + box.width] as const);
  const across = plot.axis(plot.across, extentOf(points.map((point) => point.across)), ...ends);
  const [least, most] = extentOf(points.map(({ drawdown }) => drawdown));
  const down = linearAxis(plot.down, [Math.min(least, 0), most], box.y, box.y + box.height);
  const key = keyParts(wells, outside.y + outside.height + 3);
  const title = `Test ${test} of ${wellName(record.log.header)}: ${plot.name}`;
  const head = { ...types.head, size: 3.2 };
  return [
    {
      widthMm: width,
      heightMm: key.foot + margin,
      title,
      description: `${plot.across} against drawdown; ${wells.map(({ name, readings }) => `${name}, ${readings.length} readings`).join('; ')}.`,
      tiles: [],
      parts: [
        {
          name: 'plot-title',
          line: wells[0]?.line ?? null,
          title,
          shapes: [textRow(fitted(title, head, width - 2 * margin), margin, margin, head)],
        },
        plotFrame(across, down, box),
        ...wells.flatMap((well) => wellParts(well, across, down)),
        ...key.parts,
      ],
    },
  ];
}

/** Pumping and recovery one after the other, time even. */
function linearPlot(record: WellRecord, series: readonly TestSeries[], unit: string): Plot {
  const stop = series[0]?.stop ?? null;
  const timeOf: Taking['across'] = ({ phase, time }, { stop: own }) => {
    if (phase === 'pumping') return time;
    const start = own ?? stop;
    return start === null ? null : start + time;
  };
  const longest = series.reduce(
    (most, each) => each.readings.reduce((more, reading) => Math.max(more, timeOf(reading, each) ?? 0), most),
    0,
  );
  const [each, name] = longest > longInMinutes ? [secondsAnHour, 'hours'] : [secondsAMinute, 'minutes'];
  const take: Taking = {
    across: (reading, from) => {
      const time = timeOf(reading, from);
      return time === null ? null : time / each;
    },
    curveAt: (time) => time / each,
    methods: [],
    joined: true,
  };
  return {
    name: 'drawdown and recovery',
    across: `Time since pumping began, ${name}`,
    axis: linearAxis,
    down: `Drawdown, ${unitName(unit)}`,
    wells: series.map((from, n) => plottedWell(record, from, n, unit, take)),
    turned: false,
  };
}

/** Drawdown while pumping, time in tenfolds. */
function logPlot(record: WellRecord, series: readonly TestSeries[], unit: string): Plot {
  const take: Taking = {
    across: ({ phase, time }) => (phase === 'pumping' && time > 0 ? time / secondsAMinute : null),
    curveAt: (time) => time / secondsAMinute,
    methods: ['cooper-jacob', 'theis'],
    joined: false,
  };
  return {
    name: 'drawdown, time in tenfolds',
    across: 'Time since pumping began, minutes',
    axis: logAxis,
    down: `Drawdown, ${unitName(unit)}`,
    wells: series.map((from, n) => plottedWell(record, from, n, unit, take)),
    turned: false,
  };
}

/** Residual drawdown against the ratio of times, as the recovery's line is fitted. */
function recoveryPlot(record: WellRecord, series: readonly TestSeries[], unit: string): Plot {
  const ratio = (time: number, { pumped }: TestSeries): number =>
    pumped === null ? Number.NaN : (pumped + time) / time;
  const take: Taking = {
    across: ({ phase, time }, from) => (phase === 'recovery' && time > 0 ? ratio(time, from) : null),
    curveAt: ratio,
    methods: ['recovery'],
    joined: false,
  };
  return {
    name: 'recovery',
    across: 't / t′: time since pumping began over time since it stopped (recovery goes to the right)',
    axis: logAxis,
    down: `Residual drawdown, ${unitName(unit)}`,
    wells: series.map((from, n) => plottedWell(record, from, n, unit, take)),
    turned: true,
  };
}

/**
 * The plots of every test: drawdown and recovery against time; drawdown against time in tenfolds with the fitted lines
 * and curves, their windows and figures; recovery against t/t′. A plot for which two readings are lacking is left out.
 */
export function testPlots(record: WellRecord): Drawing[] {
  const unit = record.log.units.depth;
  const tests = [...new Set(record.tests.map(({ test }) => test))];
  return tests.flatMap((test) => {
    const series = record.tests.filter((each) => each.test === test);
    return [linearPlot, logPlot, recoveryPlot].flatMap((plotOf) =>
      drawPlot(record, test, plotOf(record, series, unit)),
    );
  });
}
