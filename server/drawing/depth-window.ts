import type { Depth, Interval, WellLog } from '../model/log.ts';
import type { Record as WellRecord } from '../record/record.ts';

/** A stretch of depth in metres below ground; above ground is negative. */
export interface Extent {
  readonly top: number;
  readonly bottom: number;
}

/** The depths that a drawing shows. */
export type DepthWindow = Extent;

/* The deepest hole on land so far is 12,262 m (Kola SG-3, from memory): a greater depth is a slip. */
const deepestEver = 12_500;
/* A group of depths this many times deeper than every other group is a slip too, such as a lost point. */
const slip = 10;
const shallowest = 1;

const usable = (value: number | null | undefined): value is number =>
  value != null && Number.isFinite(value) && Math.abs(value) <= deepestEver;

const ends = (interval: Interval | null): (number | null)[] => [
  interval?.top?.value ?? null,
  interval?.bottom?.value ?? null,
];
const at = (depth: Depth | null): number | null => depth?.value ?? null;

const stringDepths = (log: WellLog): (number | null)[] =>
  log.strings.flatMap((string) => [
    ...ends(string.interval),
    at(string.shoe?.depth ?? null),
    ...string.screens.flatMap((screen) => ends(screen.interval)),
    ...string.fills.flatMap((fill) => [...ends(fill.interval), at(fill.depth)]),
  ]);

const waterDepths = (log: WellLog): (number | null)[] => [
  ...log.water.found.flatMap((found) => [at(found.depth), ...ends(found.interval)]),
  ...log.water.levels.map((level) => at(level.level)),
  ...log.water.gas.map((gas) => at(gas.depth)),
];

/** Every depth that the log speaks of, by what it speaks of. */
const groupsOf = (log: WellLog): (number | null)[][] => [
  [
    log.totalDepth,
    ...log.hole.flatMap((entry) => ends(entry.interval)),
    ...log.existing.flatMap((old) => ends(old.interval)),
  ],
  log.strata.flatMap((stratum) => ends(stratum.interval)),
  stringDepths(log),
  waterDepths(log),
  log.drilling.flatMap((drilling) => drilling.intervals.flatMap((each) => ends(each.interval))),
  log.abandonments.flatMap((abandonment) => abandonment.fills.flatMap((fill) => ends(fill.interval))),
];

function bottomOf(groups: readonly (readonly number[])[]): number {
  const deepest = groups
    .map((group) => group.reduce((most, depth) => Math.max(most, depth), 0))
    .filter((depth) => depth > 0);
  const sorted = deepest.sort((a, b) => b - a);
  const believed = sorted.find((depth, n) => depth <= slip * (sorted[n + 1] ?? depth));
  return Math.max(believed ?? 0, shallowest);
}

/** The stretch of depth that shows all that the log speaks of, save what can only be a slip of the pen. */
export function depthWindow(record: WellRecord): DepthWindow {
  const groups = groupsOf(record.log).map((group) => group.filter(usable));
  const bottom = bottomOf(groups);
  const highest = groups.flat().reduce((least, depth) => Math.min(least, depth), 0);
  return { top: Math.max(highest, -Math.max(2, bottom / 10)), bottom };
}
