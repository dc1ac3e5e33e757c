import * as z from 'zod';

export const rockKinds = ['limestone', 'sandstone', 'crystalline', 'other'] as const;
/** `limestone` stands for all carbonate rock. */
export type RockKind = (typeof rockKinds)[number];

const terms = z.array(z.string()).min(1);

/**
 * When a case holds: all of what it names must be so. Lists are ids of the notation's terms, of which one must fit;
 * lengths are metres. What the log does not tell does not hold.
 */
export const When = z.strictObject({
  /** The rock that the string is seated in, or that an open hole below it stands in; `any` for rock of any kind. */
  rock: z.array(z.enum([...rockKinds, 'any'])).optional(),
  /** Top of rock shallower than this. */
  topOfRockAbove: z.number().optional(),
  use: terms.optional(),
  method: terms.optional(),
  /** Material of the string. */
  casing: terms.optional(),
  joint: terms.optional(),
  /** What was placed. */
  fill: terms.optional(),
  /** How it was placed. */
  placement: terms.optional(),
  /** True where the cement holds bentonite. */
  bentonite: z.boolean().optional(),
  /** True where centralizers are logged on the string. */
  centralizers: z.boolean().optional(),
  /** True where a layer of clay is logged. */
  clay: z.boolean().optional(),
  /** Foot of the string or of the fill deeper than this. */
  deeperThan: z.number().optional(),
  /** Outside diameter of the string greater than this. */
  widerThan: z.number().optional(),
  /** Inside diameter of the string greater than this. */
  boreWiderThan: z.number().optional(),
  /** Foot of the string or of the fill further than this below the top of rock. */
  intoRockOver: z.number().optional(),
});
export type When = z.infer<typeof When>;

/** What a log says of the thing that a limit is asked for; null where it does not tell. Lengths are metres. */
export interface Facts {
  readonly rock: RockKind | null;
  readonly topOfRock: number | null;
  readonly uses: readonly string[];
  readonly methods: readonly string[];
  readonly casing: string | null;
  readonly joint: string | null;
  readonly fill: string | null;
  /** Ways in which a fill was placed; of a string, those of all its seals. */
  readonly placements: readonly string[];
  readonly bentonite: boolean | null;
  readonly centralizers: boolean | null;
  readonly clay: boolean | null;
  readonly foot: number | null;
  readonly diameter: number | null;
  readonly bore: number | null;
}

/** The facts of a log that tells nothing. */
export const noFacts: Facts = {
  rock: null,
  topOfRock: null,
  uses: [],
  methods: [],
  casing: null,
  joint: null,
  fill: null,
  placements: [],
  bentonite: null,
  centralizers: null,
  clay: null,
  foot: null,
  diameter: null,
  bore: null,
};

const oneOf = (said: string | null, wanted: readonly string[]): boolean => said !== null && wanted.includes(said);
const anyOf = (said: readonly string[], wanted: readonly string[]): boolean =>
  said.some((each) => wanted.includes(each));

type Conditions = { readonly [K in keyof When]-?: (wanted: NonNullable<When[K]>, facts: Facts) => boolean };

const conditions: Conditions = {
  rock: (wanted, { rock }) => rock !== null && (wanted.includes('any') || wanted.includes(rock)),
  topOfRockAbove: (wanted, { topOfRock }) => topOfRock !== null && topOfRock < wanted,
  use: (wanted, { uses }) => anyOf(uses, wanted),
  method: (wanted, { methods }) => anyOf(methods, wanted),
  casing: (wanted, { casing }) => oneOf(casing, wanted),
  joint: (wanted, { joint }) => oneOf(joint, wanted),
  fill: (wanted, { fill }) => oneOf(fill, wanted),
  placement: (wanted, { placements }) => anyOf(placements, wanted),
  bentonite: (wanted, { bentonite }) => bentonite === wanted,
  centralizers: (wanted, { centralizers }) => centralizers === wanted,
  clay: (wanted, { clay }) => clay === wanted,
  deeperThan: (wanted, { foot }) => foot !== null && foot > wanted,
  widerThan: (wanted, { diameter }) => diameter !== null && diameter > wanted,
  boreWiderThan: (wanted, { bore }) => bore !== null && bore > wanted,
  intoRockOver: (wanted, { foot, topOfRock }) => foot !== null && topOfRock !== null && foot - topOfRock > wanted,
};

type Condition = (wanted: unknown, facts: Facts) => boolean;

const holdsOf = (name: keyof When, when: When, facts: Facts): boolean =>
  when[name] === undefined || (conditions[name] as Condition)(when[name], facts);

/** True where everything that `when` names is so. */
export const holds = (when: When, facts: Facts): boolean =>
  (Object.keys(when) as (keyof When)[]).every((name) => holdsOf(name, when, facts));
