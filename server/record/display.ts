import { exact, unitById } from '../../grammar/units.ts';
import type { FileUnits } from '../model/log.ts';
import { type Digits, decimals, decimalsOf, formatNumber, significant, significantDigitsOf } from './format-number.ts';

/** What is shown: it settles the pair of units, one for metric files and one for files in feet. */
export type Shown =
  | 'length'
  | 'diameter'
  | 'volume'
  | 'small-volume'
  | 'mass'
  | 'mass-per-length'
  | 'small-mass'
  | 'velocity'
  | 'entrance-velocity'
  | 'rate'
  | 'air-rate'
  | 'density'
  | 'pressure'
  | 'force'
  | 'time'
  | 'minutes'
  | 'days'
  | 'share'
  | 'ratio'
  | 'small-ratio'
  | 'transmissivity'
  | 'specific-capacity'
  | 'well-loss'
  | 'linear-loss'
  | 'degrees'
  | 'map-length';

/** A unit to show a value in: SI units in one of it, and how it is printed. */
export interface ShownUnit {
  readonly factor: number;
  readonly label: string;
}

interface Pair {
  /** SI unit of the value. */
  readonly si: string;
  readonly metric: string;
  readonly us: string;
}

const pairs: Readonly<Record<Shown, Pair>> = {
  length: { si: 'm', metric: 'm', us: 'ft' },
  diameter: { si: 'm', metric: 'mm', us: 'in' },
  volume: { si: 'm3', metric: 'm3', us: 'gal-us' },
  'small-volume': { si: 'm3', metric: 'L', us: 'fl oz' },
  mass: { si: 'kg', metric: 'kg', us: 'lb' },
  'mass-per-length': { si: 'kg/m', metric: 'kg/m', us: 'lb/ft' },
  'small-mass': { si: 'kg', metric: 'g', us: 'oz' },
  velocity: { si: 'm/s', metric: 'm/min', us: 'ft/min' },
  'entrance-velocity': { si: 'm/s', metric: 'm/s', us: 'ft/s' },
  rate: { si: 'm3/s', metric: 'L/min', us: 'gpm-us' },
  'air-rate': { si: 'm3/s', metric: 'm3/min', us: 'cfm' },
  density: { si: 'kg/m3', metric: 'kg/m3', us: 'lb/gal' },
  pressure: { si: 'Pa', metric: 'kPa', us: 'psi' },
  force: { si: 'N', metric: 'kN', us: 'lbf' },
  time: { si: 's', metric: 'h', us: 'h' },
  minutes: { si: 's', metric: 'min', us: 'min' },
  days: { si: 's', metric: 'd', us: 'd' },
  share: { si: '1', metric: '%', us: '%' },
  ratio: { si: '1', metric: '1', us: '1' },
  'small-ratio': { si: '1', metric: '1', us: '1' },
  transmissivity: { si: 'm2/s', metric: 'm2/d', us: 'ft2/d' },
  'specific-capacity': { si: 'm2/s', metric: 'L/min/m', us: 'gpm-us/ft' },
  'linear-loss': { si: 's/m2', metric: 's/m2', us: 's/m2' },
  'well-loss': { si: 's2/m5', metric: 's2/m5', us: 's2/m5' },
  degrees: { si: 'deg', metric: 'deg', us: 'deg' },
  'map-length': { si: 'm', metric: 'm', us: 'm' },
};

const usGallonsAMinute = exact.usGallon / 60;

/** Units of shown figures that no log is written in. */
const ownUnits: Readonly<Record<string, ShownUnit>> = {
  'm/s': { factor: 1, label: 'm/s' },
  'kg/m': { factor: 1, label: 'kg/m' },
  'lb/ft': { factor: exact.pound / exact.foot, label: 'lb/ft' },
  'm/min': { factor: 1 / 60, label: 'm/min' },
  'ft/s': { factor: exact.foot, label: 'ft/s' },
  'ft/min': { factor: exact.foot / 60, label: 'ft/min' },
  'm2/d': { factor: 1 / 86_400, label: 'm²/d' },
  'ft2/d': { factor: exact.foot ** 2 / 86_400, label: 'ft²/d' },
  'L/min/m': { factor: 0.001 / 60, label: 'L/min per m' },
  'gpm-us/ft': { factor: usGallonsAMinute / exact.foot, label: 'US gpm per ft' },
  's/m2': { factor: 1, label: 's/m²' },
  's2/m5': { factor: 1, label: 's²/m⁵' },
  deg: { factor: 1, label: '°' },
  '1': { factor: 1, label: '' },
  N: { factor: 1, label: 'N' },
};

const labels: Readonly<Record<string, string>> = {
  m3: 'm³',
  ft3: 'ft³',
  yd3: 'yd³',
  'gal-us': 'US gal',
  'gal-imp': 'imp. gal',
  gal: 'gal',
  'gpm-us': 'US gpm',
  'gpm-imp': 'imp. gpm',
  'gph-us': 'US gph',
  'gph-imp': 'imp. gph',
  'm3/h': 'm³/h',
  'm3/d': 'm³/d',
  'm3/min': 'm³/min',
  'm3/s': 'm³/s',
  'kg/m3': 'kg/m³',
  'lb/gal': 'lb/US gal',
  'lb/ft3': 'lb/ft³',
  'ug/L': 'µg/L',
  'uS/cm': 'µS/cm',
  'm2/m': 'm²/m',
  'in2/ft': 'in²/ft',
  C: '°C',
  F: '°F',
};

/** How a unit is printed: `m3` as `m³`, `gpm-us` as `US gpm`. */
export const unitLabel = (id: string): string => ownUnits[id]?.label ?? labels[id] ?? id;

/** The unit of that id to show a value in; SI as it is where the id is unknown. */
export function shownUnit(id: string): ShownUnit {
  const own = ownUnits[id];
  if (own) return own;
  const unit = unitById(id);
  return { factor: unit?.factor ?? 1, label: unitLabel(id) };
}

/** The SI unit in which a value of that sort is kept. */
export const siUnitOf = (shown: Shown): string => pairs[shown].si;

/** True where the file's depths are in feet or inches. */
export const inFeet = (units: FileUnits): boolean => unitById(units.depth)?.system === 'us';

/** The unit ids in which a file shows a value of that sort: its own, and the other system's. */
export function unitsFor(shown: Shown, units: FileUnits): { own: string; other: string } {
  const pair = pairs[shown];
  if (shown === 'length') return ownAndOther(units.depth, pair);
  if (shown === 'diameter') return ownAndOther(units.diameter, pair);
  const us = units.gallon === 'gal-imp' ? imperial(pair.us) : pair.us;
  return inFeet(units) ? { own: us, other: pair.metric } : { own: pair.metric, other: us };
}

const ownAndOther = (own: string, pair: Pair): { own: string; other: string } => ({
  own,
  other: unitById(own)?.system === 'us' ? pair.metric : pair.us,
});

const imperial = (id: string): string => id.replace(/^gal-us$/, 'gal-imp').replace(/^gpm-us$/, 'gpm-imp');

/** A SI value as text in one unit, `0.205 m³`. */
export function textIn(value: number, unitId: string, digits: Digits): string {
  const unit = shownUnit(unitId);
  return withLabel(formatNumber(value / unit.factor, digits), unit.label);
}

function withLabel(number: string, label: string): string {
  if (label === '') return number;
  return label === '°' ? `${number}°` : `${number} ${label}`;
}

/** How a value is shown in the file's units, and in the other system's; `otherText` is empty where that is the same. */
export interface ShownText {
  readonly text: string;
  readonly otherText: string;
}

const leastDigits = 3;

/**
 * A SI value as a file shows it. `preferred` is the unit that the notes used for this very figure, where they did;
 * the other system's text has as many digits as the first, three at least; of what reads as zero, as many decimals.
 */
export function show(
  value: number,
  shown: Shown,
  units: FileUnits,
  digits: Digits = significant(leastDigits),
  preferred: string | null = null,
): ShownText {
  const { own, other } = unitsFor(shown, units);
  const unit = preferred ?? own;
  const text = textIn(value, unit, digits);
  const alternative = systemOf(unit) === systemOf(other) ? own : other;
  if (alternative === unit) return { text, otherText: '' };
  return {
    text,
    otherText: textIn(value, alternative, otherDigits(formatNumber(value / shownUnit(unit).factor, digits))),
  };
}

/* What sums leave of nothing, 1e-16, would be shown by its digits. */
const otherDigits = (shown: string): Digits =>
  Number(shown) === 0
    ? decimals(decimalsOf(shown))
    : significant(Math.min(Math.max(leastDigits, significantDigitsOf(shown)), 5));

const systemOf = (id: string): string => {
  const system = unitById(id)?.system;
  if (system) return system === 'imperial' ? 'us' : system;
  return /^(ft|gpm|lb)/.test(id) ? 'us' : 'metric';
};

/** A SI value with at most four significant digits and no idle zeros: `254 mm`, `0.45 m`. */
export function plainText(value: number, shown: Shown, units: FileUnits): string {
  const unit = shownUnit(unitsFor(shown, units).own);
  const number = formatNumber(value / unit.factor, significant(4));
  return withLabel(number.includes('.') ? number.replace(/\.?0+$/, '') : number, unit.label);
}
