import type { IToken } from 'chevrotain';
import { vulgarFractions } from './characters.ts';
import {
  CommaFigure,
  ElapsedFigure,
  FeetInches,
  FractionFigure,
  longestFigure,
  MixedFigure,
  PointsFigure,
  VulgarFigure,
} from './tokens.ts';
import type { Quantity } from './tree.ts';
import { type Unit, unitById } from './units.ts';

/** A number as it was written, before marks and units are added. */
export interface FigureValue {
  readonly number: number;
  readonly decimals: number;
  readonly form: Quantity['form'];
  /** The unit that the way of writing carries (`12'6"`, `1h30`). */
  readonly unit: Unit | null;
}

const known = (id: string): Unit => {
  const unit = unitById(id);
  if (!unit) throw new Error(`no unit ${id}`);
  return unit;
};

const foot = known('ft');
const minute = known('min');

const ratio = (text: string): number => {
  const [above = '0', below = '1'] = text.split('/');
  return Number(above) / Number(below);
};

/** `6`, `.25`, `1/4`, `6 1/4`, `6-1/4`, `½`, `6½` as a number. */
export function inchesOf(text: string): number {
  const vulgar = vulgarFractions.get(text.slice(-1));
  if (vulgar !== undefined) return Number(text.slice(0, -1).trim() || '0') + vulgar;
  const [whole = '0', part] = text.split(/[- ](?=\d+\/)/);
  if (part !== undefined) return Number(whole) + ratio(part);
  return text.includes('/') ? ratio(text) : Number(text);
}

function feetInchesOf(image: string): FigureValue {
  const [feet = '0', rest = ''] = image.split("'");
  const inches = rest.replace(/["']+$/, '');
  const decimals = inches === '' ? decimalsOf(feet) : 2;
  return {
    number: Number(feet) + (inches === '' ? 0 : inchesOf(inches) / 12),
    decimals,
    form: 'feet-inches',
    unit: foot,
  };
}

function elapsedOf(image: string): FigureValue {
  const [hours = '0', minutes = '0'] = image.toLowerCase().split('h');
  return { number: Number(hours) * 60 + Number(minutes), decimals: 0, form: 'elapsed', unit: minute };
}

const decimalsOf = (text: string): number => {
  const point = text.indexOf('.');
  return point < 0 ? 0 : text.length - point - 1;
};

/** The value of a number token. */
export function figureOf(token: IToken): FigureValue {
  const { tokenType, image } = token;
  if (tokenType === FeetInches) return feetInchesOf(image);
  if (tokenType === ElapsedFigure) return elapsedOf(image);
  if (tokenType === MixedFigure || tokenType === FractionFigure || tokenType === VulgarFigure)
    return { number: inchesOf(image), decimals: 0, form: 'fraction', unit: null };
  return { number: Number(image), decimals: decimalsOf(image), form: 'plain', unit: null };
}

export const isTooLong = (token: IToken): boolean => token.image.length > longestFigure;

/** What `7,5`, `1,234` or `1.5,4` probably meant; the first is the likeliest. */
export function commaReadings(image: string): string[] {
  const parts = image.split(',');
  const readings: string[] = [];
  const [whole = '', part = ''] = parts;
  const grouped =
    parts.length > 1 && /^\d{1,3}$/.test(whole) && parts.slice(1).every((each) => /^\d{3}(\.\d+)?$/.test(each));
  if (grouped) readings.push(parts.join(''));
  if (parts.length === 2 && /^\d+$/.test(whole) && /^\d+$/.test(part)) readings.push(`${whole}.${part}`);
  readings.push(parts.join(', '));
  return readings;
}

/** What a number of two points probably meant. */
export function pointReadings(image: string): string[] {
  const digits = image.replace(/\.+/g, '.').replace(/^\.|\.$/g, '');
  const parts = digits.split('.');
  if (parts.length <= 2) return [digits];
  const [first = '', second = '', ...rest] = parts;
  return [`${first}.${second}${rest.join('')}`, `${first}${second}.${rest.join('')}`];
}

export const isCommaFigure = (token: IToken): boolean => token.tokenType === CommaFigure;
export const isPointsFigure = (token: IToken): boolean => token.tokenType === PointsFigure;
