import type { ListId } from './terms/term.ts';
import type { Dimension } from './units.ts';

/** What a slot accepts. A slot may accept several; they are tried in this order. */
export type Accepts =
  | { readonly kind: 'quantity'; readonly dimension: Dimension }
  | { readonly kind: 'number' }
  | { readonly kind: 'year' }
  | { readonly kind: 'elapsed' }
  | { readonly kind: 'size' }
  | { readonly kind: 'bags' }
  | { readonly kind: 'list' }
  | { readonly kind: 'interval' }
  | { readonly kind: 'moment' }
  | { readonly kind: 'period' }
  | { readonly kind: 'grading' }
  | { readonly kind: 'hash-number' }
  | { readonly kind: 'terms'; readonly lists: readonly ListId[] }
  | { readonly kind: 'text' }
  | { readonly kind: 'flag' }
  | { readonly kind: 'description' };

/** The place whose unit a bare number takes. */
export type BareUnit = 'depth' | 'diameter' | 'none' | null;

/** One item that a row takes. */
export interface Slot {
  readonly slot: string;
  readonly accepts: readonly Accepts[];
  /** Spellings of the label that comes right before the value. */
  readonly labels: readonly string[];
  /** A list whose terms are the labels (`septic 31`, `iron 0.4 mg/L`). */
  readonly labelList: ListId | null;
  readonly labelled: 'never' | 'may' | 'must';
  /** True where the label may also follow its value (`20 % solids`). */
  readonly labelAfter: boolean;
  readonly many: boolean;
  /** How a bare number is read; null where a unit is needed. */
  readonly bare: BareUnit;
  /** A lone `?` fills the first of these that is missing. */
  readonly expected: boolean;
  readonly doc: string;
}

/** How the rest of a line is read. */
export type Body = 'items' | 'text' | 'words' | 'place';

/** One keyword, or the depth lines of one section. */
export interface Row {
  readonly id: string;
  /** Spellings of the keyword, the canonical one first; none for the depth lines of a section. */
  readonly keywords: readonly string[];
  readonly where: 'file' | 'section' | 'under' | 'line' | 'depth-line';
  /** For `under` and `depth-line`: the sections that have it. */
  readonly of: readonly string[];
  readonly depths: 'none' | 'interval' | 'depth' | 'either' | 'optional';
  readonly body: Body;
  /** For sections: the row that reads its depth lines. */
  readonly lines: string | null;
  /** True where the keyword opens its section only before a depth or nothing. */
  readonly opensBeforeDepth: boolean;
  readonly signed: boolean;
  readonly slots: readonly Slot[];
  readonly doc: string;
  readonly example: string;
}

type SlotOptions = Partial<Omit<Slot, 'slot' | 'accepts' | 'doc'>>;

const slot = (name: string, accepts: Accepts | readonly Accepts[], doc: string, options: SlotOptions = {}): Slot => ({
  slot: name,
  accepts: Array.isArray(accepts) ? accepts : [accepts as Accepts],
  labels: [],
  labelList: null,
  labelled: options.labels || options.labelList ? 'must' : 'never',
  labelAfter: false,
  many: false,
  bare: null,
  expected: false,
  doc,
  ...options,
});

const quantity = (dimension: Dimension): Accepts => ({ kind: 'quantity', dimension });
const terms = (...lists: ListId[]): Accepts => ({ kind: 'terms', lists });
const of = <K extends Exclude<Accepts['kind'], 'quantity' | 'terms'>>(kind: K): Accepts => ({ kind }) as Accepts;

const diameter = (name: string, doc: string, options: SlotOptions = {}) =>
  slot(name, quantity('length'), doc, { bare: 'diameter', ...options });
/** A diameter of pipe, with its wall behind it or without. */
const pipeSize = (name: string, doc: string, labels: readonly string[]) =>
  slot(name, [quantity('length'), of('size')], doc, { bare: 'diameter', labels });
const depth = (name: string, doc: string, options: SlotOptions = {}) =>
  slot(name, quantity('length'), doc, { bare: 'depth', ...options });
const word = (name: string, lists: ListId[], doc: string, options: SlotOptions = {}) =>
  slot(name, terms(...lists), doc, options);
const date = (name: string, doc: string, options: SlotOptions = {}) => slot(name, of('moment'), doc, options);

const method = word('placement', ['placement'], 'how it was placed');
const placed = slot('placed', [of('period'), of('moment')], 'when it was placed: the end, or from - to');
const volume = slot('volume', quantity('volume'), 'volume placed', { expected: true });
const bags = slot('bags', of('bags'), 'bags used, or bags x mass of one');
const bagMass = slot('bag-mass', quantity('mass'), 'mass of one bag');
const mass = slot(
  'mass',
  quantity('mass'),
  'mass of all that was placed; where no bags are counted, the mass that is written',
  {
    labels: ['total', 'in all'],
  },
);

const grain = diameter('grain', 'size of the grains or chips', {
  labels: ['grain', 'size', 'd50', 'chip size', 'grain size'],
});

const fillSlots = (): Slot[] => [
  word('material', ['fill-material'], 'what was placed', { expected: true }),
  volume,
  bags,
  bagMass,
  mass,
  slot('water-cement', of('number'), 'water to cement by mass', { labels: ['w/c'], bare: 'none' }),
  slot('water', quantity('volume'), 'mixing water', { labels: ['water', 'mix water'] }),
  slot('density', quantity('density'), 'density of the mix'),
  slot('solids', quantity('share'), 'solids by mass', { labels: ['solids'], labelAfter: true }),
  slot('bentonite', quantity('share'), 'bentonite by mass of the cement', {
    labels: ['bentonite', 'gel'],
    labelAfter: true,
  }),
  slot('montmorillonite', quantity('share'), 'sodium montmorillonite in the bentonite, by mass', {
    labels: ['montmorillonite', 'sodium montmorillonite'],
    labelAfter: true,
  }),
  grain,
  method,
  depth('pipe-foot', 'foot of the tremie pipe when placing began', { labels: ['pipe at', 'pipe to', 'pipe foot'] }),
  slot('pressure', quantity('pressure'), 'pumping pressure'),
  placed,
  depth('plug-inside', 'height of the plug left inside the string', { labels: ['plug inside', 'plug left inside'] }),
  slot('returned', quantity('volume'), 'grout that came back at surface', { labels: ['returned', 'returns'] }),
  slot('top-up', quantity('volume'), 'grout added after it settled', { labels: ['top-up', 'topped up'] }),
  depth('settled', 'how far it settled', { labels: ['settled'] }),
];

const stringSlots = (): Slot[] => [
  word('material', ['casing-material'], 'material of the string', { expected: true }),
  slot('size', of('size'), 'outside diameter x wall, or a nominal size', { bare: 'diameter', expected: true }),
  slot('schedule', of('number'), 'schedule of the pipe', { labels: ['sch', 'schedule'], bare: 'none' }),
  slot('sdr', of('number'), 'standard dimension ratio', { labels: ['sdr', 'dr'], bare: 'none' }),
  pipeSize('nominal', 'nominal size, or nominal size x wall', ['nominal', 'nom']),
  pipeSize('outside', 'outside diameter, or outside diameter x wall', ['od', 'outside']),
  diameter('inside', 'inside diameter', { labels: ['id', 'inside'] }),
  diameter('coupling', 'outside diameter of the couplings', { labels: ['coupling', 'couplings'] }),
  slot('grade', of('text'), 'grade or standard', { labels: ['grade'] }),
  word('joint', ['joint-type'], 'how the joints are made'),
  word('state', ['casing-state'], 'driven, temporary, telescoped and the like', { many: true }),
  slot('pulled', [of('moment'), of('flag')], 'when it was pulled', { labels: ['pulled'] }),
  slot('perforated', of('interval'), 'where it is perforated', {
    labels: ['perforated', 'slotted', 'perforations', 'perf', 'perfs'],
    many: true,
  }),
  date('set', 'when it was set', { labels: ['set'], labelled: 'may' }),
];

const row = (
  id: string,
  where: Row['where'],
  doc: string,
  example: string,
  options: Partial<Omit<Row, 'id' | 'where' | 'doc' | 'example'>> = {},
): Row => ({
  id,
  where,
  doc,
  example,
  keywords: where === 'depth-line' ? [] : [id],
  of: [],
  depths: 'none',
  body: 'items',
  lines: null,
  opensBeforeDepth: false,
  signed: false,
  slots: [],
  ...options,
});

const textRow = (id: string, doc: string, example: string, keywords: readonly string[] = [id]): Row =>
  row(id, 'file', doc, example, { body: 'text', keywords });

const fileRows: readonly Row[] = [
  textRow('well', "the well's own id", 'well KH-04'),
  row('units', 'file', 'units of bare numbers: depth, diameter, and which gallon', 'units m mm', { body: 'words' }),
  row('rules', 'file', 'the rule pack or packs to check against', 'rules general', { body: 'words' }),
  row('place', 'file', 'latitude and longitude, or utm zone, easting and northing', 'place 44.6128 -78.3042', {
    body: 'place',
    signed: true,
  }),
  row('ground', 'file', 'elevation of the ground at the well', 'ground 287.4 m', {
    signed: true,
    slots: [
      depth('elevation', 'elevation', { expected: true }),
      word('datum', ['geodetic-datum'], 'the datum it is counted from'),
      depth('accuracy', 'how good it is', { labels: ['accuracy', 'within'] }),
    ],
  }),
  textRow('owner', 'owner of the well', 'owner Kestrel Hollow Water Co-op'),
  textRow('site', 'name of the site', 'site Kestrel Hollow, lot 4'),
  textRow(
    'location',
    'place in words: lot and concession, or township, range and section',
    'location lot 14, con 5, Fenmarrow Township',
  ),
  textRow('contractor', 'drilling contractor', 'contractor Fenmarrow Drilling'),
  textRow('technician', 'who drilled or logged it', 'technician R. Ostrava', ['technician', 'driller']),
  textRow('licence', "the contractor's licence", 'licence W-2207', ['licence', 'license']),
  textRow('tag', "the well's tag", 'tag A 104422'),
  textRow('permit', 'permit or notice of intent', 'permit 2026-114'),
  textRow('replaces', 'id of the well that this one replaces', 'replaces KH-02'),
  textRow('nested', 'id of another well in the same hole', 'nested KH-04'),
  row('use', 'file', 'what the water is for', 'use domestic', {
    slots: [slot('use', [terms('use'), of('text')], 'use', { many: true, expected: true })],
  }),
  row('status', 'file', 'state of the well when it was left', 'status in use', {
    slots: [slot('status', [terms('status'), of('text')], 'status', { expected: true })],
  }),
  row('began', 'file', 'first day of the work', 'began 2026-05-04', {
    keywords: ['began', 'started'],
    slots: [date('date', 'date', { expected: true })],
  }),
  row('finished', 'file', 'last day of the work', 'finished 2026-05-06', {
    keywords: ['finished', 'completed'],
    slots: [date('date', 'date', { expected: true })],
  }),
  row('reported', 'file', 'day the record was sent in', 'reported 2026-05-20', {
    slots: [date('date', 'date', { expected: true })],
  }),
  row('distance', 'file', 'distance to a source of contamination', 'distance septic 31', {
    keywords: ['distance', 'setback'],
    slots: [depth('distance', 'source and distance', { labelList: 'contaminant-source', many: true, expected: true })],
  }),
  row('shift', 'file', 'a day at the rig', 'shift 2026-05-05 07:00 - 17:30, 0 - 42.7, crew RB KT, rain 4 C', {
    slots: [
      slot('hours', [of('period'), of('moment')], 'date and hours', { expected: true }),
      slot('drilled', of('interval'), 'depths drilled', { bare: 'depth' }),
      slot('crew', of('text'), 'who was there', { labels: ['crew'] }),
      word('weather', ['weather'], 'weather', { many: true }),
      slot('temperature', quantity('temperature'), 'air temperature'),
    ],
  }),
  row('existing', 'file', 'an old hole that was deepened', 'existing 0 - 36.6 152, 1987, record 1234567', {
    depths: 'interval',
    slots: [
      slot('year', of('year'), 'year it was made', { bare: 'none' }),
      diameter('diameter', 'diameter of the old hole', { expected: true }),
      slot('record', of('text'), 'number of the old record', { labels: ['record'] }),
    ],
  }),
  row('photo', 'file', 'a picture and its depth', 'photo 38.5 IMG_0412.jpg', {
    depths: 'optional',
    slots: [slot('file', of('text'), 'file name', { expected: true })],
  }),
  textRow('note', 'free text, printed in the record', 'note access by the south gate'),
];

const sectionRows: readonly Row[] = [
  row('hole', 'section', 'the hole as drilled, by depth', 'hole\n0 - 7.2 254 air rotary', {
    lines: 'hole.line',
    opensBeforeDepth: true,
  }),
  row('hole.line', 'depth-line', 'interval, diameter, method', '0 - 7.2 254 air rotary', {
    of: ['hole'],
    depths: 'interval',
    slots: [
      diameter('diameter', 'diameter of the hole', { expected: true }),
      word('method', ['hole-method'], 'how it was drilled', { many: true }),
      diameter('reamed-from', 'diameter before reaming', { labels: ['reamed from', 'from'] }),
      date('date', 'date'),
    ],
  }),
  row('strata', 'section', 'the ground, by depth', 'strata\n0 - 3.8 silty clay, brown', {
    keywords: ['strata', 'geology', 'formation', 'formations'],
    lines: 'strata.line',
    opensBeforeDepth: true,
  }),
  row(
    'strata.line',
    'depth-line',
    'interval, material, colour, other terms, class symbol',
    '0 - 3.8 silty clay, brown, stiff',
    {
      of: ['strata'],
      depths: 'interval',
      slots: [
        slot('description', of('description'), 'material, colour and other terms', { expected: true }),
        slot('grain', quantity('length'), 'grain or stone size', {
          bare: 'diameter',
          labels: ['to', 'up to', 'size'],
          labelled: 'may',
        }),
        depth('at', 'depths within the layer', { labels: ['at', '@'], many: true }),
      ],
    },
  ),
  row(
    'drilling',
    'section',
    'how the hole went: air and pipe, then rods by depth',
    'drilling air 21 m3/min 2400 kPa, pipe 114',
    {
      lines: 'drilling.line',
      slots: [
        word('flush', ['flush'], 'flush', { many: true }),
        slot('air-rate', quantity('rate'), 'volume of air or flush delivered', { expected: true }),
        slot('pressure', quantity('pressure'), 'pressure of the compressor or pump'),
        diameter('pipe', 'outside diameter of the drill pipe', { labels: ['pipe', 'rods', 'rod', 'drill pipe'] }),
        diameter('bit', 'diameter of the bit', { labels: ['bit'] }),
        word('method', ['hole-method'], 'method', { many: true }),
      ],
    },
  ),
  row('drilling.line', 'depth-line', 'interval, time taken, flush and its rate', '7.2 - 13.2 18 min air', {
    of: ['drilling'],
    depths: 'interval',
    slots: [
      slot('time', quantity('time'), 'time the interval took', { expected: true }),
      word('flush', ['flush'], 'flush', { many: true }),
      slot('flush-rate', quantity('rate'), 'rate of the water or foam put in'),
      slot('pressure', quantity('pressure'), 'pressure'),
      diameter('bit', 'diameter of the bit', { labels: ['bit'] }),
      word('method', ['hole-method'], 'method', { many: true }),
      slot('when', [of('period'), of('moment')], 'date and hours'),
    ],
  }),
  row('casing', 'section', 'one string of casing', 'casing +0.45 - 7.2 steel 168.3 x 6.4 welded', {
    depths: 'interval',
    slots: stringSlots(),
  }),
  row('liner', 'section', 'a liner, as a string of its own', 'liner 24.4 - 61 pvc 114.3 sdr 26, perforated 48.8 - 61', {
    depths: 'interval',
    slots: stringSlots(),
  }),
  row('water', 'section', 'water found, levels, quality', 'water\n38.5 fresh, 25 L/min', {
    lines: 'water.line',
    opensBeforeDepth: true,
  }),
  row('water.line', 'depth-line', 'depth, kind and rate of water found', '38.5 fresh, 25 L/min', {
    of: ['water'],
    depths: 'either',
    slots: [
      word('kind', ['water-kind', 'quality'], 'kind of water', { many: true }),
      slot('total', quantity('rate'), 'everything found down to here', { labels: ['total'] }),
      slot('rate', quantity('rate'), 'what this depth adds', { expected: true }),
      date('date', 'date'),
    ],
  }),
  row('test', 'section', 'a pumping, bail, blow or flow test', 'test pump 40 L/min, intake 50, 2026-05-07 08:00', {
    lines: 'test.line',
    slots: [
      word('method', ['test-method'], 'how the water was taken', { expected: true }),
      slot('rate', quantity('rate'), 'rate', { expected: true }),
      depth('intake', 'depth of the intake', { labels: ['intake'] }),
      depth('stem', 'depth of the stem', { labels: ['stem'] }),
      slot('duration', quantity('time'), 'how long it ran'),
      slot('start', [of('period'), of('moment')], 'when it began'),
      slot('toc', of('flag'), 'levels are from the top of the casing', { labels: ['toc'] }),
    ],
  }),
  row('test.line', 'depth-line', 'minutes since the start, level', '60 11.9', {
    of: ['test'],
    slots: [
      slot('elapsed', of('elapsed'), 'time since the start: minutes, 30 s, 1h, 1h30, or a clock time 08:15', {
        bare: 'none',
        expected: true,
      }),
      depth('drawdown', 'drawdown', { labels: ['dd', 'drawdown'] }),
      depth('level', 'level', { expected: true }),
      slot('rate', quantity('rate'), 'rate at that time'),
    ],
  }),
  row(
    'abandonment',
    'section',
    'how the hole was sealed for good',
    'abandonment 2026-06-01\n0 - 61 neat cement, 1.4 m3, tremie',
    {
      keywords: ['abandonment', 'decommissioning'],
      lines: 'abandonment.line',
      slots: [date('date', 'date'), slot('reason', of('text'), 'why', { labels: ['reason'] })],
    },
  ),
  row(
    'abandonment.line',
    'depth-line',
    'interval, sealing material, amount, method',
    '0 - 61 neat cement, 1.4 m3, tremie',
    {
      of: ['abandonment'],
      depths: 'interval',
      slots: fillSlots(),
    },
  ),
];

/** The sections of strings of pipe, and the rows that open them. */
export const strings: readonly string[] = ['casing', 'liner', 'screen'];

const stringNames: ReadonlySet<string | null> = new Set(strings);

/** True for the id of a section that is a string, or of the row that opens it. */
export const isStringSection = (id: string | null): boolean => stringNames.has(id);

const underRows: readonly Row[] = [
  row('shoe', 'under', 'the shoe at the foot of the string', 'shoe 7.2', {
    of: strings,
    depths: 'depth',
    slots: [word('kind', ['shoe-kind'], 'kind of shoe', { many: true })],
  }),
  row('centralizers', 'under', 'depths of the centralizers', 'centralizers 1.5 4 6.7', {
    keywords: ['centralizers', 'centralisers', 'centralizer', 'centraliser', 'guides'],
    of: strings,
    slots: [
      slot('positions', of('list'), 'depths', { bare: 'depth', expected: true }),
      depth('every', 'spacing', { labels: ['every'] }),
      slot('set', of('number'), 'how many stand together at each depth', {
        labels: ['sets of', 'set of', 'in sets of'],
        bare: 'none',
      }),
    ],
  }),
  row('joints', 'under', 'lengths of the joints, from the bottom up', 'joints 6.1 1.55', {
    keywords: ['joints', 'joint', 'tally'],
    of: strings,
    slots: [slot('lengths', of('list'), 'lengths, or count x length', { bare: 'depth', expected: true })],
  }),
  row('screen', 'under', 'a screen on the string', 'screen 30 - 36 stainless 114.3, slot 0.5', {
    of: strings,
    depths: 'interval',
    slots: [
      slot('slot', [quantity('length'), of('hash-number')], 'width of the slots', {
        labels: ['slot', 'slots'],
        bare: 'diameter',
      }),
      slot('open-area', [quantity('open-area'), quantity('share')], 'open area', {
        labels: ['open', 'open area'],
        labelled: 'may',
      }),
      word('kind', ['screen-kind'], 'kind of screen', { many: true }),
      ...stringSlots(),
    ],
  }),
  row(
    'grout',
    'under',
    'grout around the string',
    'grout 0 - 7.2 neat cement, 0.29 m3, 9 x 40 kg bags, w/c 0.5, tremie, 2026-05-05 09:30',
    {
      of: strings,
      depths: 'interval',
      slots: fillSlots(),
    },
  ),
  row('seal', 'under', 'a seal around the string', 'seal 0 - 3 bentonite chips, 8 bags', {
    of: strings,
    depths: 'interval',
    slots: fillSlots(),
  }),
  row('pack', 'under', 'filter pack around a screen', 'pack 27 - 36 20/40 sand, 0.4 m3', {
    of: strings,
    depths: 'interval',
    slots: [slot('grading', of('grading'), 'grading by sieve numbers'), ...fillSlots()],
  }),
  row('plug', 'under', 'a plug in the string or the hole', 'plug 36 cement', {
    of: strings,
    depths: 'either',
    slots: fillSlots(),
  }),
  row('packer', 'under', 'a packer on the string', 'packer 24.4 rubber', {
    of: strings,
    depths: 'depth',
    slots: [word('kind', ['packer-kind'], 'kind of packer', { many: true })],
  }),
  row('cut', 'under', 'the string cut off: old top to new top', 'cut +0.9 to +0.45 2026-05-07', {
    of: strings,
    depths: 'interval',
    slots: [date('date', 'date')],
  }),
  row('pitless', 'under', 'pitless adapter', 'pitless 1.8 bolt-on', {
    of: strings,
    depths: 'depth',
    slots: [word('kind', ['pitless-kind'], 'kind of adapter', { many: true })],
  }),
  row('level', 'under', 'a water level and its date', 'level 5.2 2026-05-07', {
    keywords: ['level', 'swl', 'static'],
    of: ['water'],
    depths: 'depth',
    slots: [date('date', 'date')],
  }),
  row('gas', 'under', 'gas found', 'gas 47.2 methane', {
    of: ['water'],
    depths: 'either',
    slots: [word('kind', ['gas-kind'], 'kind of gas', { many: true })],
  }),
  row('quality', 'under', 'quality of the water', 'quality 38.5 sulphur, iron 0.4 mg/L', {
    of: ['water'],
    depths: 'optional',
    slots: [
      slot(
        'parameter',
        [quantity('concentration'), quantity('conductivity'), quantity('temperature'), of('number')],
        'parameter and value',
        {
          labelList: 'quality',
          many: true,
          bare: 'none',
        },
      ),
      word('kind', ['quality', 'water-kind'], 'what was noticed', { many: true }),
      date('date', 'date'),
    ],
  }),
  row('flowing', 'under', 'flow at surface', 'flowing 35 L/min, shut-in 42 kPa, valve, no leak', {
    of: ['water'],
    slots: [
      slot('shut-in', [quantity('pressure'), quantity('length')], 'shut-in pressure or head above ground', {
        labels: ['shut-in', 'shut in'],
        bare: 'depth',
      }),
      slot('rate', quantity('rate'), 'rate of flow', { expected: true }),
      word('control', ['flow-control'], 'how it is held and whether it leaks', { many: true }),
      date('date', 'date'),
    ],
  }),
  row('lost', 'under', 'where the returns were lost', 'lost 22 - 23 total', {
    of: ['drilling'],
    depths: 'either',
    slots: [word('extent', ['extent'], 'how much was lost')],
  }),
  row('samples', 'under', 'samples taken', 'samples 0 - 61 every 1.5', {
    of: ['drilling'],
    depths: 'interval',
    slots: [depth('every', 'spacing', { labels: ['every'], labelled: 'may' })],
  }),
  row('rate', 'under', 'a change of the pumping rate, from the reading above', 'rate 60 L/min', {
    of: ['test'],
    slots: [slot('rate', quantity('rate'), 'new rate', { expected: true })],
  }),
  row('recovery', 'under', 'the pump stopped; the clock starts again', 'recovery', {
    of: ['test'],
    slots: [slot('stop', of('elapsed'), 'when it stopped, on the pumping clock', { bare: 'none' })],
  }),
  row('observed', 'under', 'readings of another well', 'observed OW-1, r 30 m', {
    of: ['test'],
    slots: [
      depth('distance', 'distance from the pumped well', { labels: ['r'] }),
      slot('drawdown', of('flag'), 'the readings are drawdowns', { labels: ['dd'] }),
      slot('name', of('text'), 'name of the well', { expected: true }),
    ],
  }),
];

const lineRows: readonly Row[] = [
  row('disinfection', 'line', 'how the well was disinfected', 'disinfection 100 mg/L, 12 h, 2026-05-08', {
    slots: [
      slot('strength', quantity('concentration'), 'free chlorine', { expected: true }),
      slot('contact', quantity('time'), 'contact time'),
      date('date', 'date'),
      word('product', ['disinfectant'], 'product'),
      slot('product-strength', quantity('share'), 'strength of the product'),
      slot('amount', [quantity('volume'), quantity('mass')], 'amount used'),
    ],
  }),
  row('development', 'line', 'how the well was developed', 'development air, 3 h, 50 L/min, clear, sand <5 mg/L', {
    slots: [
      word('method', ['development-method'], 'method', { many: true, expected: true }),
      slot('time', quantity('time'), 'how long'),
      slot('rate', quantity('rate'), 'rate'),
      slot('sand', quantity('concentration'), 'sand at the end', { labels: ['sand'] }),
      word('result', ['water-kind', 'quality'], 'how the water looked', { many: true }),
      date('date', 'date'),
    ],
  }),
  row(
    'hydrofracture',
    'line',
    'fracturing with water',
    'hydrofracture 40 - 61, 14 MPa, before 2 L/min, after 15 L/min',
    {
      depths: 'interval',
      slots: [
        slot('pressure', quantity('pressure'), 'pressure'),
        slot('before', quantity('rate'), 'yield before', { labels: ['before'] }),
        slot('after', quantity('rate'), 'yield after', { labels: ['after'] }),
        date('date', 'date'),
      ],
    },
  ),
  row('pump', 'line', 'the pump fitted', 'pump submersible 0.56 kW, set 45', {
    slots: [
      word('kind', ['pump-kind'], 'kind of pump', { many: true, expected: true }),
      slot('power', quantity('power'), 'power'),
      depth('set', 'depth of the intake', { labels: ['set', 'intake'] }),
      slot('rate', quantity('rate'), 'rate'),
      date('date', 'date'),
    ],
  }),
  row('cap', 'line', 'the cap or cover', 'cap vermin-proof, vented', {
    slots: [word('kind', ['cap-kind'], 'kind of cap', { many: true, expected: true })],
  }),
];

/** The one table: every keyword, every item that it takes. */
export const table: readonly Row[] = [...fileRows, ...sectionRows, ...underRows, ...lineRows];

const rowsById = new Map(table.map((each) => [each.id, each]));
const rowsByKeyword = new Map(table.flatMap((each) => each.keywords.map((keyword) => [keyword, each] as const)));

/** The row of that id. Throws for an id that the table lacks: a mistake in the code, not in a log. */
export function rowById(id: string): Row {
  const found = rowsById.get(id);
  if (!found) throw new Error(`the table has no row ${id}`);
  return found;
}

/** The row that a keyword names, in any letter case. */
export const rowByKeyword = (keyword: string): Row | undefined => rowsByKeyword.get(keyword.toLowerCase());

/** Every spelling of every keyword. */
export const keywords: readonly string[] = [...rowsByKeyword.keys()];

/** The keywords that hang on a section. */
export const rowsUnder = (section: string): readonly Row[] => underRows.filter((each) => each.of.includes(section));
