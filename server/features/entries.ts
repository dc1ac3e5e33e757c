import type { Depth, Interval, WellLog } from '../model/log.ts';
import { byLine } from './by-line.ts';

interface Entry {
  readonly line: number;
}

type Entries = (log: WellLog) => readonly Entry[];

const present = <T>(each: T | null): T[] => (each === null ? [] : [each]);

const ofStrings =
  (pick: (string: WellLog['strings'][number]) => readonly Entry[]): Entries =>
  (log) =>
    log.strings.flatMap(pick);

const fillsOf: Entries = ofStrings((string) => string.fills);

/** Where the typed log keeps what a row of the table says. */
const places: Readonly<Record<string, Entries>> = {
  hole: (log) => log.hole,
  'hole.line': (log) => log.hole,
  strata: (log) => log.strata,
  'strata.line': (log) => log.strata,
  drilling: (log) => log.drilling,
  'drilling.line': (log) => log.drilling.flatMap((head) => head.intervals),
  lost: (log) => log.drilling.flatMap((head) => head.lost),
  samples: (log) => log.drilling.flatMap((head) => head.samples),
  casing: (log) => log.strings,
  liner: (log) => log.strings,
  screen: (log) => [...log.strings, ...log.strings.flatMap((string) => string.screens)],
  shoe: ofStrings((string) => present(string.shoe)),
  centralizers: ofStrings((string) => present(string.centralizers)),
  joints: ofStrings((string) => present(string.joints)),
  grout: fillsOf,
  seal: fillsOf,
  pack: fillsOf,
  plug: fillsOf,
  packer: ofStrings((string) => string.packers),
  pitless: ofStrings((string) => string.pitless),
  cut: ofStrings((string) => string.cuts),
  water: (log) => log.water.found,
  'water.line': (log) => log.water.found,
  level: (log) => log.water.levels,
  gas: (log) => log.water.gas,
  quality: (log) => log.water.quality,
  test: (log) => log.tests,
  'test.line': (log) => log.tests.flatMap((test) => readingsOf(test)),
  'abandonment.line': (log) => log.abandonments.flatMap((each) => each.fills),
  hydrofracture: (log) => log.hydrofractures,
  pump: (log) => log.pumps,
  shift: (log) => log.shifts,
  existing: (log) => log.existing,
  photo: (log) => log.photos,
};

const readingsOf = (test: WellLog['tests'][number]): readonly Entry[] =>
  [test.phases, ...test.observed.map((well) => well.phases)].flat().flatMap((phase) => phase.readings);

const entriesOf: ReadonlyMap<string, (log: WellLog, line: number) => readonly Entry[]> = new Map(
  Object.entries(places).map(([row, entries]) => [row, byLine(entries, ({ line }) => line)]),
);

/** What the typed log holds of one line; null where it keeps nothing of it. */
export const entryOf = (log: WellLog, row: string, line: number): object | null =>
  entriesOf.get(row)?.(log, line)[0] ?? null;

const isDepth = (value: object): value is Depth => 'datum' in value && 'td' in value;

const isInterval = (value: object): value is Interval => 'continued' in value && 'top' in value && 'bottom' in value;

const childrenOf = (value: object, line: number): readonly object[] =>
  Object.values(value).filter(
    (child) => typeof child === 'object' && child !== null && !('line' in child && child.line !== line),
  );

function collect<T extends object>(value: object, line: number, wanted: (value: object) => value is T): readonly T[] {
  if (wanted(value)) return [value];
  return childrenOf(value, line).flatMap((child) => collect(child, line, wanted));
}

/** The interval that a line of the log begins with. Nothing else of the line is looked at. */
export function leadingInterval(entry: object | null): Interval | null {
  const interval = entry !== null && 'interval' in entry ? entry.interval : null;
  return typeof interval === 'object' && interval !== null && isInterval(interval) ? interval : null;
}

/** The intervals that a line of the log holds. */
export const intervalsIn = (entry: object, line: number): readonly Interval[] => collect(entry, line, isInterval);

/** The depths and levels that a line of the log holds, those of its intervals included. */
export const depthsIn = (entry: object, line: number): readonly Depth[] => collect(entry, line, isDepth);
