import { depthWithUnit, intervalWithUnit } from '../../drawing/words.ts';
import type { Depth, Interval, PipeString, Test, WellLog } from '../../model/log.ts';
import type { Part } from './question.ts';

/** Where a line of a log belongs: the part of the list, its depth, what it is about, and the lines beside it. */
export interface Spot {
  readonly line: number;
  readonly part: Part;
  readonly depth: number | null;
  readonly about: string;
  readonly beside: readonly number[];
}

interface Entry {
  readonly line: number;
  readonly interval?: Interval | null;
  readonly depth?: Depth | null;
}

const depthOf = ({ interval, depth }: Entry): number | null =>
  depth?.value ?? interval?.top?.value ?? interval?.bottom?.value ?? null;

function whereOf({ interval, depth }: Entry, { units }: WellLog): string {
  if (interval) return `, ${intervalWithUnit(interval, units.depth)}`;
  return depth ? `, ${depthWithUnit(depth, units.depth)}` : '';
}

/** The lines above and below in the same column. */
const neighbours = (entries: readonly Entry[], index: number): number[] =>
  [entries[index - 1], entries[index + 1]].flatMap((each) => (each ? [each.line] : []));

const inColumn = (name: string, entries: readonly Entry[], log: WellLog, part: Part = 'hole'): Spot[] =>
  entries.map((entry, index) => ({
    line: entry.line,
    part,
    depth: depthOf(entry),
    about: `${name}${whereOf(entry, log)}`,
    beside: neighbours(entries, index),
  }));

/** What hangs on a string, or stands around it; what has no depth of its own stands at the string's top. */
function ofString(string: PipeString, log: WellLog): Spot[] {
  const name = `${string.kind} ${string.number}`;
  const [own] = inColumn(name, [string], log);
  const hung = (what: string, entries: readonly (Entry | null)[]): Spot[] =>
    inColumn(
      `${what} of ${name}`,
      entries.filter((each) => each !== null),
      log,
    ).map((spot) => ({ ...spot, depth: spot.depth ?? own?.depth ?? null, beside: [string.line, ...spot.beside] }));
  return [
    ...(own ? [own] : []),
    ...hung('shoe', [string.shoe]),
    ...hung('centralizers', [string.centralizers]),
    ...hung('joints', [string.joints]),
    ...hung(
      'screen',
      string.screens.filter(({ line }) => line !== string.line),
    ),
    ...string.fills.flatMap((fill) => hung(fill.kind, [fill])),
    ...hung('packer', string.packers),
    ...hung('pitless adapter', string.pitless),
    ...hung('cut', string.cuts),
  ];
}

function ofTest(test: Test, log: WellLog): Spot[] {
  const name = `test ${test.number}`;
  const readings = [...test.phases, ...test.observed.flatMap(({ phases }) => phases)].flatMap((each) => each.readings);
  const entries = readings.map(({ line }) => ({ line }));
  return [
    ...inColumn(name, [{ line: test.line }], log, 'after'),
    ...inColumn(`reading of ${name}`, entries, log, 'after'),
  ];
}

const levelsOf = ({ water }: WellLog): Entry[] => water.levels.map(({ line, level }) => ({ line, depth: level }));

const plain = (name: string, entries: readonly Entry[], log: WellLog): Spot[] =>
  entries.flatMap(({ line }) => inColumn(name, [{ line }], log, 'after'));

const inHole = (log: WellLog): Spot[] => [
  ...inColumn('hole', log.hole, log),
  ...inColumn('strata', log.strata, log),
  ...log.drilling.flatMap((each) => [
    ...inColumn('drilling', [{ line: each.line }, ...each.intervals], log),
    ...inColumn('lost returns', each.lost, log),
    ...inColumn('samples', each.samples, log),
  ]),
  ...log.strings.flatMap((string) => ofString(string, log)),
  ...inColumn('water found', log.water.found, log),
  ...inColumn('water level', levelsOf(log), log),
  ...inColumn('gas', log.water.gas, log),
  ...inColumn('water quality', log.water.quality, log),
  ...log.abandonments.flatMap(({ fills }) => inColumn('abandonment', fills, log)),
];

const afterwards = (log: WellLog): Spot[] => [
  ...plain('flow at surface', log.water.flowing, log),
  ...log.tests.flatMap((test) => ofTest(test, log)),
  ...plain('disinfection', log.disinfections, log),
  ...plain('development', log.developments, log),
  ...inColumn('hydrofracture', log.hydrofractures, log, 'after'),
  ...plain('pump', log.pumps, log),
  ...plain('cap', log.caps, log),
  ...plain('abandonment', log.abandonments, log),
];

/** Where each line of a log belongs; lines of the head of the file are not in it. The first that claims a line has it. */
export function spotsOf(log: WellLog): ReadonlyMap<number, Spot> {
  const spots = new Map<number, Spot>();
  for (const spot of [...inHole(log), ...afterwards(log)]) if (!spots.has(spot.line)) spots.set(spot.line, spot);
  return spots;
}
