import * as z from 'zod';
import { Span, WellLog } from '../model/log.ts';

/** One number put into a formula. `line` is where it stands (from 0); null for constants and pack limits. */
export const FigureInput = z.object({
  name: z.string(),
  value: z.number().nullable(),
  unit: z.string(),
  /** As shown, with its unit. */
  text: z.string(),
  line: z.number().nullable(),
});
export type FigureInput = z.infer<typeof FigureInput>;

/** One computed figure. */
export const Figure = z.object({
  /** Stable, such as `casing.1.grout.1.annulus-volume`. */
  id: z.string(),
  /** In words, such as `annulus volume`. */
  title: z.string(),
  /** SI; null where a fact it needs is missing. */
  value: z.number().nullable(),
  /** SI unit: m, m3, kg, kg/m, s, Pa, m/s, m3/s, kg/m3, 1, m2/s, s/m2, s2/m5, deg. */
  unit: z.string(),
  /** As shown, in the file's units, with the digits that the notes justify. */
  text: z.string(),
  /** As shown in the other system of units; empty where there is none. */
  otherText: z.string(),
  formula: z.string(),
  source: z.string(),
  inputs: z.array(FigureInput),
  /** Lines that it comes from, from 0; the first is where it is shown. */
  lines: z.array(z.number()),
  span: Span.nullable(),
  /**
   * Facts that it waits for, in words, such as `the wall of casing 1`; `other figures (why)` where the formula refuses
   * those that there are. Empty where the figure is complete.
   */
  waitsFor: z.array(z.string()),
  /** True where it rests on a `~` or doubtful value. */
  doubtful: z.boolean(),
  caution: z.string().nullable(),
});
export type Figure = z.infer<typeof Figure>;

/** One piece of an annulus between two changes of diameter; depths in m, diameters in m, volume in m3. */
export const AnnulusPiece = z.object({
  top: z.number(),
  bottom: z.number(),
  outer: z.number(),
  inner: z.number(),
  volume: z.number(),
  /** What bounds it outside: `hole` or the number of the string around it. */
  bounds: z.string(),
});
export type AnnulusPiece = z.infer<typeof AnnulusPiece>;

/** What is known of one fill's place: its annulus, required and placed volumes in m3. */
export const FillRecord = z.object({
  string: z.number(),
  kind: z.string(),
  number: z.number(),
  line: z.number(),
  top: z.number().nullable(),
  bottom: z.number().nullable(),
  pieces: z.array(AnnulusPiece),
  /** Stretches of the fill with no hole diameter or pipe size to reckon with. */
  unknown: z.array(z.object({ top: z.number(), bottom: z.number(), why: z.string() })),
  annulus: z.number().nullable(),
  required: z.number().nullable(),
  placed: z.number().nullable(),
  /** Placed volume less the plug inside and what came back. */
  net: z.number().nullable(),
  /** Volume that the bags make. */
  fromBags: z.number().nullable(),
  waterCement: z.number().nullable(),
  /** Allowance used, as a share (0.15). */
  allowance: z.number(),
});
export type FillRecord = z.infer<typeof FillRecord>;

/** Something that a pack wants sent in. Dates are YYYY-MM-DD. How many days are left hangs on the day of reading. */
export const DueDate = z.object({
  what: z.enum(['record', 'copy for the owner', 'plugging report']),
  /** Id of the pack, and where in it this stands, such as `montana-36-21/due/0`. */
  pack: z.string(),
  key: z.string(),
  days: z.number(),
  event: z.enum(['finished', 'abandoned']),
  /** True where the text that was seen does not name the event that starts the clock. */
  assumed: z.boolean(),
  from: z.string(),
  due: z.string(),
  /** The day on which the record was sent in; null while it was not. */
  sent: z.string().nullable(),
  /** As the code words it, where it stands, and how far that is known. */
  text: z.string(),
  section: z.string().nullable(),
  source: z.string(),
  known: z.enum(['read', 'remembered', 'common practice']),
  /** Where the event's date stands. */
  span: Span,
});
export type DueDate = z.infer<typeof DueDate>;

/** A line or curve fitted to readings, as points to draw it by: times of its readings in s, drawdowns in m. */
export const FittedCurve = z.object({
  method: z.enum(['cooper-jacob', 'theis', 'recovery']),
  /** What the ids of its figures begin with, such as `test.1.cooper-jacob`. */
  figures: z.string(),
  /** The first and the last time that it was fitted to. */
  from: z.number(),
  to: z.number(),
  points: z.array(z.object({ time: z.number(), drawdown: z.number() })),
});
export type FittedCurve = z.infer<typeof FittedCurve>;

/** What was read in one well during one test: times in s since its phase began, drawdowns in m. */
export const TestSeries = z.object({
  test: z.number(),
  /** Name of the observation well; null for the pumped well. */
  well: z.string().nullable(),
  line: z.number(),
  /** When the pump stopped on the pumping clock, and the time pumped that its recovery is reckoned with, s. */
  stop: z.number().nullable(),
  pumped: z.number().nullable(),
  readings: z.array(
    z.object({ line: z.number(), phase: z.enum(['pumping', 'recovery']), time: z.number(), drawdown: z.number() }),
  ),
  curves: z.array(FittedCurve),
});
export type TestSeries = z.infer<typeof TestSeries>;

/** The computed record: the log, and every figure that can be had from it. */
export const Record = z.object({
  log: WellLog,
  figures: z.array(Figure),
  fills: z.array(FillRecord),
  /** Gaps between centralizers of each string, by its number; metres below ground. */
  centralizerGaps: z.array(
    z.object({ string: z.number(), gaps: z.array(z.object({ top: z.number(), bottom: z.number() })) }),
  ),
  /** Top of the innermost casing in metres above ground as it stands at the end; null where unknown. */
  topOfCasing: z.number().nullable(),
  /** Deepest depth that anything in the log speaks of, in metres. */
  depth: z.number().nullable(),
  /** What must be sent in, in the order of the packs. */
  due: z.array(DueDate),
  /** What was read in each test. */
  tests: z.array(TestSeries),
});
export type Record = z.infer<typeof Record>;
