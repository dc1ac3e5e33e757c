import * as z from 'zod';

/** One limit of a pack: a figure in SI, with where it stands and whether that text was read. */
export const Limit = z.object({
  value: z.number(),
  /** SI unit of `value`. */
  unit: z.string(),
  /** As the code words it, such as `12 in`. */
  text: z.string(),
  /** Section of the code, or `common practice, no source`. */
  source: z.string(),
  known: z.enum(['read', 'remembered', 'common practice']),
  /** The text's date, where it has one. */
  date: z.string().nullable(),
});
export type Limit = z.infer<typeof Limit>;

export const limitNames = [
  'grout-allowance',
  'grout-surplus',
  'bags-volume-tolerance',
  'water-cement-most',
  'oversize-least',
  'set-time-cement',
  'stickup-least',
  'centralizer-gap-most',
  'centralizer-shoe-most',
  'centralizer-string-least',
  'uphole-velocity-least',
  'uphole-velocity-most',
  'air-rating-loss',
  'joints-difference-most',
  'shoe-foot-difference-most',
  'foot-difference-most',
  'rate-break-ratio-least',
  'rate-break-rods-least',
  'test-wrong-way-level-least',
  'test-wrong-way-share-least',
  'static-first-reading-most',
  'drawdown-volume-ratio-most',
  'grout-settled-most',
  'pack-above-screen-least',
  'pack-above-screen-most',
  'entrance-velocity-most',
] as const;
export type LimitName = (typeof limitNames)[number];

export const Pack = z.object({
  id: z.string(),
  title: z.string(),
  /** The first words: a help for checking, not the law. */
  notice: z.string(),
  limits: z.partialRecord(z.enum(limitNames), Limit),
});
export type Pack = z.infer<typeof Pack>;

/** A limit in force, with the pack that it comes from. */
export interface LimitInForce extends Limit {
  readonly pack: string;
}

/** The limits in force for a log: of several packs, the strictest. */
export type Limits = Readonly<Partial<Record<LimitName, LimitInForce>>>;
