import type { Columns } from '../../../../grammar/span.ts';
import type { Line, Quantity } from '../../../../grammar/tree.ts';
import type { FileUnits } from '../../../model/log.ts';
import type { Role } from '../../amounts.ts';
import type { Piece } from '../change.ts';
import type { Conversion } from './conversion.ts';
import { convertedNumber, isPlainNumber, type UnitPair } from './exact-number.ts';
import { type Group, groupsOfLine } from './groups.ts';
import { barePairs } from './unit-pairs.ts';

/** Slots of things that are bought by their size. */
const tradeSizes = new Set(['size', 'nominal', 'outside', 'inside', 'coupling', 'slot', 'bags', 'bag-mass']);

const hasNumber = ({ number, td }: Quantity): boolean => number !== null && !td;

const isPlain = ({ form, high, figure }: Quantity): boolean =>
  form === 'plain' && high === null && isPlainNumber(figure);

function figureColumns({ start, figure }: Quantity, text: string): Columns {
  const at = text.indexOf(figure, start);
  return { start: at, end: at + figure.length };
}

/** Where the number with its marks ends and a unit may stand. */
function numberEnd(quantity: Quantity, text: string): number {
  if (quantity.high !== null) return quantity.end;
  const { end } = figureColumns(quantity, text);
  return text[end] === '?' ? end + 1 : end;
}

/** True for a bare slot of 1 and more in a file of inches: thousandths of an inch. */
export const isSlotNumber = (slot: string | null, { number, unit }: Quantity, { diameter }: FileUnits): boolean =>
  slot === 'slot' && unit === null && diameter === 'in' && number !== null && number >= 1;

const spelled = ({ unitAt }: Quantity, text: string): string =>
  unitAt === null ? '' : text.slice(unitAt.start, unitAt.end);

/** Blanks between a number and its unit. */
const gapOf = (quantity: Quantity, text: string): Columns => ({
  start: numberEnd(quantity, text),
  end: quantity.unitAt?.start ?? quantity.end,
});

const bareUnitOf = (role: Role, { depth, diameter }: FileUnits): string | null =>
  role === 'depth' ? depth : role === 'diameter' ? diameter : null;

/** The pair by which a bare number goes from the file's unit to the one that takes its place; null where they are one. */
const barePair = (role: Role, { from, to }: Conversion): UnitPair | null => {
  const units = [bareUnitOf(role, from), bareUnitOf(role, to)];
  return barePairs.find(({ us, metric }) => units.includes(us) && units.includes(metric)) ?? null;
};

const pairOf = (id: string, { pairs, toUs }: Conversion): UnitPair | null =>
  pairs.find((pair) => id === (toUs ? pair.metric : pair.us)) ?? null;

const isTargetUnit = (id: string, { pairs, toUs }: Conversion): boolean =>
  pairs.some((pair) => id === (toUs ? pair.us : pair.metric));

const converted = (quantity: Quantity, text: string, pair: UnitPair, { toUs }: Conversion): Piece => ({
  ...figureColumns(quantity, text),
  text: convertedNumber(quantity.figure, pair, toUs),
});

function bareGroup(group: Group, text: string, conversion: Conversion): readonly Piece[] {
  const unit = bareUnitOf(group.role, conversion.from);
  const pair = barePair(group.role, conversion);
  const known = group.quantities.filter(hasNumber);
  const last = known.at(-1);
  if (unit === null || pair === null || last === undefined) return [];
  if (!tradeSizes.has(group.slot ?? '') && known.every(isPlain))
    return known.map((quantity) => converted(quantity, text, pair, conversion));
  const at = numberEnd(last, text);
  return [{ start: at, end: at, text: unit }];
}

const blanks = (gap: Columns, more: number): readonly Piece[] =>
  more > 0
    ? [{ start: gap.end, end: gap.end, text: ' '.repeat(more) }]
    : [{ start: gap.end + more, end: gap.end, text: '' }];

/** A number that keeps its form: a unit of its own comes and goes as the file's unit changes to and from it. */
function keptGroup(carrier: Quantity, group: Group, text: string, { from, to }: Conversion): readonly Piece[] {
  const gap = gapOf(carrier, text);
  const width = gap.end - gap.start;
  const unit = spelled(carrier, text);
  if (!group.isLast || bareUnitOf(group.role, from) === bareUnitOf(group.role, to)) return [];
  if (unit === bareUnitOf(group.role, from)) return blanks(gap, 1);
  if (unit !== bareUnitOf(group.role, to)) return [];
  return width > 0 ? blanks(gap, -1) : [{ start: gap.end, end: carrier.unitAt?.end ?? gap.end, text: '' }];
}

function convertedGroup(carrier: Quantity, group: Group, text: string, conversion: Conversion): readonly Piece[] {
  const { unitAt } = carrier;
  const unit = spelled(carrier, text);
  const gap = gapOf(carrier, text);
  const width = gap.end - gap.start;
  if (isTargetUnit(unit, conversion)) return blanks(gap, 2);
  const pair = pairOf(unit, conversion);
  if (pair === null || unitAt === null) return [];
  if (width >= 2) return blanks(gap, -2);
  const known = group.quantities.filter(hasNumber);
  const numbers = known.map((quantity) => converted(quantity, text, pair, conversion));
  return [...numbers, { ...unitAt, text: conversion.toUs ? pair.us : pair.metric }];
}

const isKept = ({ slot, quantities }: Group): boolean =>
  tradeSizes.has(slot ?? '') || !quantities.filter(hasNumber).every(isPlain);

const carrierOf = ({ quantities }: Group): Quantity | null =>
  quantities.findLast(({ unitAt }) => unitAt !== null) ?? null;

function unitGroup(group: Group, text: string, conversion: Conversion): readonly Piece[] {
  const carrier = carrierOf(group);
  if (carrier === null || !group.quantities.some(hasNumber)) return [];
  if (!isKept(group)) return convertedGroup(carrier, group, text, conversion);
  return hasNumber(carrier) ? keptGroup(carrier, group, text, conversion) : [];
}

/** True for a unit of its own that goes as the file comes to count in it. */
const goes = (carrier: Quantity, group: Group, text: string, { from, to }: Conversion): boolean => {
  const unit = bareUnitOf(group.role, to);
  const isTurned = group.isLast && unit !== bareUnitOf(group.role, from);
  return isTurned && spelled(carrier, text) === unit && gapOf(carrier, text).start === carrier.unitAt?.start;
};

/** The unit that a group has in the text of the US side: what it has, or comes to have. */
function usUnitOf(group: Group, text: string, conversion: Conversion): string | null {
  const carrier = carrierOf(group);
  const unit = carrier?.unit?.id ?? null;
  if (carrier === null || unit === null || !conversion.toUs || !group.quantities.some(hasNumber)) return unit;
  if (isKept(group)) return goes(carrier, group, text, conversion) ? null : unit;
  const pair = pairOf(spelled(carrier, text), conversion);
  const gap = gapOf(carrier, text);
  return pair === null || gap.end - gap.start >= 2 ? unit : pair.us;
}

/** True for a number that its unit alone follows: only such inches go with the feet before them. */
const isBareOfMarks = ({ start, high, doubtful, unitAt }: Quantity, text: string): boolean =>
  /[\d.]/.test(text.charAt(start)) && high === null && !doubtful && unitAt !== null;

/**
 * Feet with inches behind them are one length: `98 ft 6 in`. A comma parts two lengths that would come to stand so; one
 * that parted them before gets a blank more, so that the way back knows it.
 */
function partingComma(before: Group, after: Group, text: string, conversion: Conversion): readonly Piece[] {
  const last = before.quantities.at(-1);
  const next = after.quantities[0];
  const start = last?.end ?? 0;
  const end = next?.start ?? 0;
  if (last?.unitAt?.end !== start || last.form !== 'plain' || next === undefined || !isBareOfMarks(next, text))
    return [];
  if (usUnitOf(before, text, conversion) !== 'ft' || usUnitOf(after, text, conversion) !== 'in') return [];
  const between = text.slice(start, end);
  if (conversion.toUs && /^ +$/.test(between)) return [{ start, end: start, text: ',' }];
  if (conversion.toUs && /^, +$/.test(between)) return [{ start: end, end, text: ' ' }];
  if (conversion.toUs || !/^, +$/.test(between)) return [];
  return [between === ', ' ? { start, end: start + 1, text: '' } : { start: end - 1, end, text: '' }];
}

const isComposite = ({ quantities }: Group): boolean => quantities.some(({ form }) => form === 'feet-inches');

/**
 * Thousandths of an inch are bare in a file of inches and have a number sign elsewhere. One that has the sign already
 * gets a zero more, which the way back takes off.
 */
function slotNumber(group: Group, text: string, { from, to }: Conversion): readonly Piece[] | null {
  const [quantity] = group.quantities;
  if (quantity === undefined || !isSlotNumber(group.slot, quantity, from)) return null;
  if (to.diameter === 'in') return [];
  if (!Number.isInteger(quantity.number) || !isPlain(quantity)) return null;
  const { start } = figureColumns(quantity, text);
  return [{ start, end: start, text: '#' }];
}

function signedSlotNumbers(line: Line, { toUs, from, to }: Conversion): readonly Piece[] {
  if (from.diameter === to.diameter) return [];
  return line.items.flatMap(({ value }) => {
    if (value.kind !== 'hash-number' || value.number < 1) return [];
    const { start } = value;
    if (!toUs) return [{ start: start + 1, end: start + 1, text: '0' }];
    const hasZero = line.text[start + 1] === '0';
    return [hasZero ? { start: start + 1, end: start + 2, text: '' } : { start, end: start + 1, text: '' }];
  });
}

/** True where every number of a line that may change stands in its text as it was read. */
export const isAsRead = (line: Line): boolean =>
  groupsOfLine(line).every(
    (group) =>
      isComposite(group) ||
      group.quantities.every(({ start, end, figure }) => line.text.slice(start, end).includes(figure)),
  );

function groupPieces(group: Group, text: string, conversion: Conversion): readonly Piece[] {
  const slot = slotNumber(group, text, conversion);
  if (slot !== null) return slot;
  if (isComposite(group)) return [];
  const isBare = group.quantities.every(({ unit }) => unit === null);
  return isBare ? bareGroup(group, text, conversion) : unitGroup(group, text, conversion);
}

/** What changes on a line. */
export function piecesOf(line: Line, conversion: Conversion): readonly Piece[] {
  if (line.row === 'units') return [];
  const groups = groupsOfLine(line);
  return [
    ...groups.flatMap((group) => groupPieces(group, line.text, conversion)),
    ...groups.slice(1).flatMap((group, at) => partingComma(groups[at] ?? group, group, line.text, conversion)),
    ...signedSlotNumbers(line, conversion),
  ];
}
