import * as z from 'zod';

/** Columns of one line, all counted from 0. */
export const Span = z.object({ line: z.number(), start: z.number(), end: z.number() });
export type Span = z.infer<typeof Span>;

/** How sure the notes are of a value. */
const doubts = {
  /** Written with `~`. */
  approximate: z.boolean(),
  /** Written with a glued `?`. */
  doubtful: z.boolean(),
};

/**
 * A measured value: as written, and in SI. `value` is null where the notes say `?`, or where its unit cannot be told
 * (`gal` in a file that does not say which).
 */
export const Measure = z.object({
  value: z.number().nullable(),
  /** Upper end in SI of a value given as a range of one kind (`20-25 L/min`). */
  high: z.number().nullable(),
  /** Number in the unit `unit`; null for `?`. */
  number: z.number().nullable(),
  /** The unit written, or the file's own where none was written (canonical spelling). */
  unit: z.string(),
  /** True where the unit stands in the text. */
  unitWritten: z.boolean(),
  /** Digits after the point, as written. */
  decimals: z.number(),
  bound: z.enum(['<', '>']).nullable(),
  /** The source text of the value. */
  written: z.string(),
  ...doubts,
  span: Span,
});
export type Measure = z.infer<typeof Measure>;

/**
 * A depth or level: SI metres below ground in `value` (above ground is negative), whatever the datum; `datum` tells
 * what it was written against. `toc` levels are null until the top of the casing is known.
 */
export const Depth = Measure.extend({
  datum: z.enum(['bgs', 'toc']),
  td: z.boolean(),
});
export type Depth = z.infer<typeof Depth>;

export const Interval = z.object({
  top: Depth.nullable(),
  bottom: Depth.nullable(),
  /** True where the line began with the dash and the top is the base of the line above. */
  continued: z.boolean(),
  span: Span,
});
export type Interval = z.infer<typeof Interval>;

export const Word = z.object({
  list: z.string(),
  id: z.string(),
  name: z.string(),
  written: z.string(),
  span: Span,
});
export type Word = z.infer<typeof Word>;

export const TextField = z.object({ text: z.string(), span: Span });
export type TextField = z.infer<typeof TextField>;

/** `date` as YYYY-MM-DD, `time` as HH:MM or HH:MM:SS; `valid` is false for a date that no calendar has. */
export const Moment = z.object({
  date: z.string().nullable(),
  time: z.string().nullable(),
  valid: z.boolean(),
  ...doubts,
  span: Span,
});
export type Moment = z.infer<typeof Moment>;

export const Period = z.object({ from: Moment.nullable(), to: Moment.nullable(), span: Span });
export type Period = z.infer<typeof Period>;

/** What every line of the record has: its line number, the stretch it covers, and its remark. */
const entry = { line: z.number(), span: Span, remark: TextField.nullable() };

export const HoleEntry = z.object({
  ...entry,
  interval: Interval,
  diameter: Measure.nullable(),
  methods: z.array(Word),
  reamedFrom: Measure.nullable(),
  date: Moment.nullable(),
});
export type HoleEntry = z.infer<typeof HoleEntry>;

export const MaterialPart = z.object({
  id: z.string(),
  name: z.string(),
  /** `adjective`, `and`, `with`, `some`, `trace` …; null for the principal material. */
  amount: z.string().nullable(),
});
export type MaterialPart = z.infer<typeof MaterialPart>;

export const Ground = z.object({
  class: z.string(),
  rock: z.boolean(),
  fgdc: z.number().nullable(),
});
export type Ground = z.infer<typeof Ground>;

export const Stratum = z.object({
  ...entry,
  interval: Interval,
  /** The canonical long form of the description. */
  description: z.string(),
  descriptionSpan: Span.nullable(),
  principal: MaterialPart.nullable(),
  ground: Ground.nullable(),
  materials: z.array(MaterialPart),
  colours: z.array(z.string()),
  qualities: z.array(Word),
  symbols: z.array(z.string()),
  names: z.array(z.string()),
  unknownWords: z.array(TextField),
  grain: Measure.nullable(),
  at: z.array(Depth),
});
export type Stratum = z.infer<typeof Stratum>;

export const DrilledInterval = z.object({
  ...entry,
  interval: Interval,
  time: Measure.nullable(),
  flush: z.array(Word),
  flushRate: Measure.nullable(),
  pressure: Measure.nullable(),
  bit: Measure.nullable(),
  methods: z.array(Word),
  when: Period.nullable(),
});
export type DrilledInterval = z.infer<typeof DrilledInterval>;

export const Lost = z.object({
  ...entry,
  interval: Interval.nullable(),
  depth: Depth.nullable(),
  extent: Word.nullable(),
});
export type Lost = z.infer<typeof Lost>;
export const Samples = z.object({ ...entry, interval: Interval, every: Depth.nullable() });
export type Samples = z.infer<typeof Samples>;

/** One head of `drilling` with the lines under it. `number` counts its lines through the whole file, from 1. */
export const Drilling = z.object({
  ...entry,
  flush: z.array(Word),
  airRate: Measure.nullable(),
  pressure: Measure.nullable(),
  pipe: Measure.nullable(),
  bit: Measure.nullable(),
  methods: z.array(Word),
  intervals: z.array(DrilledInterval),
  lost: z.array(Lost),
  samples: z.array(Samples),
});
export type Drilling = z.infer<typeof Drilling>;

/** A size of pipe: what was written, and in `outsideDiameter`, `wallThickness` and `insideDiameter` what that comes to. */
export const PipeSize = z.object({
  outside: Measure.nullable(),
  wall: Measure.nullable(),
  /** Written inside diameter. */
  inside: Measure.nullable(),
  coupling: Measure.nullable(),
  nominal: Measure.nullable(),
  /** Schedule and dimension ratio as written. */
  schedule: Measure.nullable(),
  sdr: Measure.nullable(),
  /** Outside diameter in metres: written, or tabled for a nominal size; null where neither is known. */
  outsideDiameter: z.number().nullable(),
  /** Wall in metres: written, tabled for the schedule, or from the SDR. */
  wallThickness: z.number().nullable(),
  /** Inside diameter in metres: written, or outside less two walls. */
  insideDiameter: z.number().nullable(),
  /** How the outside diameter is known: `written`, `tabled for 6 in nominal`. */
  basis: z.string(),
  span: Span.nullable(),
});
export type PipeSize = z.infer<typeof PipeSize>;

export const Bags = z.object({ count: Measure.nullable(), massEach: Measure.nullable(), span: Span });
export type Bags = z.infer<typeof Bags>;

/** Grout, seal, pack or plug: what was placed, where and how. Also the lines of an abandonment. */
export const Fill = z.object({
  ...entry,
  kind: z.enum(['grout', 'seal', 'pack', 'plug', 'abandonment']),
  /** Place in the string's list of its kind, from 1. */
  number: z.number(),
  interval: Interval.nullable(),
  depth: Depth.nullable(),
  material: Word.nullable(),
  /** `cement`, `bentonite-slurry`, `bentonite-dry`, `granular`, `native`, `concrete`; null where unknown. */
  fillClass: z.string().nullable(),
  volume: Measure.nullable(),
  bags: Bags.nullable(),
  /** Mass of all that was placed, where it was weighed and not counted in bags. */
  mass: Measure.nullable(),
  waterCement: Measure.nullable(),
  water: Measure.nullable(),
  density: Measure.nullable(),
  solids: Measure.nullable(),
  bentonite: Measure.nullable(),
  /** Sodium montmorillonite in the bentonite, a share. */
  montmorillonite: Measure.nullable(),
  placement: Word.nullable(),
  /** Foot of the tremie pipe when placing began. */
  pipeFoot: Depth.nullable(),
  pressure: Measure.nullable(),
  placed: Period.nullable(),
  plugInside: Depth.nullable(),
  returned: Measure.nullable(),
  topUp: Measure.nullable(),
  settled: Depth.nullable(),
  grading: z.object({ coarse: z.number(), fine: z.number() }).nullable(),
  grain: Measure.nullable(),
});
export type Fill = z.infer<typeof Fill>;

export const Screen = z.object({
  ...entry,
  number: z.number(),
  interval: Interval,
  size: PipeSize,
  material: Word.nullable(),
  /** Slot width in metres; from a hash number it is thousandths of an inch. */
  slot: Measure.nullable(),
  openArea: Measure.nullable(),
  kinds: z.array(Word),
});
export type Screen = z.infer<typeof Screen>;

export const AtDepth = z.object({ ...entry, depth: Depth.nullable(), kinds: z.array(Word) });
export type AtDepth = z.infer<typeof AtDepth>;

export const Joint = z.object({ count: z.number(), length: Depth });
export type Joint = z.infer<typeof Joint>;

export const Cut = z.object({ ...entry, from: Depth.nullable(), to: Depth.nullable(), date: Moment.nullable() });
export type Cut = z.infer<typeof Cut>;

/** One string: casing, liner or a telescoped screen. `number` is its place in the file, from 1. */
export const PipeString = z.object({
  ...entry,
  kind: z.enum(['casing', 'liner', 'screen']),
  number: z.number(),
  interval: Interval,
  size: PipeSize,
  material: Word.nullable(),
  joint: Word.nullable(),
  states: z.array(Word),
  driven: z.boolean(),
  temporary: z.boolean(),
  pulled: Moment.nullable(),
  set: Moment.nullable(),
  grade: TextField.nullable(),
  perforated: z.array(Interval),
  shoe: AtDepth.nullable(),
  centralizers: z
    .object({
      ...entry,
      positions: z.array(Depth),
      every: Depth.nullable(),
      /** How many stand together at each depth. */
      inSet: Measure.nullable(),
    })
    .nullable(),
  joints: z.object({ ...entry, lengths: z.array(Joint) }).nullable(),
  screens: z.array(Screen),
  fills: z.array(Fill),
  packers: z.array(AtDepth),
  pitless: z.array(AtDepth),
  cuts: z.array(Cut),
});
export type PipeString = z.infer<typeof PipeString>;

export const WaterFound = z.object({
  ...entry,
  depth: Depth.nullable(),
  interval: Interval.nullable(),
  kinds: z.array(Word),
  rate: Measure.nullable(),
  rateMeans: z.enum(['adds', 'total']),
  date: Moment.nullable(),
});
export type WaterFound = z.infer<typeof WaterFound>;

export const WaterLevel = z.object({ ...entry, level: Depth.nullable(), date: Moment.nullable() });
export type WaterLevel = z.infer<typeof WaterLevel>;

export const Quality = z.object({
  ...entry,
  depth: Depth.nullable(),
  parameters: z.array(z.object({ parameter: Word, value: Measure })),
  kinds: z.array(Word),
  date: Moment.nullable(),
});
export type Quality = z.infer<typeof Quality>;

export const Flowing = z.object({
  ...entry,
  rate: Measure.nullable(),
  shutIn: Measure.nullable(),
  control: z.array(Word),
  date: Moment.nullable(),
});
export type Flowing = z.infer<typeof Flowing>;

export const Water = z.object({
  found: z.array(WaterFound),
  levels: z.array(WaterLevel),
  gas: z.array(AtDepth),
  quality: z.array(Quality),
  flowing: z.array(Flowing),
});
export type Water = z.infer<typeof Water>;

/** A reading of a test. `elapsed` in seconds on the clock of its phase; a clock time is turned into it where the start is known. */
export const Reading = z.object({
  ...entry,
  elapsed: Measure.nullable(),
  clock: Moment.nullable(),
  level: Depth.nullable(),
  drawdown: Depth.nullable(),
  rate: Measure.nullable(),
});
export type Reading = z.infer<typeof Reading>;

/** A run of readings at one rate, or a recovery. */
export const Phase = z.object({
  kind: z.enum(['pumping', 'recovery']),
  rate: Measure.nullable(),
  /** When the pump stopped on the pumping clock, in seconds; recoveries only. */
  stop: z.number().nullable(),
  readings: z.array(Reading),
  span: Span,
});
export type Phase = z.infer<typeof Phase>;

export const ObservedWell = z.object({
  ...entry,
  name: TextField.nullable(),
  distance: Depth.nullable(),
  drawdowns: z.boolean(),
  phases: z.array(Phase),
});
export type ObservedWell = z.infer<typeof ObservedWell>;

export const Test = z.object({
  ...entry,
  number: z.number(),
  method: Word.nullable(),
  rate: Measure.nullable(),
  intake: Depth.nullable(),
  stem: Depth.nullable(),
  duration: Measure.nullable(),
  start: Period.nullable(),
  toc: z.boolean(),
  phases: z.array(Phase),
  observed: z.array(ObservedWell),
});
export type Test = z.infer<typeof Test>;

export const Disinfection = z.object({
  ...entry,
  strength: Measure.nullable(),
  contact: Measure.nullable(),
  date: Moment.nullable(),
  product: Word.nullable(),
  productStrength: Measure.nullable(),
  amount: Measure.nullable(),
});
export type Disinfection = z.infer<typeof Disinfection>;

export const Development = z.object({
  ...entry,
  methods: z.array(Word),
  time: Measure.nullable(),
  rate: Measure.nullable(),
  sand: Measure.nullable(),
  results: z.array(Word),
  date: Moment.nullable(),
});
export type Development = z.infer<typeof Development>;

export const Hydrofracture = z.object({
  ...entry,
  interval: Interval,
  pressure: Measure.nullable(),
  before: Measure.nullable(),
  after: Measure.nullable(),
  date: Moment.nullable(),
});
export type Hydrofracture = z.infer<typeof Hydrofracture>;

export const Pump = z.object({
  ...entry,
  kinds: z.array(Word),
  power: Measure.nullable(),
  set: Depth.nullable(),
  rate: Measure.nullable(),
  date: Moment.nullable(),
});
export type Pump = z.infer<typeof Pump>;

export const Abandonment = z.object({
  ...entry,
  number: z.number(),
  date: Moment.nullable(),
  reason: TextField.nullable(),
  fills: z.array(Fill),
});
export type Abandonment = z.infer<typeof Abandonment>;

/** As written: degrees, or UTM zone and metres. */
export const Place = z.object({
  ...entry,
  latitude: z.number().nullable(),
  longitude: z.number().nullable(),
  utm: z
    .object({ zone: z.number(), hemisphere: z.enum(['N', 'S']), easting: z.number(), northing: z.number() })
    .nullable(),
  datum: Word.nullable(),
  accuracy: Measure.nullable(),
  doubtful: z.boolean(),
});
export type Place = z.infer<typeof Place>;

export const GroundLevel = z.object({
  ...entry,
  elevation: Measure.nullable(),
  datum: Word.nullable(),
  accuracy: Measure.nullable(),
});
export type GroundLevel = z.infer<typeof GroundLevel>;

export const Shift = z.object({
  ...entry,
  hours: Period.nullable(),
  drilled: Interval.nullable(),
  crew: TextField.nullable(),
  weather: z.array(Word),
  temperature: Measure.nullable(),
});
export type Shift = z.infer<typeof Shift>;

export const Existing = z.object({
  ...entry,
  interval: Interval,
  diameter: Measure.nullable(),
  year: z.number().nullable(),
  record: TextField.nullable(),
});
export type Existing = z.infer<typeof Existing>;

export const FileUnits = z.object({
  depth: z.string(),
  diameter: z.string(),
  gallon: z.enum(['gal-us', 'gal-imp']).nullable(),
  /** False where the file has no `units` line and the default counts. */
  written: z.boolean(),
});
export type FileUnits = z.infer<typeof FileUnits>;

/** Header texts, by keyword: well, owner, site, location, contractor, technician, licence, tag, permit. */
export const Header = z.record(z.string(), TextField);
export type Header = z.infer<typeof Header>;

/** One well's log, typed. Whatever the notes lack is null or an empty list. */
export const WellLog = z.object({
  units: FileUnits,
  packs: z.array(TextField),
  header: Header,
  uses: z.array(Word.or(TextField)),
  status: Word.or(TextField).nullable(),
  place: Place.nullable(),
  ground: GroundLevel.nullable(),
  began: Moment.nullable(),
  finished: Moment.nullable(),
  reported: Moment.nullable(),
  distances: z.array(z.object({ ...entry, source: Word, distance: Depth })),
  shifts: z.array(Shift),
  existing: z.array(Existing),
  photos: z.array(z.object({ ...entry, depth: Depth.nullable(), file: TextField.nullable() })),
  notes: z.array(TextField),
  hole: z.array(HoleEntry),
  strata: z.array(Stratum),
  drilling: z.array(Drilling),
  strings: z.array(PipeString),
  water: Water,
  tests: z.array(Test),
  disinfections: z.array(Disinfection),
  developments: z.array(Development),
  hydrofractures: z.array(Hydrofracture),
  pumps: z.array(Pump),
  caps: z.array(AtDepth),
  abandonments: z.array(Abandonment),
  /** Every `?` and doubtful value, in the order of the file. */
  questions: z.array(z.object({ span: Span, what: z.string(), kind: z.enum(['unknown', 'doubtful', 'approximate']) })),
  /** Bottom of the hole in metres: the deepest base logged under `hole`; null where there is none. */
  totalDepth: z.number().nullable(),
});
export type WellLog = z.infer<typeof WellLog>;
