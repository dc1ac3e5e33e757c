import type { DepthWindow } from './depth-window.ts';
import { metresIn } from './lengths.ts';

/** Depth to place on the page: `y = top + (depth - window.top) * mmPerMetre`. */
export interface DepthScale {
  readonly window: DepthWindow;
  /** Where the window's top is on the page, in mm. */
  readonly top: number;
  readonly mmPerMetre: number;
  /** The scale is 1 to this. */
  readonly denominator: number;
}

const steps = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10];

/** The greatest round number that is not above the value. */
export function roundBelow(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = steps.filter((each) => each * decade <= value * (1 + 1e-12)).at(-1) ?? 1;
  return Number((step * decade).toPrecision(6));
}

/** The least round number that is not below the value. */
export function roundAbove(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = steps.find((each) => each * decade >= value * (1 - 1e-12)) ?? 10;
  return Number((step * decade).toPrecision(6));
}

const baseOf = (unit: string): number => (unit === 'ft' || unit === 'in' ? 12 : 1);

/** The greatest round scale at which the window is at most `height` mm high; of 12 inches to the foot in US units. */
export function fittingScale(window: DepthWindow, top: number, height: number, unit: string): DepthScale {
  const base = baseOf(unit);
  return givenScale(window, top, base * roundAbove(((window.bottom - window.top) * 1000) / height / base));
}

/** The smallest round scale at which the window is at least `height` mm high; of 12 inches to the foot in US units. */
export function depthScale(window: DepthWindow, top: number, height: number, unit: string): DepthScale {
  const base = baseOf(unit);
  const denominator = base * roundBelow(((window.bottom - window.top) * 1000) / height / base);
  return { window, top, mmPerMetre: 1000 / denominator, denominator };
}

/** The scale 1 to `denominator`; where that is no number above 0, 1 to 1. */
export function givenScale(window: DepthWindow, top: number, denominator: number): DepthScale {
  const sound = Number.isFinite(denominator) && denominator > 0 ? denominator : 1;
  return { window, top, mmPerMetre: 1000 / sound, denominator: sound };
}

export const yOf = (scale: DepthScale, depth: number): number =>
  scale.top + (depth - scale.window.top) * scale.mmPerMetre;

export const bottomY = (scale: DepthScale): number => yOf(scale, scale.window.bottom);

/** The depth itself, or the nearest that the drawing shows. */
export const shown = (window: DepthWindow, depth: number): number =>
  Math.min(Math.max(depth, window.top), window.bottom);

export const isShown = (window: DepthWindow, depth: number): boolean =>
  Number.isFinite(depth) && depth >= window.top && depth <= window.bottom;

const tickSteps = [1, 2, 5];

/** A round step, in the unit, whose marks stand at least `apart` mm from each other. */
export function tickStep(mmPerUnit: number, apart: number): number {
  const least = apart / mmPerUnit;
  const decade = 10 ** Math.floor(Math.log10(least));
  return Number(((tickSteps.find((step) => step * decade >= least) ?? 10) * decade).toPrecision(6));
}

export interface Tick {
  /** In the unit of the axis. */
  readonly value: number;
  readonly y: number;
  readonly major: boolean;
}

/* Marks and minor marks of an axis, at least this far apart, in mm. */
const majorApart = 9;
const minorApart = 1.6;

/** Marks of an axis in `unit` whose value grows with depth (`sign` 1) or with height (-1) from `origin` metres at ground. */
export function axisTicks(scale: DepthScale, unit: string, sign: 1 | -1, origin: number): Tick[] {
  const perUnit = scale.mmPerMetre * metresIn(unit);
  const major = tickStep(perUnit, majorApart);
  const minor = [10, 5, 2].map((parts) => major / parts).find((step) => step * perUnit >= minorApart) ?? major;
  const valueAt = (depth: number): number => (origin + sign * depth) / metresIn(unit);
  const [low, high] = [valueAt(scale.window.top), valueAt(scale.window.bottom)].sort((a, b) => a - b) as [
    number,
    number,
  ];
  const first = Math.ceil(low / minor - 1e-9);
  const count = Math.floor(high / minor + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, n) => {
    const value = Number(((first + n) * minor).toPrecision(12));
    const y = yOf(scale, (value * metresIn(unit) - origin) * sign);
    return { value, y, major: Math.abs(Math.round(value / major) * major - value) < minor / 1000 };
  });
}

/** The digits after the point that the marks of the axis need. */
export const tickDecimals = (ticks: readonly Tick[]): number => {
  const majors = ticks.filter((tick) => tick.major);
  const step = Math.abs((majors[1]?.value ?? 1) - (majors[0]?.value ?? 0));
  return Math.min(6, Math.max(0, -Math.floor(Math.log10(step || 1))));
};
