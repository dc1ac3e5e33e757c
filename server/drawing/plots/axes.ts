import { scaleLinear, scaleLog } from 'd3-scale';
import type { Box } from '../shapes.ts';

export interface AxisTick {
  readonly at: number;
  /** Empty for marks without a number. */
  readonly text: string;
}

/** An axis of a plot: where a value is on the page, in mm. */
export interface Axis {
  readonly title: string;
  readonly placeOf: (value: number) => number;
  readonly ticks: readonly AxisTick[];
}

/** The value as it stands at a mark, without the noise of binary fractions. */
const tickText = (value: number): string => String(Number(value.toPrecision(10)));

const wishedTicks = 8;
/* A stretch shorter than this has no marks that can be told apart. */
const leastStretch = 1e-9;

/** A linear axis from `start` to `end` mm that shows all of the domain, ending at round values. */
export function linearAxis(title: string, domain: readonly [number, number], start: number, end: number): Axis {
  const [low, high] = domain[1] - domain[0] > leastStretch ? domain : [domain[0], domain[0] + 1];
  const scale = scaleLinear().domain([low, high]).range([start, end]).nice(wishedTicks);
  return {
    title,
    placeOf: (value) => scale(value),
    ticks: scale.ticks(wishedTicks).map((value) => ({ at: scale(value), text: tickText(value) })),
  };
}

/* Within so few tenfolds every second mark can be named, within more only the tenfolds themselves. */
const fewTenfolds = 2;

function isNamed(value: number, tenfolds: number): boolean {
  const lead = Number((value / 10 ** Math.floor(Math.log10(value) + 1e-9)).toPrecision(6));
  return lead === 1 || (tenfolds <= fewTenfolds && (lead === 2 || lead === 5));
}

/** A logarithmic axis over whole tenfolds, or from the first to the last mark where there is less than one. */
export function logAxis(title: string, domain: readonly [number, number], start: number, end: number): Axis {
  const [low, high] = [domain[0], Math.max(domain[1], domain[0] * 2)];
  const scale = scaleLog().domain([low, high]).range([start, end]).nice();
  const [first, last] = scale.domain() as [number, number];
  const tenfolds = Math.log10(last / first);
  return {
    title,
    placeOf: (value) => scale(value),
    ticks: scale.ticks().map((value) => ({ at: scale(value), text: isNamed(value, tenfolds) ? tickText(value) : '' })),
  };
}

/** The inside of a plot whose outside is a box: room is left for the numbers and the titles of its axes. */
export const plotBox = (outside: Box): Box => ({
  x: outside.x + 17,
  y: outside.y + 4,
  width: outside.width - 17 - 6,
  height: outside.height - 4 - 11,
});
