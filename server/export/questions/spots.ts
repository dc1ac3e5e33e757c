import * as l10n from '@vscode/l10n';
import { depthWithUnit, intervalWithUnit } from '../../drawing/words.ts';
import type { Depth, Fill, Interval, PipeString, Test, WellLog } from '../../model/log.ts';
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

const stringNames: Readonly<Record<PipeString['kind'], (number: number) => string>> = {
  casing: (number) => l10n.t('casing {0}', number),
  liner: (number) => l10n.t('liner {0}', number),
  screen: (number) => l10n.t('screen {0}', number),
};

const fillNames: Readonly<Record<Fill['kind'], (string: string) => string>> = {
  grout: (string) => l10n.t('grout of {0}', string),
  seal: (string) => l10n.t('seal of {0}', string),
  pack: (string) => l10n.t('pack of {0}', string),
  plug: (string) => l10n.t('plug of {0}', string),
  abandonment: (string) => l10n.t('abandonment of {0}', string),
};

/** What hangs on a string, or stands around it; what has no depth of its own stands at the string's top. */
function ofString(string: PipeString, log: WellLog): Spot[] {
  const name = stringNames[string.kind](string.number);
  const [own] = inColumn(name, [string], log);
  const hung = (what: string, entries: readonly (Entry | null)[]): Spot[] =>
    inColumn(
      what,
      entries.filter((each) => each !== null),
      log,
    ).map((spot) => ({ ...spot, depth: spot.depth ?? own?.depth ?? null, beside: [string.line, ...spot.beside] }));
  return [
    ...(own ? [own] : []),
    ...hung(l10n.t('shoe of {0}', name), [string.shoe]),
    ...hung(l10n.t('centralizers of {0}', name), [string.centralizers]),
    ...hung(l10n.t('joints of {0}', name), [string.joints]),
    ...hung(
      l10n.t('screen of {0}', name),
      string.screens.filter(({ line }) => line !== string.line),
    ),
    ...string.fills.flatMap((fill) => hung(fillNames[fill.kind](name), [fill])),
    ...hung(l10n.t('packer of {0}', name), string.packers),
    ...hung(l10n.t('pitless adapter of {0}', name), string.pitless),
    ...hung(l10n.t('cut of {0}', name), string.cuts),
  ];
}

function ofTest(test: Test, log: WellLog): Spot[] {
  const name = l10n.t('test {0}', test.number);
  const readings = [...test.phases, ...test.observed.flatMap(({ phases }) => phases)].flatMap((each) => each.readings);
  const entries = readings.map(({ line }) => ({ line }));
  return [
    ...inColumn(name, [{ line: test.line }], log, 'after'),
    ...inColumn(l10n.t('reading of {0}', name), entries, log, 'after'),
  ];
}

const levelsOf = ({ water }: WellLog): Entry[] => water.levels.map(({ line, level }) => ({ line, depth: level }));

const plain = (name: string, entries: readonly Entry[], log: WellLog): Spot[] =>
  entries.flatMap(({ line }) => inColumn(name, [{ line }], log, 'after'));

const inHole = (log: WellLog): Spot[] => [
  ...inColumn(l10n.t('hole'), log.hole, log),
  ...inColumn(l10n.t('strata'), log.strata, log),
  ...log.drilling.flatMap((each) => [
    ...inColumn(l10n.t('drilling'), [{ line: each.line }, ...each.intervals], log),
    ...inColumn(l10n.t('lost returns'), each.lost, log),
    ...inColumn(l10n.t('samples'), each.samples, log),
  ]),
  ...log.strings.flatMap((string) => ofString(string, log)),
  ...inColumn(l10n.t('water found'), log.water.found, log),
  ...inColumn(l10n.t('water level'), levelsOf(log), log),
  ...inColumn(l10n.t('gas'), log.water.gas, log),
  ...inColumn(l10n.t('water quality'), log.water.quality, log),
  ...log.abandonments.flatMap(({ fills }) => inColumn(l10n.t('abandonment'), fills, log)),
];

const afterwards = (log: WellLog): Spot[] => [
  ...plain(l10n.t('flow at surface'), log.water.flowing, log),
  ...log.tests.flatMap((test) => ofTest(test, log)),
  ...plain(l10n.t('disinfection'), log.disinfections, log),
  ...plain(l10n.t('development'), log.developments, log),
  ...inColumn(l10n.t('hydrofracture'), log.hydrofractures, log, 'after'),
  ...plain(l10n.t('pump'), log.pumps, log),
  ...plain(l10n.t('cap'), log.caps, log),
  ...plain(l10n.t('abandonment'), log.abandonments, log),
];

/** Where each line of a log belongs; lines of the head of the file are not in it. The first that claims a line has it. */
export function spotsOf(log: WellLog): ReadonlyMap<number, Spot> {
  const spots = new Map<number, Spot>();
  for (const spot of [...inHole(log), ...afterwards(log)]) if (!spots.has(spot.line)) spots.set(spot.line, spot);
  return spots;
}
