import type { Columns } from '../../../../grammar/span.ts';
import type { Line, Quantity } from '../../../../grammar/tree.ts';
import type { FileUnits } from '../../../model/log.ts';
import type { Role } from '../../amounts.ts';
import type { Piece } from '../change.ts';
import type { Conversion } from './conversion.ts';
import { convertedNumber, isPlainNumber, type UnitPair } from './exact-number.ts';
import { type Group, groupsOfLine } from './groups.ts';

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
  const pair = unit === null ? null : pairOf(unit, conversion);
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

function unitGroup(group: Group, text: string, conversion: Conversion): readonly Piece[] {
  const carriers = group.quantities.filter(({ unitAt }) => unitAt !== null);
  const [carrier] = carriers;
  const known = group.quantities.filter(hasNumber);
  if (carrier === undefined || known.length === 0) return [];
  const isKept = tradeSizes.has(group.slot ?? '') || !known.every(isPlain);
  if (isKept)
    return carriers.length === 1 && carrier === known.at(-1) ? keptGroup(carrier, group, text, conversion) : [];
  if (carriers.length === 1) return convertedGroup(carrier, group, text, conversion);
  return carriers
    .filter(hasNumber)
    .flatMap((each) => convertedGroup(each, { ...group, quantities: [each] }, text, conversion));
}

/**
 * Thousandths of an inch are bare in a file of inches and have a number sign elsewhere. One that has the sign already
 * gets a zero more, which the way back takes off.
 */
function slotNumber(group: Group, text: string, { from }: Conversion): readonly Piece[] | null {
  const [quantity] = group.quantities;
  if (quantity === undefined || !isSlotNumber(group.slot, quantity, from)) return null;
  if (!Number.isInteger(quantity.number) || !isPlain(quantity)) return null;
  const { start } = figureColumns(quantity, text);
  return [{ start, end: start, text: '#' }];
}

function signedSlotNumbers(line: Line, { toUs }: Conversion): readonly Piece[] {
  return line.items.flatMap(({ value }) => {
    if (value.kind !== 'hash-number' || value.number < 1) return [];
    const { start } = value;
    if (!toUs) return [{ start: start + 1, end: start + 1, text: '0' }];
    const hasZero = line.text[start + 1] === '0';
    return [hasZero ? { start: start + 1, end: start + 2, text: '' } : { start, end: start + 1, text: '' }];
  });
}

/** True where every number of a line stands in its text as it was read. */
export const isAsRead = (line: Line): boolean =>
  groupsOfLine(line).every(({ quantities }) =>
    quantities.every(({ start, end, figure }) => line.text.slice(start, end).includes(figure)),
  );

/** What changes on a line. */
export function piecesOf(line: Line, conversion: Conversion): readonly Piece[] {
  if (line.row === 'units') return [];
  const ofGroups = groupsOfLine(line).flatMap((group) => {
    const slot = slotNumber(group, line.text, conversion);
    if (slot !== null) return slot;
    if (group.quantities.some(({ form }) => form === 'feet-inches')) return [];
    const isBare = group.quantities.every(({ unit }) => unit === null);
    return isBare ? bareGroup(group, line.text, conversion) : unitGroup(group, line.text, conversion);
  });
  return [...ofGroups, ...signedSlotNumbers(line, conversion)];
}
