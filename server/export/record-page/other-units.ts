import type { Depth, Measure, WellLog } from '../../model/log.ts';

/* Exact by definition: NIST SP 811 (2008), appendix B. */
const foot = 0.3048;
const inch = 0.0254;
const usGallon = 3.785411784;
const imperialGallon = 4.54609;
const pound = 0.45359237;
const psi = 6.894757293168361;
const horsepower = 0.7456998715822702;

/** How a unit of one system is written in the other: the other's unit, and how many of it are in one. */
const counterparts: readonly (readonly [unit: string, other: string, otherInOne: number])[] = [
  ['m', 'ft', 1 / foot],
  ['mm', 'in', 0.001 / inch],
  ['cm', 'in', 0.01 / inch],
  ['m3', 'ft3', foot ** -3],
  ['L', 'gal-us', 1 / usGallon],
  ['kg', 'lb', 1 / pound],
  ['t', 'lb', 1000 / pound],
  ['L/min', 'gpm-us', 1 / usGallon],
  ['L/s', 'gpm-us', 60 / usGallon],
  ['L/h', 'gph-us', 1 / usGallon],
  ['m3/h', 'gpm-us', 1000 / 60 / usGallon],
  ['m3/d', 'gpm-us', 1000 / 1440 / usGallon],
  ['m3/min', 'cfm', foot ** -3],
  ['kPa', 'psi', 1 / psi],
  ['MPa', 'psi', 1000 / psi],
  ['bar', 'psi', 100 / psi],
  ['kW', 'hp', 1 / horsepower],
  ['kg/m3', 'lb/ft3', foot ** 3 / pound],
  ['kg/L', 'lb/gal', usGallon / pound],
  ['ft', 'm', foot],
  ['in', 'mm', inch * 1000],
  ['ft3', 'm3', foot ** 3],
  ['yd3', 'm3', (3 * foot) ** 3],
  ['gal-us', 'L', usGallon],
  ['gal-imp', 'L', imperialGallon],
  ['lb', 'kg', pound],
  ['gpm-us', 'L/min', usGallon],
  ['gpm-imp', 'L/min', imperialGallon],
  ['gph-us', 'L/h', usGallon],
  ['gph-imp', 'L/h', imperialGallon],
  ['cfm', 'm3/min', foot ** 3],
  ['psi', 'kPa', psi],
  ['hp', 'kW', horsepower],
  ['lb/gal', 'kg/L', pound / usGallon],
  ['lb/ft3', 'kg/m3', pound / foot ** 3],
];

const byUnit = new Map(counterparts.map(([unit, other, otherInOne]) => [unit, { other, otherInOne }]));

/** Digits after the point that say as much in the other unit as `decimals` do in this one. */
const decimalsOf = (decimals: number, otherInOne: number): number =>
  Math.min(6, Math.max(0, Math.ceil(decimals - Math.log10(otherInOne))));

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const isMeasure = (value: Readonly<Record<string, unknown>>): value is Measure | Depth =>
  'written' in value && 'unit' in value && 'number' in value && 'decimals' in value;

function temperature(measure: Measure): Measure {
  const toFahrenheit = measure.unit === 'C';
  const number =
    measure.number === null ? null : toFahrenheit ? measure.number * 1.8 + 32 : (measure.number - 32) / 1.8;
  const rounded = number === null ? null : Number(number.toFixed(measure.decimals));
  return { ...measure, unit: toFahrenheit ? 'F' : 'C', number: rounded };
}

/** A measured value as the other system of units has it; as it is where the other has none. */
function inOtherUnit(measure: Measure): Measure {
  if (measure.unit === 'C' || measure.unit === 'F') return temperature(measure);
  const counterpart = byUnit.get(measure.unit);
  if (counterpart === undefined) return measure;
  const { other, otherInOne } = counterpart;
  const decimals = measure.number === 0 ? 0 : decimalsOf(measure.decimals, otherInOne);
  const converted = (number: number): number => Number((number * otherInOne).toFixed(decimals));
  const number = measure.number === null ? null : converted(measure.number);
  // The upper end is shown in proportion to the lower.
  const high =
    measure.high === null || !measure.value || measure.number === null || number === null
      ? measure.high
      : converted((measure.number * measure.high) / measure.value) * (measure.value / (number || 1));
  return { ...measure, unit: other, number, high, decimals };
}

function convert(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(convert);
  if (!isObject(value)) return value;
  if (isMeasure(value)) return inOtherUnit(value);
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, convert(each)]));
}

const otherOf = (unit: string): string => byUnit.get(unit)?.other ?? unit;

/** The same log as if it had been written in the other system of units, with as many digits as the notes justify. */
export function inOtherUnits(log: WellLog): WellLog {
  const converted = convert(log) as WellLog;
  return {
    ...converted,
    units: { ...log.units, depth: otherOf(log.units.depth), diameter: otherOf(log.units.diameter) },
  };
}
