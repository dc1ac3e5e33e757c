import type { Depth, Interval, Measure, Moment, Period, PipeSize, TextField, Word } from '../model/log.ts';
import { inUnit } from './lengths.ts';
import { remembered } from './remembered.ts';

const unitNames: Readonly<{ [unit: string]: string }> = {
  m3: 'm³',
  ft3: 'ft³',
  yd3: 'yd³',
  'm3/h': 'm³/h',
  'm3/d': 'm³/d',
  'm3/min': 'm³/min',
  'm3/s': 'm³/s',
  'kg/m3': 'kg/m³',
  'lb/ft3': 'lb/ft³',
  'm2/m': 'm²/m',
  'in2/ft': 'in²/ft',
  'ug/L': 'µg/L',
  'uS/cm': 'µS/cm',
  C: '°C',
  F: '°F',
  'gal-us': 'US gal',
  'gal-imp': 'imp gal',
  'gpm-us': 'US gal/min',
  'gpm-imp': 'imp gal/min',
  'gph-us': 'US gal/h',
  'gph-imp': 'imp gal/h',
};

/** A unit as it is printed. */
export const unitName = (unit: string): string =>
  (Object.hasOwn(unitNames, unit) ? unitNames[unit] : undefined) ?? unit;

/** A number with the digits it was written with; with more where those would change it (`6 1/4`); `?` for what is none. */
export function numberText(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return '?';
  const fixed = value.toFixed(Math.min(Math.max(Math.round(decimals) || 0, 0), 8));
  const isExact = Math.abs(Number(fixed) - value) <= 1e-6 * Math.abs(value);
  return isExact ? fixed : String(Number(value.toPrecision(6)));
}

const doubtMark = (value: { readonly doubtful: boolean }): string => (value.doubtful ? '?' : '');
const aboutMark = (value: { readonly approximate: boolean }): string => (value.approximate ? '~' : '');

function rangeText(measure: Measure, number: number): string {
  const low = numberText(number, measure.decimals);
  if (measure.high === null || !measure.value) return low;
  return `${low}–${numberText((number * measure.high) / measure.value, measure.decimals)}`;
}

/** A measured value with its unit, as the notes have it; `?` where they do not; empty where there is none. */
export function measureText(measure: Measure | null): string {
  if (measure === null) return '';
  const unit = measure.unit === '' ? '' : ` ${unitName(measure.unit)}`;
  if (measure.number === null) return measure.unitWritten ? `?${unit}` : '?';
  const number = rangeText(measure, measure.number);
  return `${measure.bound ?? ''}${aboutMark(measure)}${number}${doubtMark(measure)}${unit}`;
}

/* Feet and inches make long fractions of a foot; nobody reads a tape below a hundredth. */
function depthDigits(value: number, decimals: number): string {
  const text = numberText(value, decimals);
  const isLong = text.slice(text.indexOf('.') + 1).length > Math.max(decimals, 2);
  return text.includes('.') && isLong ? value.toFixed(2) : text;
}

function depthNumber(depth: Depth, unit: string): string {
  const { value, number } = depth;
  if (number !== null && !depth.td) return depthDigits(Math.abs(number), depth.decimals);
  return value === null ? '?' : numberText(inUnit(Math.abs(value), unit), 2);
}

/** A depth in words; `ownUnit` is what stands after a number in the file's own unit. */
function depthWords(depth: Depth | null, fileUnit: string, ownUnit: string): string {
  if (depth === null) return '?';
  const digits = depthNumber(depth, fileUnit);
  if (digits === '?') return '?';
  const above = depth.datum === 'bgs' && depth.value !== null && depth.value < 0 ? '+' : '';
  const isOwn = depth.td || depth.unit === fileUnit || depth.unit === '';
  const unit = isOwn ? ownUnit : ` ${unitName(depth.unit)}`;
  const datum = depth.datum === 'toc' ? ' toc' : '';
  return `${aboutMark(depth)}${above}${digits}${doubtMark(depth)}${unit}${datum}`;
}

/** The number of a depth with its sign, doubt and datum, without its unit where that is the file's own. */
export const depthText = (depth: Depth | null, fileUnit: string): string => depthWords(depth, fileUnit, '');

/** A depth with its unit. */
export const depthWithUnit = (depth: Depth | null, fileUnit: string): string =>
  depthWords(depth, fileUnit, ` ${unitName(fileUnit)}`);

const intervalTexts = remembered((_: Interval) => new Map<string, string>());

/** An interval in the file's unit, without it. */
export function intervalText(interval: Interval | null, fileUnit: string): string {
  if (interval === null) return '';
  const known = intervalTexts(interval);
  const text = known.get(fileUnit) ?? `${depthText(interval.top, fileUnit)} – ${depthText(interval.bottom, fileUnit)}`;
  known.set(fileUnit, text);
  return text;
}

export const intervalWithUnit = (interval: Interval | null, fileUnit: string): string =>
  interval === null ? '' : `${intervalText(interval, fileUnit)} ${unitName(fileUnit)}`;

/** Metres in the file's unit, with two digits after the point at most. */
export const metresText = (value: number, fileUnit: string): string =>
  Number.isFinite(value) ? `${Number(inUnit(value, fileUnit).toFixed(2))} ${unitName(fileUnit)}` : '?';

export const wordsText = (words: readonly Word[]): string => words.map((word) => word.name).join(', ');

export const wordText = (word: Word | null): string => word?.name ?? '';

export const fieldText = (field: TextField | null | undefined): string => field?.text ?? '';

export const termText = (field: Word | TextField | null): string =>
  field === null ? '' : 'name' in field ? field.name : field.text;

/** A date and a time of day. */
export function momentText(moment: Moment | null): string {
  if (moment === null) return '';
  const text = [moment.date, moment.time].filter((each) => each !== null).join(' ') || '?';
  return `${aboutMark(moment)}${text}${text === '?' ? '' : doubtMark(moment)}`;
}

export function periodText(period: Period | null): string {
  if (period === null) return '';
  return [momentText(period.from), momentText(period.to)].filter(Boolean).join(' – ');
}

/** The size of a pipe as the notes have it: outside diameter by wall, or nominal size with schedule or SDR. */
export function sizeText(size: PipeSize): string {
  const outside = size.nominal === null ? measureText(size.outside) : `${measureText(size.nominal)} nominal`;
  const wall = measureText(size.wall);
  const suffix = ` ${unitName(size.wall?.unit ?? '')}`;
  const isShared = wall.endsWith(suffix) && outside.endsWith(suffix);
  const schedule = size.schedule === null ? '' : `sch ${measureText(size.schedule)}`;
  const sdr = size.sdr === null ? '' : `SDR ${measureText(size.sdr)}`;
  return [wall ? `${isShared ? outside.slice(0, -suffix.length) : outside} × ${wall}` : outside, schedule, sdr]
    .filter(Boolean)
    .join(' ');
}

/** The pieces that say something, joined with commas. */
export const listed = (pieces: readonly string[]): string => pieces.filter((piece) => piece !== '').join(', ');

/** A text with a capital first letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
