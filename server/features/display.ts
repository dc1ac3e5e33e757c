import * as l10n from '@vscode/l10n';
import { fromSi, type Unit, unitById } from '../../grammar/units.ts';

/** What a value in one unit is also given in: the other system, in the units of the trade. */
const counterparts: Readonly<Record<string, readonly string[]>> = {
  m: ['ft'],
  cm: ['in'],
  mm: ['in'],
  ft: ['m'],
  in: ['mm'],
  m3: ['ft3', 'gal-us'],
  L: ['gal-us'],
  mL: ['fl oz'],
  ft3: ['m3'],
  yd3: ['m3'],
  'gal-us': ['L'],
  'gal-imp': ['L', 'gal-us'],
  'fl oz': ['mL'],
  qt: ['L'],
  kg: ['lb'],
  g: ['oz'],
  t: ['lb'],
  lb: ['kg'],
  oz: ['g'],
  'L/min': ['gpm-us'],
  'L/s': ['gpm-us'],
  'L/h': ['gph-us'],
  'm3/h': ['gpm-us'],
  'm3/d': ['gpm-us'],
  'm3/min': ['cfm'],
  'm3/s': ['cfm'],
  cfm: ['m3/min'],
  'gpm-us': ['L/min'],
  'gpm-imp': ['L/min', 'gpm-us'],
  'gph-us': ['L/h'],
  'gph-imp': ['L/h', 'gph-us'],
  Pa: ['psi'],
  kPa: ['psi'],
  MPa: ['psi'],
  bar: ['kPa', 'psi'],
  psi: ['kPa'],
  kW: ['hp'],
  W: ['hp'],
  hp: ['kW'],
  'kg/m3': ['lb/ft3'],
  'kg/L': ['lb/gal'],
  'lb/gal': ['kg/L'],
  'lb/ft3': ['kg/m3'],
  C: ['F'],
  F: ['C'],
  kN: ['lbf'],
  lbf: ['kN'],
  'm2/m': ['in2/ft'],
  'in2/ft': ['m2/m'],
};

const shown: Readonly<Record<string, () => string>> = {
  'gal-us': () => l10n.t('US gal'),
  'gal-imp': () => l10n.t('imp. gal'),
  'gpm-us': () => l10n.t('US gpm'),
  'gpm-imp': () => l10n.t('imp. gpm'),
  'gph-us': () => l10n.t('US gal/h'),
  'gph-imp': () => l10n.t('imp. gal/h'),
  'ug/L': () => 'µg/L',
  'uS/cm': () => 'µS/cm',
  C: () => '°C',
  F: () => '°F',
};

const raised = (id: string): string =>
  /[23]/.test(id) ? id.replace(/([a-z])3(?![0-9])/g, '$1³').replace(/([a-z])2(?![0-9])/g, '$1²') : id;

/** A unit as a reader sees it: `m³`, `US gal`. */
export const unitText = (id: string): string => shown[id]?.() ?? raised(id);

/** A number with four significant digits and from ten on two decimals, never fewer than its whole part, no idle zeros. */
export function numberText(value: number): string {
  if (!Number.isFinite(value)) return '?';
  const exact = Number(value.toPrecision(12));
  const size = Math.abs(exact);
  if (size >= 1000) return String(Math.round(exact));
  return String(Number(size >= 10 ? exact.toFixed(2) : exact.toPrecision(4)));
}

/** A SI value in a unit, as shown. */
export const inUnit = (si: number, unit: Unit): string => `${numberText(fromSi(si, unit))} ${unitText(unit.id)}`;

const othersById: ReadonlyMap<string, readonly Unit[]> = new Map(
  Object.entries(counterparts).map(([id, others]) => [id, others.map(unitById).filter((other) => other !== undefined)]),
);

/** The units that a value in `unit` is also given in. */
export const otherUnits = ({ id }: Unit): readonly Unit[] => othersById.get(id) ?? [];

/** A SI value in a unit and in the units of the other system. */
export const inBothSystems = (si: number, unit: Unit): readonly string[] =>
  [unit, ...otherUnits(unit)].map((each) => inUnit(si, each));
