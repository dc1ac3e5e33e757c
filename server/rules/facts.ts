import { remembered } from '../../grammar/remembered.ts';
import type { Fill, PipeString, Stratum, WellLog } from '../model/log.ts';
import type { Facts, RockKind } from '../packs/when.ts';
import { isPermanent } from '../record/strings/standing.ts';
import { bottomOf, topOf } from './columns.ts';
import { isSeal, stratumAt } from './strings.ts';

const sandstones = new Set(['sandstone', 'arkose', 'greywacke', 'freestone']);

const kindsOfClass: Readonly<Record<string, RockKind>> = {
  carbonate: 'limestone',
  crystalline: 'crystalline',
  volcanic: 'crystalline',
};

/** The kind of rock of a layer, as codes tell them apart; null for loose ground. */
export function rockKindOf({ ground, principal }: Stratum): RockKind | null {
  if (!ground?.rock) return null;
  if (principal && sandstones.has(principal.id)) return 'sandstone';
  return kindsOfClass[ground.class] ?? 'other';
}

/** The layer at whose top rock begins; null where none is logged. */
export const firstRock = remembered(({ strata }: WellLog): Stratum | null => {
  let first: Stratum | null = null;
  for (const each of strata) {
    const top = each.ground?.rock ? topOf(each) : null;
    if (top !== null && (first === null || top < (topOf(first) ?? 0))) first = each;
  }
  return first;
});

/** Depths at which water comes into a string through its wall. */
const openings = ({ screens, perforated }: PipeString): readonly (number | null)[] =>
  [...screens.map(({ interval }) => interval), ...perforated].map(({ top }) => top?.value ?? null);

/** Where a string is seated: its foot, or its highest screen where it has one. */
function seatOf(string: PipeString): number | null {
  const open = openings(string);
  if (open.length === 0) return bottomOf(string);
  return open.includes(null) ? null : Math.min(...open.map(Number));
}

/** Rock in which the hole goes on below the foot of a string that has no screen. */
function rockBelow(string: PipeString, log: WellLog): Stratum | null {
  const [foot, rock] = [bottomOf(string), firstRock(log)];
  if (foot === null || rock === null || openings(string).length > 0) return null;
  const top = topOf(rock) ?? 0;
  return top >= foot && (log.totalDepth ?? 0) > top ? rock : null;
}

/** The rock that a string is seated in, or that the open hole below it stands in. */
export function rockOf(string: PipeString, log: WellLog): Stratum | null {
  const seat = seatOf(string);
  const at = seat === null ? null : stratumAt(log, seat);
  return at?.ground?.rock ? at : rockBelow(string, log);
}

/** The string that cases the well: of those of the casing that stay, the one that goes deepest. */
export const wellCasing = ({ strings }: WellLog): PipeString | null =>
  strings
    .filter((each) => each.kind === 'casing' && isPermanent(each) && bottomOf(each) !== null)
    .reduce<PipeString | null>(
      (deep, each) => (deep && (bottomOf(deep) ?? 0) >= (bottomOf(each) ?? 0) ? deep : each),
      null,
    );

const hasClay = ({ strata }: WellLog): boolean | null =>
  strata.length === 0 ? null : strata.some(({ principal }) => /(^|-)clay(-|$)/.test(principal?.id ?? ''));

const hasBentonite = ({ material, bentonite }: Fill): boolean =>
  material?.id === 'cement-bentonite' || (bentonite?.value ?? 0) > 0;

const known = <T>(values: readonly (T | null | undefined)[]): T[] =>
  values.filter((each): each is T => each !== null && each !== undefined);

/** What a log says of the well as a whole. */
export const factsOfWell = remembered((log: WellLog): Facts => {
  const rock = firstRock(log);
  return {
    rock: rock && rockKindOf(rock),
    topOfRock: rock && topOf(rock),
    uses: log.uses.flatMap((use) => ('id' in use ? [use.id] : [])),
    methods: log.hole.flatMap(({ methods }) => methods.map(({ id }) => id)),
    casing: null,
    joint: null,
    fill: null,
    placements: [],
    bentonite: null,
    centralizers: null,
    clay: hasClay(log),
    foot: log.totalDepth,
    diameter: null,
    bore: null,
  };
});

/** What a log says of a string. */
export function factsOfString(string: PipeString, log: WellLog): Facts {
  const rock = rockOf(string, log);
  return {
    ...factsOfWell(log),
    rock: rock && rockKindOf(rock),
    casing: string.material?.id ?? null,
    joint: string.joint?.id ?? null,
    placements: known(string.fills.filter(isSeal).map(({ placement }) => placement?.id)),
    centralizers: string.centralizers !== null,
    foot: bottomOf(string),
    diameter: string.size.outsideDiameter,
    bore: string.size.insideDiameter,
  };
}

/** What a log says of a fill around a string. */
export const factsOfFill = (fill: Fill, string: PipeString, log: WellLog): Facts => ({
  ...factsOfString(string, log),
  fill: fill.material?.id ?? null,
  placements: known([fill.placement?.id]),
  bentonite: hasBentonite(fill),
  foot: fill.interval?.bottom?.value ?? null,
});
