import { california } from './california-b74.ts';
import { deadlinePacks } from './deadlines.ts';
import { general } from './general.ts';
import { strictestOf } from './in-force.ts';
import type { Limits, Pack } from './limits.ts';
import { maine } from './maine-232.ts';
import { michigan } from './michigan-r325.ts';
import { minnesota } from './minnesota-4725.ts';
import { montana } from './montana-36-21.ts';
import { ontario } from './ontario-903.ts';
import { oregon } from './oregon-690-210.ts';
import { quebec } from './quebec-q2-r6.ts';
import { texas } from './texas-16-76.ts';
import { washington } from './washington-173-160.ts';
import { type Facts, noFacts } from './when.ts';
import { wisconsin } from './wisconsin-nr812.ts';

export { type ClauseInForce, clauseAt, keysOf, limitGiven, limitsGiven, strictestOf } from './in-force.ts';

/** Every pack that comes with the program; the first is the default. */
export const packs: readonly Pack[] = [
  general,
  california,
  maine,
  michigan,
  minnesota,
  montana,
  ontario,
  oregon,
  quebec,
  texas,
  washington,
  wisconsin,
  ...deadlinePacks,
];

const byId = new Map(packs.map((pack) => [pack.id, pack]));

/** The pack of that id, in any letter case. */
export const packById = (id: string): Pack | undefined => byId.get(id.toLowerCase());

/** The pack of that id, in any letter case; one of the workspace takes the place of the program's own. */
export const packNamed = (id: string, own: readonly Pack[]): Pack | undefined =>
  own.find((pack) => pack.id.toLowerCase() === id.toLowerCase()) ?? packById(id);

/**
 * The limits in force for the packs named; `general` where none is named or known. `unknown` lists the ids that no pack
 * has. `facts` are what the log says, and `own` are packs beside those that come with the program.
 */
export function limitsFor(
  ids: readonly string[],
  facts: Facts = noFacts,
  own: readonly Pack[] = [],
): { limits: Limits; unknown: string[] } {
  const chosen = ids.map((id) => packNamed(id, own)).filter((pack) => pack !== undefined);
  const unknown = ids.filter((id) => packNamed(id, own) === undefined);
  return { limits: strictestOf(chosen.length > 0 ? [...new Set(chosen)] : [general], facts), unknown };
}
