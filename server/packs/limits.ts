import * as z from 'zod';
import { Clause, clause } from './clause.ts';
import { Due } from './due.ts';
import { type LimitName, limitNames } from './limit-names.ts';
import { Requirement } from './requirements.ts';
import { When } from './when.ts';

export { type LimitName, limitNames };

/** Ways to count how much wider a hole is than the casing in it; those counted in one way can be ranked. */
export const countings = ['over nominal', 'over outside', 'over coupling', 'thickness'] as const;
export type Counting = (typeof countings)[number];

const limit = {
  value: z.number(),
  /** SI unit of `value`. */
  unit: z.string(),
  ...clause,
  /**
   * How an oversize is counted: the hole's diameter less the nominal, the outside or (where one is logged) the
   * coupling's diameter, or half of the difference to the outside. Null for every other limit.
   */
  counted: z.enum(countings).nullable().default(null),
};

/** One limit of a pack: a figure in SI, with where it stands and whether that text was read. */
export const Limit = z.strictObject(limit);
export type Limit = z.infer<typeof Limit>;

/** A limit that counts only where the log says so; there it takes the place of the pack's limit of that name. */
export const Case = z.strictObject({ limit: z.enum(limitNames), when: When, ...limit });
export type Case = z.infer<typeof Case>;

/** Readings that a pumping test must have, in minutes since its start. */
export const TestReadings = z.strictObject({ minutes: z.array(z.number()), recovery: z.boolean(), ...clause });
export type TestReadings = z.infer<typeof TestReadings>;

/** Metres that a well must keep from sources of contamination, which are terms of the notation. */
export const Distance = z.strictObject({ from: z.array(z.string()).min(1), least: z.number().positive(), ...clause });
export type Distance = z.infer<typeof Distance>;

/** How a number of the header is written: `A` stands for a letter, `9` for a digit, all else for itself; blanks are free. */
export const NumberShape = z.strictObject({
  of: z.enum(['tag', 'permit', 'licence']),
  shape: z.string().min(1),
  ...clause,
});
export type NumberShape = z.infer<typeof NumberShape>;

export const Pack = z.strictObject({
  /** What a `rules` line calls it. */
  id: z.string().regex(/^[A-Za-z0-9][A-Za-z0-9.-]*$/, 'expected letters, digits, full stops and hyphens'),
  title: z.string(),
  /** The first words: a help for checking, not the law. */
  notice: z.string(),
  /** `replaced` where another text has taken its place: no well passes by it. */
  state: z.enum(['current', 'replaced']).default('current'),
  limits: z.partialRecord(z.enum(limitNames), Limit),
  cases: z.array(Case).default([]),
  /** What a record must hold. */
  record: z.array(Requirement).default([]),
  /** When something must be sent in. */
  due: z.array(Due).default([]),
  testReadings: TestReadings.nullable().default(null),
  distances: z.array(Distance).default([]),
  numbers: z.array(NumberShape).default([]),
  /** What the code asks and a log cannot say. */
  reminders: z.array(Clause).default([]),
});
export type Pack = z.infer<typeof Pack>;

/** A limit in force, with the pack that it comes from. */
export interface LimitInForce extends Limit {
  readonly pack: string;
  /** Where it stands, such as `wisconsin-nr812/cases/3`. */
  readonly key: string;
}

/** The limits in force for a log: of several packs, the strictest; with the packs themselves. */
export type Limits = Readonly<Partial<Record<LimitName, LimitInForce>>> & { readonly packs?: readonly Pack[] };
