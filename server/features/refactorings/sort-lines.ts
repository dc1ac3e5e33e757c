import * as l10n from '@vscode/l10n';
import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { Interval } from '../../model/log.ts';
import { entryOf, leadingInterval } from '../entries.ts';
import { type Section, sectionsOf } from '../sections.ts';
import type { Change } from './change.ts';
import type { Refactoring } from './refactoring.ts';

const sortable = new Set(['strata.line', 'hole.line', 'drilling.line', 'water.line', 'abandonment.line']);

/** A depth line with the comments and allows above it. */
interface Unit {
  readonly first: number;
  readonly number: number;
  readonly top: number;
  readonly interval: Interval | null;
}

const saysNothing = (line: Line): boolean =>
  line.keyword === null && line.depths === null && line.items.length === 0 && line.problems.length === 0;

const singleDepth = (entry: object | null): number | null => {
  const depth = entry !== null && 'depth' in entry ? entry.depth : null;
  return typeof depth === 'object' && depth !== null && 'value' in depth ? Number(depth.value ?? Number.NaN) : null;
};

function unitAt(snapshot: Snapshot, first: number, number: number, row: string, before: number): Unit {
  const entry = entryOf(snapshot.log, row, number);
  const interval = leadingInterval(entry);
  const top = interval === null ? singleDepth(entry) : (interval.top?.value ?? null);
  return { first, number, top: top === null || Number.isNaN(top) ? before : top, interval };
}

/** Runs of depth lines that nothing else parts; a depth that nobody knows stays behind the one before it. */
function runsOf(snapshot: Snapshot, { first, last }: Section): readonly (readonly Unit[])[] {
  const runs: Unit[][] = [[]];
  let begun: number | null = null;
  for (let number = first + 1; number <= last; number += 1) {
    const line = snapshot.tree.lines[number];
    const run = runs.at(-1) ?? [];
    if (line === undefined) break;
    if (line.row !== null && line.keyword === null && sortable.has(line.row)) {
      run.push(unitAt(snapshot, begun ?? number, number, line.row, run.at(-1)?.top ?? Number.NEGATIVE_INFINITY));
      begun = null;
    } else if (saysNothing(line)) begun ??= number;
    else {
      if (run.length > 0) runs.push([]);
      begun = null;
    }
  }
  return runs.filter(({ length }) => length > 1);
}

const isSorted = (run: readonly Unit[]): boolean =>
  run.every(({ top }, at) => at === 0 || top >= (run[at - 1]?.top ?? top));

/** The top of a line that begins with the dash, as it must be written where another line comes to stand above it. */
function topText({ interval }: Unit, line: Line): string {
  const top = interval?.top ?? null;
  const { depths } = line;
  if (top === null || top.number === null || depths?.kind !== 'interval') return '?';
  const figure = `${top.number < 0 ? '+' : ''}${Math.abs(top.number)}`;
  const needsUnit = top.unitWritten || depths.to.unit !== null;
  return needsUnit ? `${figure} ${top.unit}` : figure;
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

function changeOfRun(run: readonly Unit[], snapshot: Snapshot): readonly Change[] {
  const sorted = [...run].sort((a, b) => a.top - b.top);
  const [first, last] = [run[0], run.at(-1)];
  if (isSorted(run) || first === undefined || last === undefined) return [];
  const texts = sorted.map((unit, at) => unitText(unit, snapshot, sorted[at - 1], run[run.indexOf(unit) - 1]));
  return [
    {
      first: { line: first.first, column: 0 },
      last: { line: last.number, column: snapshot.lines[last.number]?.length ?? 0 },
      text: texts.join('\n'),
    },
  ];
}

const sectionAt = ({ tree }: Snapshot, line: number): Section | undefined =>
  sectionsOf(tree).find(({ first, last }) => first <= line && line <= last);

/** The depth lines of a section in the order of their tops, each with the comments above it; `- 12` is written out where it must be. */
export const sortLines: Refactoring = {
  id: 'sort-lines',
  kind: 'refactor.move',
  offers: (snapshot, { first }) => {
    const section = sectionAt(snapshot, first.line);
    if (section === undefined || runsOf(snapshot, section).every(isSorted)) return [];
    return [{ name: 'section', title: l10n.t('Sort the lines of {0} by depth', section.id) }];
  },
  changes: (snapshot, { first }) => {
    const section = sectionAt(snapshot, first.line);
    return section === undefined ? [] : runsOf(snapshot, section).flatMap((run) => changeOfRun(run, snapshot));
  },
  refusal: null,
};
