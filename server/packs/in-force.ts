import type { Clause } from './clause.ts';
import { general } from './general.ts';
import { type LimitInForce, type LimitName, type Limits, limitNames, type Pack } from './limits.ts';
import { stricter } from './stricter.ts';
import { type Facts, holds, noFacts } from './when.ts';

/** The limits of one pack of that name: its cases that hold, else what it asks of every well. */
function ofPack(pack: Pack, name: LimitName, facts: Facts): LimitInForce[] {
  const cases = pack.cases.flatMap(({ limit, when, ...asked }, index) =>
    limit === name && holds(when, facts) ? [{ ...asked, pack: pack.id, key: `${pack.id}/cases/${index}` }] : [],
  );
  const always = pack.limits[name];
  if (cases.length > 0 || always === undefined) return cases;
  return [{ ...always, pack: pack.id, key: `${pack.id}/limits/${name}` }];
}

/** The strictest of the limits that are counted in one way, in the order in which the ways first come. */
function strictestByCounting(name: LimitName, limits: readonly LimitInForce[]): LimitInForce[] {
  const held = new Map<LimitInForce['counted'], LimitInForce>();
  for (const limit of limits) {
    const other = held.get(limit.counted);
    if (!other || stricter(name, limit.value, other.value)) held.set(limit.counted, limit);
  }
  return [...held.values()];
}

/** The limits of a name among packs; those of `general` where none of them says anything. */
function among(packs: readonly Pack[], name: LimitName, facts: Facts): LimitInForce[] {
  const asked = packs.flatMap((pack) => ofPack(pack, name, facts));
  return strictestByCounting(name, asked.length > 0 ? asked : ofPack(general, name, facts));
}

/**
 * The limits of several packs as one: of each name the strictest, with the pack that it comes from. Where the packs
 * are silent on a name, `general` speaks. Of limits counted in different ways it holds the first: `limitsGiven` has all.
 */
export function strictestOf(packs: readonly Pack[], facts: Facts = noFacts): Limits {
  const limits: Partial<Record<LimitName, LimitInForce>> = {};
  for (const name of limitNames) {
    const [first] = among(packs, name, facts);
    if (first) limits[name] = first;
  }
  return { ...limits, packs };
}

/**
 * The limits of a name for what the log says of one thing: of those counted in one way the strictest. Limits counted in
 * different ways are not ranked; each is given.
 */
export function limitsGiven(limits: Limits, name: LimitName, facts: Facts): readonly LimitInForce[] {
  if (limits.packs !== undefined) return among(limits.packs, name, facts);
  const only = limits[name];
  return only ? [only] : [];
}

/** The limit of a name that is counted in one way only. */
export const limitGiven = (limits: Limits, name: LimitName, facts: Facts): LimitInForce | null =>
  limitsGiven(limits, name, facts)[0] ?? null;

/** What a finding rests on, with the pack that says it. */
export interface ClauseInForce {
  readonly key: string;
  readonly pack: Pack;
  readonly clause: Clause;
}

const clausesOf = (pack: Pack): readonly (readonly [string, Clause | null])[] => [
  ...Object.entries(pack.limits).map(([name, limit]) => [`limits/${name}`, limit] as const),
  ...pack.cases.map((each, index) => [`cases/${index}`, each] as const),
  ...pack.record.map((each, index) => [`record/${index}`, each] as const),
  ...pack.due.map((each, index) => [`due/${index}`, each] as const),
  ...pack.distances.map((each, index) => [`distances/${index}`, each] as const),
  ...pack.numbers.map((each, index) => [`numbers/${index}`, each] as const),
  ['testReadings', pack.testReadings],
];

/** Everything of a pack that a rule may rest on, by its key (`maine-232/limits/wall-least`). */
export const keysOf = (pack: Pack): readonly string[] =>
  clausesOf(pack).flatMap(([path, clause]) => (clause === null ? [] : [`${pack.id}/${path}`]));

/** What stands at a key, or under the name of a limit; null where nothing does. */
export function clauseAt(limits: Limits, key: string): ClauseInForce | null {
  const name = limitNames.find((each) => each === key);
  const place = name === undefined ? key : (limits[name]?.key ?? '');
  for (const pack of [...(limits.packs ?? []), general])
    for (const [path, clause] of clausesOf(pack))
      if (clause !== null && place === `${pack.id}/${path}`) return { key: place, pack, clause };
  return null;
}
