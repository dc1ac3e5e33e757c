import * as l10n from '@vscode/l10n';
import { type Unit, unitById } from '../../grammar/units.ts';
import type { FileUnits, Interval } from '../model/log.ts';

const signs: Readonly<Record<string, string>> = {
  m3: 'm³',
  ft3: 'ft³',
  yd3: 'yd³',
  'kg/m3': 'kg/m³',
  'm3/h': 'm³/h',
  'm3/d': 'm³/d',
  'm3/min': 'm³/min',
};

const gallonSigns: Readonly<Record<string, () => string>> = {
  'gal-us': () => l10n.t('US gal'),
  'gal-imp': () => l10n.t('imp. gal'),
  'gpm-us': () => l10n.t('US gpm'),
  'gpm-imp': () => l10n.t('imp. gpm'),
};

/** A unit as a message shows it: `m³` for `m3`. */
export const unitSign = (id: string): string => signs[id] ?? gallonSigns[id]?.() ?? id;

/** A number to `significant` digits, whole numbers kept whole, with no zeros at its end. */
export function numberText(value: number, significant = 3): string {
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const decimals = significant - 1 - Math.floor(Math.log10(Math.abs(value)));
  return String(Number(value.toFixed(Math.min(6, Math.max(0, decimals)))));
}

const metre = { id: 'm', factor: 1, offset: 0 } as const;
const unitOr = (id: string): Pick<Unit, 'id' | 'factor' | 'offset'> => unitById(id) ?? metre;

const inUnit = (si: number, id: string): number => {
  const { factor, offset } = unitOr(id);
  return (si - offset) / factor;
};

const depthNumber = (metres: number, units: FileUnits): string =>
  `${metres < 0 ? '+' : ''}${Number(Math.abs(inUnit(metres, units.depth)).toFixed(units.depth === 'ft' ? 2 : 3))}`;

/** A depth in the file's unit: `7.2 m`, and `+0.45 m` for 0.45 m above ground. Takes metres below ground. */
export const depthText = (metres: number, units: FileUnits): string =>
  `${depthNumber(metres, units)} ${unitOr(units.depth).id}`;

/** A length or a distance in the file's unit of depth; takes metres. */
export const lengthText = (metres: number, units: FileUnits): string => depthText(Math.abs(metres), units);

/** `0 – 7.2 m`, with `?` for an end that is not known. Takes metres. */
export function stretchText(top: number | null, bottom: number | null, units: FileUnits): string {
  const shown = (metres: number | null) => (metres === null ? '?' : depthNumber(metres, units));
  return `${shown(top)} – ${shown(bottom)} ${unitOr(units.depth).id}`;
}

export const intervalText = (interval: Interval, units: FileUnits): string =>
  stretchText(interval.top?.value ?? null, interval.bottom?.value ?? null, units);

/** A diameter, a wall or a slot in the file's unit of diameter; takes metres. */
export const diameterText = (metres: number, units: FileUnits): string =>
  `${Number(inUnit(metres, units.diameter).toFixed(units.diameter === 'in' ? 3 : 1))} ${unitOr(units.diameter).id}`;

/** A SI value in the unit `id`, to `significant` digits. */
export const valueText = (si: number, id: string, significant = 3): string =>
  `${numberText(inUnit(si, id), significant)} ${unitSign(id)}`;

/** `a`, `a or b`, `a, b or c`. */
export const orList = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : l10n.t('{0} or {1}', names.slice(0, -1).join(', '), names.at(-1) ?? '');

/** `; did you mean a or b?`, or nothing where no name is near. */
export const didYouMean = (names: readonly string[]): string =>
  names.length === 0 ? '' : l10n.t('; did you mean {0}?', orList(names));

/** A SI value as a number of the unit `id`, for a fix to write: at most three digits after the point. */
export const figureIn = (si: number, id: string): string => String(Number(inUnit(si, id).toFixed(3)));

const longest = 60;

/** Text from a log as a message shows it: long rubbish only as far as it takes to know it again. */
export const shortened = (text: string): string => (text.length > longest ? `${text.slice(0, longest)}…` : text);
