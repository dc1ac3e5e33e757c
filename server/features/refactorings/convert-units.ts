import * as l10n from '@vscode/l10n';
import { parseLines } from '../../../grammar/index.ts';
import type { Line } from '../../../grammar/tree.ts';
import { exact } from '../../../grammar/units.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { FileUnits } from '../../model/log.ts';
import { type Amount, amountsOf, siOf } from '../amounts.ts';
import { type Change, changedLines, changeOf, withPieces } from './change.ts';
import { type Conversion, conversionsOf, sameUnits } from './convert-units/conversion.ts';
import { isAsRead, isSlotNumber, piecesOf } from './convert-units/pieces.ts';
import { type ReadText, unitsBefore, unitsChange, unitsLineOf } from './convert-units/units-line.ts';
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

function saysTheSame(before: Line, after: Line | undefined, { from, to }: Conversion): boolean {
  const sense = senseOf(before, from);
  const again = after === undefined ? [] : senseOf(after, to);
  return sense.length === again.length && sense.every((value, at) => sameValue(value, again[at]));
}

/** The lines of a text but those of its units, which come and go. */
const bodyOf = ({ tree }: ReadText): readonly Line[] => tree.lines.filter(({ row }) => row !== 'units');

/** The number of the first line for which it does not hold beside its counterpart; null where it holds for all. */
function firstUnlike(text: ReadText, other: ReadText, holds: (a: Line, b: Line | undefined) => boolean): number | null {
  const others = bodyOf(other);
  const unlike = bodyOf(text).find((line, at) => !holds(line, others[at]));
  return unlike === undefined ? null : text.tree.lines.indexOf(unlike);
}

const readText = (lines: readonly string[]): ReadText => ({ lines, tree: parseLines(lines) });

/** The text after the change back; the same text where there is no way. */
function wayBack(after: ReadText, { from, to }: Conversion): ReadText {
  const back = conversionsOf(to, unitsBefore(after)).find((way) => sameUnits(way.to, from));
  return back === undefined ? after : readText(changedLines(after.lines, lineChanges(after, back)));
}

function lineChanges({ tree, lines }: ReadText, conversion: Conversion): readonly Change[] {
  return tree.lines.flatMap((line, number) => {
    const pieces = piecesOf(line, conversion);
    const before = lines[number] ?? '';
    return pieces.length === 0 ? [] : [changeOf(number, before, withPieces(before, pieces))];
  });
}

/** The changes of a file, or the line that stands in the way, and why. */
type Outcome = { readonly changes: readonly Change[] } | { readonly line: number; readonly why: string };

function converted(snapshot: Snapshot, conversion: Conversion): Outcome {
  const ofUnits = unitsChange(snapshot, conversion);
  if (ofUnits === null) {
    const why = l10n.t('its units cannot be turned there and back; write them as "{0}"', 'units m mm');
    return { line: unitsLineOf(snapshot), why };
  }
  const unread = snapshot.tree.lines.findIndex((line) => !isAsRead(line));
  if (unread >= 0) return { line: unread, why: l10n.t('a number on it is not spelled as it is read') };
  const changes = [ofUnits, ...lineChanges(snapshot, conversion)];
  const after = readText(changedLines(snapshot.lines, changes));
  const line =
    firstUnlike(snapshot, after, (before, then) => saysTheSame(before, then, conversion)) ??
    firstUnlike(snapshot, wayBack(after, conversion), (before, again) => before.text === again?.text);
  return line === null
    ? { changes }
    : { line, why: l10n.t('a value on it could not be told from another on the way back; give it its unit') };
}

const ways = (snapshot: Snapshot): readonly Conversion[] => conversionsOf(snapshot.log.units, unitsBefore(snapshot));

const wordsOf = ({ to }: Conversion): string => `${to.depth} ${to.diameter}`;

function titleOf(conversion: Conversion): string {
  const words = wordsOf(conversion);
  if (conversion.isBack) return l10n.t('Convert the file back to the units that it came from: {0}', words);
  if (words === 'ft in') return l10n.t('Convert the file to feet and inches');
  return words === 'm mm'
    ? l10n.t('Convert the file to metres and millimetres')
    : l10n.t('Convert the file to metres and centimetres');
}

/** A file in one system converts one way, whatever the way is called. */
const wayNamed = (snapshot: Snapshot, name: string): Conversion | undefined => {
  const all = ways(snapshot);
  return all.find((way) => wordsOf(way) === name) ?? (all.length === 1 ? all[0] : undefined);
};

function outcomeOf(snapshot: Snapshot, name: string): Outcome | null {
  const way = wayNamed(snapshot, name);
  return way === undefined ? null : converted(snapshot, way);
}

/**
 * The whole file in the other system of units, so that the same change once more gives the text that was there. Plain
 * numbers change by `exact-number.ts`. Pipe, slots and bags keep their trade sizes, fractions and figures such as `.3`
 * their form: they get their unit written behind them. What already stands in a unit of the other system stays, set off
 * by two blanks more, so that the way back knows it. A file of both systems goes to either; what it came from is noted
 * behind its units line, where the way back takes it off. It suggests itself at the units line.
 */
export const convertUnits: Refactoring = {
  id: 'convert-units',
  kind: 'refactor.rewrite',
  offers: (snapshot, selection, asked) => {
    const suggestsItself = snapshot.tree.lines[selection.first.line]?.row === 'units';
    if (!(asked || suggestsItself)) return [];
    return ways(snapshot).map((way) => ({ name: wordsOf(way), title: titleOf(way) }));
  },
  changes: (snapshot, _, name) => {
    const outcome = outcomeOf(snapshot, name);
    return outcome !== null && 'changes' in outcome ? outcome.changes : [];
  },
  refusal: (snapshot, _, name) => {
    const outcome = outcomeOf(snapshot, name);
    if (outcome === null || 'changes' in outcome) return null;
    const { line, why } = outcome;
    const text = (snapshot.lines[line] ?? '').trim();
    return l10n.t('The file was not converted. Line {0} stands in the way: {1} ({2}).', line + 1, why, text);
  },
};
