import * as l10n from '@vscode/l10n';
import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { Interval } from '../../model/log.ts';
import { entryOf, leadingInterval } from '../entries.ts';
import { type Section, sectionAt } from '../sections.ts';
import type { Change } from './change.ts';
import type { Refactoring } from './refactoring.ts';

const sortable = new Set(['strata.line', 'hole.line', 'drilling.line', 'water.line', 'abandonment.line']);

/** A line with the comments and allows above it. */
interface Unit {
  readonly first: number;
  readonly number: number;
  /** Where it begins; a line that begins at no depth of its own stays behind the one before it. */
  readonly top: number;
  readonly isDepthLine: boolean;
  readonly interval: Interval | null;
}

const saysNothing = (line: Line): boolean =>
  line.keyword === null && line.depths === null && line.items.length === 0 && line.problems.length === 0;

const singleDepth = (entry: object | null): number | null => {
  const depth = entry !== null && 'depth' in entry ? entry.depth : null;
  const value = typeof depth === 'object' && depth !== null && 'value' in depth ? depth.value : null;
  return typeof value === 'number' && !Number.isNaN(value) ? value : null;
};

const isDepthLine = (line: Line): boolean => line.keyword === null && line.row !== null && sortable.has(line.row);

/** What the log holds of a line, and where it begins; null where it begins at no depth that is known. */
function beginningOf({ log }: Snapshot, line: Line, number: number): { interval: Interval | null; top: number | null } {
  const entry = entryOf(log, line.row ?? '', number);
  const interval = leadingInterval(entry);
  const top = interval === null ? singleDepth(entry) : (interval.top?.value ?? null);
  return { interval, top };
}

function unitAt(snapshot: Snapshot, first: number, number: number, before: number): Unit {
  const line = snapshot.tree.lines[number];
  if (line === undefined || !isDepthLine(line))
    return { first, number, top: before, isDepthLine: false, interval: null };
  const { interval, top } = beginningOf(snapshot, line, number);
  return { first, number, top: top ?? before, isDepthLine: true, interval };
}

/** The lines below the head of a section, each with what stands above it. */
function unitsOf(snapshot: Snapshot, { id, first, last }: Section): readonly Unit[] {
  const units: Unit[] = [];
  if (!sortable.has(`${id}.line`)) return units;
  let begun = first + 1;
  for (let number = first + 1; number <= last; number += 1) {
    const line = snapshot.tree.lines[number];
    if (line === undefined || saysNothing(line)) continue;
    units.push(unitAt(snapshot, begun, number, units.at(-1)?.top ?? Number.NEGATIVE_INFINITY));
    begun = number + 1;
  }
  return units;
}

/** True where no line below the head of a section begins above the one before it; asked at every move of the cursor. */
function isSorted(snapshot: Snapshot, { id, first, last }: Section): boolean {
  if (!sortable.has(`${id}.line`)) return true;
  let before = Number.NEGATIVE_INFINITY;
  for (let number = first + 1; number <= last; number += 1) {
    const line = snapshot.tree.lines[number];
    if (line === undefined || !isDepthLine(line) || saysNothing(line)) continue;
    const top = beginningOf(snapshot, line, number).top ?? before;
    if (top < before) return false;
    before = top;
  }
  return true;
}

/** The top of a line that begins with the dash, as it must be written where another line comes to stand above it. */
function topText({ interval }: Unit, line: Line): string {
  const top = interval?.top ?? null;
  const { depths } = line;
  if (top === null || top.number === null || depths?.kind !== 'interval') return '?';
  if (!top.unitWritten && depths.to.unit === null) return top.written;
  const figure = `${top.approximate ? '~' : ''}${top.number < 0 ? '+' : ''}${Math.abs(top.number)}`;
  return `${figure}${top.doubtful ? '?' : ''} ${top.unit}`;
}

function unitText(unit: Unit, snapshot: Snapshot, above: Unit | undefined, wasAbove: Unit | undefined): string {
  const lines = snapshot.lines.slice(unit.first, unit.number + 1);
  const line = snapshot.tree.lines[unit.number];
  const { depths } = line ?? { depths: null };
  if (line === undefined || above === wasAbove || depths?.kind !== 'interval' || depths.from !== null)
    return lines.join('\n');
  const text = lines.at(-1) ?? '';
  const told = `${text.slice(0, depths.start)}${topText(unit, line)} ${text.slice(depths.start)}`;
  return [...lines.slice(0, -1), told].join('\n');
}

/** For each line the depth line that stands above it in the section, whose base it may begin at. */
function depthLinesAbove(units: readonly Unit[]): ReadonlyMap<Unit, Unit> {
  const above = new Map<Unit, Unit>();
  let last: Unit | null = null;
  for (const unit of units) {
    if (last !== null) above.set(unit, last);
    if (unit.isDepthLine) last = unit;
  }
  return above;
}

function sortedChange(snapshot: Snapshot, section: Section): readonly Change[] {
  const units = unitsOf(snapshot, section);
  const sorted = [...units].sort((a, b) => a.top - b.top);
  const [first, last] = [units[0], units.at(-1)];
  if (isSorted(snapshot, section) || first === undefined || last === undefined) return [];
  const [above, wasAbove] = [depthLinesAbove(sorted), depthLinesAbove(units)];
  return [
    {
      first: { line: first.first, column: 0 },
      last: { line: last.number, column: snapshot.lines[last.number]?.length ?? 0 },
      text: sorted.map((unit) => unitText(unit, snapshot, above.get(unit), wasAbove.get(unit))).join('\n'),
    },
  ];
}

/**
 * The lines of a section in the order of their tops, each with the comments above it; what begins at no depth goes with
 * the line before it, and `- 12` is written out where it must be.
 */
export const sortLines: Refactoring = {
  id: 'sort-lines',
  kind: 'refactor.move',
  offers: (snapshot, { first }) => {
    const section = sectionAt(snapshot.tree, first.line);
    if (section === undefined || isSorted(snapshot, section)) return [];
    return [{ name: 'section', title: l10n.t('Sort the lines of {0} by depth', section.id) }];
  },
  changes: (snapshot, { first }) => {
    const section = sectionAt(snapshot.tree, first.line);
    return section === undefined ? [] : sortedChange(snapshot, section);
  },
  refusal: null,
};
