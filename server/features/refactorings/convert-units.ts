import { parseLines } from '../../../grammar/index.ts';
import type { Line } from '../../../grammar/tree.ts';
import { exact } from '../../../grammar/units.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { FileUnits } from '../../model/log.ts';
import { type Amount, amountsOf, siOf } from '../amounts.ts';
import { type Change, changedLines, changeOf, withPieces } from './change.ts';
import { type Conversion, conversionOf } from './convert-units/conversion.ts';
import { isAsRead, isSlotNumber, piecesOf } from './convert-units/pieces.ts';
import { unitsChange } from './convert-units/units-line.ts';
import type { Refactoring } from './refactoring.ts';

/** Thousandths of an inch in a metre. */
const slotNumber = 0.001 * exact.inch;

const isNumbered = ({ slot, quantity }: Amount, units: FileUnits): boolean =>
  isSlotNumber(slot?.slot ?? null, quantity, units);

/** What a line says in numbers, in SI, its slot numbers first. */
function senseOf(line: Line, units: FileUnits): readonly (number | null)[] {
  const amounts = amountsOf(line);
  const signed = line.items.flatMap(({ value }) => (value.kind === 'hash-number' ? [value.number] : []));
  const bare = amounts.flatMap((each) => (isNumbered(each, units) ? [each.quantity.number ?? 0] : []));
  const others = amounts.filter((each) => !isNumbered(each, units)).map((each) => siOf(each, units));
  return [...[...signed, ...bare].map((number) => number * slotNumber), ...others];
}

/** What the digits that a conversion adds leave open at most: half of the fifth behind the point of 1 mm in inches. */
const leftOpen = 1.5e-4;

const sameValue = (a: number | null, b: number | null | undefined): boolean =>
  a === null || b == null ? a === (b ?? null) : Math.abs(a - b) <= leftOpen * Math.abs(a) + Number.EPSILON;

/** True where every line of the new text says what it said before. */
function saysTheSame({ tree }: Snapshot, after: readonly string[], { from, to }: Conversion): boolean {
  const lines = (all: readonly Line[]) => all.filter(({ row }) => row !== 'units');
  const before = lines(tree.lines);
  const read = lines(parseLines(after).lines);
  return (
    before.length === read.length &&
    before.every((line, at) => {
      const sense = senseOf(line, from);
      const again = read[at] === undefined ? [] : senseOf(read[at], to);
      return sense.length === again.length && sense.every((value, each) => sameValue(value, again[each]));
    })
  );
}

function lineChanges({ tree, lines }: Snapshot, conversion: Conversion): readonly Change[] {
  return tree.lines.flatMap((line, number) => {
    const pieces = piecesOf(line, conversion);
    const before = lines[number] ?? '';
    return pieces.length === 0 ? [] : [changeOf(number, before, withPieces(before, pieces))];
  });
}

function changes(snapshot: Snapshot): readonly Change[] {
  const conversion = conversionOf(snapshot.log.units);
  const ofUnits = conversion === null ? null : unitsChange(snapshot, conversion);
  if (conversion === null || ofUnits === null || !snapshot.tree.lines.every(isAsRead)) return [];
  const all = [ofUnits, ...lineChanges(snapshot, conversion)];
  return saysTheSame(snapshot, changedLines(snapshot.lines, all), conversion) ? all : [];
}

const titles = { us: 'Convert the file to feet and inches', metric: 'Convert the file to metres and millimetres' };

/**
 * The whole file in the other system of units, so that the same change once more gives the text that was there. Plain
 * numbers change by `exact-number.ts`. Pipe, slots and bags keep their trade sizes, fractions and figures such as `.3`
 * their form: they get their unit written behind them. What already stands in a unit of the other system stays, set off
 * by two blanks more, so that the way back knows it. It suggests itself at the units line.
 */
export const convertUnits: Refactoring = {
  id: 'convert-units',
  kind: 'refactor.rewrite',
  offers: (snapshot, selection, asked) => {
    const conversion = conversionOf(snapshot.log.units);
    const suggestsItself = snapshot.tree.lines[selection.first.line]?.row === 'units';
    if (conversion === null || !(asked || suggestsItself)) return [];
    return [{ name: 'all', title: conversion.toUs ? titles.us : titles.metric }];
  },
  changes,
};
