import { general } from './general.ts';
import type { LimitInForce, LimitName, Limits, Pack } from './limits.ts';
import { stricter } from './stricter.ts';

/** Every pack that comes with the program; the first is the default. */
export const packs: readonly Pack[] = [general];

const byId = new Map(packs.map((pack) => [pack.id, pack]));

/** The pack of that id, in any letter case. */
export const packById = (id: string): Pack | undefined => byId.get(id.toLowerCase());

/** The limits of several packs as one: of each name the strictest, with the pack that it comes from. */
export function strictestOf(chosen: readonly Pack[]): Limits {
  const limits: Partial<Record<LimitName, LimitInForce>> = {};
  for (const pack of chosen) {
    for (const [key, limit] of Object.entries(pack.limits)) {
      const name = key as LimitName;
      const held = limits[name];
      if (!held || stricter(name, limit.value, held.value)) limits[name] = { ...limit, pack: pack.id };
    }
  }
  return limits;
}

/** The limits in force for the packs named; `general` where none is named or known. `unknown` lists the ids that no pack has. */
export function limitsFor(ids: readonly string[]): { limits: Limits; unknown: string[] } {
  const chosen = ids.map(packById).filter((pack) => pack !== undefined);
  const unknown = ids.filter((id) => packById(id) === undefined);
  return { limits: strictestOf(chosen.length > 0 ? chosen : [general]), unknown };
}
