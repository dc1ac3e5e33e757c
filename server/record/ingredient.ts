import type { Depth, FileUnits, Interval, Measure } from '../model/log.ts';
import type { LimitInForce } from '../packs/limits.ts';
import { plainText, type Shown, siUnitOf, unitLabel } from './display.ts';
import { bottomOf, inDoubt, topOf } from './intervals.ts';
import type { Figure, FigureInput } from './record.ts';

/** One number that goes into a figure, with where it comes from and how well it is known. */
export interface Ingredient {
  /** SI; null where it is missing. */
  readonly value: number | null;
  readonly inputs: readonly FigureInput[];
  /** The missing facts, in words; empty where the value is known. */
  readonly waitsFor: readonly string[];
  readonly doubtful: boolean;
  /** Significant digits as written; null for constants and limits, which do not bound a figure. */
  readonly significant: number | null;
  /** Decimals as written, in `unit`; null where they cannot be told. */
  readonly decimals: number | null;
  readonly unit: string | null;
}

/** A measure as a reader sees it: as written, with the file's unit where none was written. */
export function measureText(measure: Measure | Depth): string {
  const written = measure.written.trim();
  if (measure.unitWritten || measure.number === null) return written;
  const [number, datum] = written.split(/\s+(?=(?:toc|bgs)$)/i);
  return [number, unitLabel(measure.unit), datum].filter(Boolean).join(' ');
}

/** Digits of a number as written: `7.2` has two, `0.290` three. */
function significantOf(number: number, decimalsWritten: number): number {
  const text = Math.abs(number).toFixed(Math.min(20, Math.max(0, decimalsWritten)));
  return Math.max(1, text.replace('.', '').replace(/^0+/, '').length);
}

/** Decimals as written; two where the number was a fraction or feet and inches. */
function decimalsOf(measure: Measure): number {
  const number = measure.number ?? 0;
  const exactly = Math.abs(number - Number(number.toFixed(measure.decimals))) < 1e-9;
  return exactly ? measure.decimals : Math.max(2, measure.decimals);
}

/** A measure of the log; `fact` names it in words where it is missing. */
export function measured(
  name: string,
  measure: Measure | Depth | null,
  siUnit: string,
  line: number,
  fact: string,
): Ingredient {
  const value = measure?.value ?? null;
  const text = measure ? measureText(measure) : '?';
  return {
    value,
    inputs: [{ name, value, unit: siUnit, text, line: measure?.span.line ?? line }],
    waitsFor: value === null ? [fact] : [],
    doubtful: inDoubt(measure),
    significant: measure?.number == null ? null : significantOf(measure.number, decimalsOf(measure)),
    decimals: measure ? decimalsOf(measure) : null,
    unit: measure?.unit ?? null,
  };
}

/** A depth of the log, in metres below ground. */
export const depthOf = (name: string, depth: Depth | null, line: number, fact: string): Ingredient =>
  measured(name, depth, 'm', line, fact);

/** The length between the two ends of an interval; waits for the end that is missing. */
export function lengthOf(name: string, interval: Interval, line: number, of: string): Ingredient {
  const top = depthOf('top', interval.top, line, `the top of ${of}`);
  const bottom = depthOf('bottom', interval.bottom, line, `the bottom of ${of}`);
  const [from, to] = [topOf(interval), bottomOf(interval)];
  const length = from === null || to === null ? null : Math.abs(to - from);
  const same = top.unit === bottom.unit;
  return {
    value: length,
    inputs: [...top.inputs, ...bottom.inputs].map((input) => ({ ...input, name: `${name}, ${input.name}` })),
    waitsFor: [...top.waitsFor, ...bottom.waitsFor],
    doubtful: top.doubtful || bottom.doubtful,
    significant: Math.max(top.significant ?? 0, bottom.significant ?? 0) || null,
    decimals: same ? Math.max(top.decimals ?? 0, bottom.decimals ?? 0) : null,
    unit: same ? bottom.unit : null,
  };
}

/** A number that the log does not hold: a constant, or one worked out on the way. */
export function worked(
  name: string,
  value: number | null,
  shown: Shown,
  units: FileUnits,
  facts: { waitsFor?: readonly string[]; doubtful?: boolean; line?: number | null } = {},
): Ingredient {
  const text = value === null ? '?' : plainText(value, shown, units);
  return {
    value,
    inputs: [{ name, value, unit: siUnitOf(shown), text, line: facts.line ?? null }],
    waitsFor: value === null ? (facts.waitsFor ?? [`the ${name}`]) : [],
    doubtful: facts.doubtful ?? false,
    significant: null,
    decimals: null,
    unit: null,
  };
}

/** A figure that goes into another. */
export function ofFigure(name: string, figure: Figure): Ingredient {
  return {
    value: figure.value,
    inputs: [{ name, value: figure.value, unit: figure.unit, text: figure.text, line: figure.lines[0] ?? null }],
    waitsFor: figure.value === null ? figure.waitsFor : [],
    doubtful: figure.doubtful,
    significant: 3,
    decimals: null,
    unit: null,
  };
}

/** A limit of the pack in force. Where the pack has none, `otherwise` counts and says so. */
export function ofLimit(name: string, limit: LimitInForce | undefined, otherwise: number): Ingredient {
  const value = limit?.value ?? otherwise;
  const text = limit ? `${limit.text} (${limit.pack})` : 'no limit in the pack';
  return {
    value,
    inputs: [{ name, value, unit: limit?.unit ?? '1', text, line: null }],
    waitsFor: [],
    doubtful: false,
    significant: null,
    decimals: null,
    unit: null,
  };
}

/** Several ingredients as one, worth `value` where none of them is missing. */
export function together(parts: readonly Ingredient[], value: () => number): Ingredient {
  const waitsFor = parts.flatMap((part) => part.waitsFor);
  const unit = parts[0]?.unit ?? null;
  const alike = parts.every((part) => part.unit === unit && part.decimals !== null);
  return {
    value: waitsFor.length > 0 ? null : value(),
    inputs: parts.flatMap((part) => part.inputs),
    waitsFor,
    doubtful: parts.some((part) => part.doubtful),
    significant: parts.reduce<number | null>((least, part) => lesser(least, part.significant), null),
    decimals: alike ? parts.reduce((most, part) => Math.max(most, part.decimals ?? 0), 0) : null,
    unit: alike ? unit : null,
  };
}

const lesser = (first: number | null, second: number | null): number | null =>
  first === null || second === null ? (first ?? second) : Math.min(first, second);
