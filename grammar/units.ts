/** What a unit measures. `concentration` and `density` share a SI unit but are different questions. */
export type Dimension =
  | 'length'
  | 'volume'
  | 'mass'
  | 'time'
  | 'rate'
  | 'pressure'
  | 'power'
  | 'concentration'
  | 'density'
  | 'share'
  | 'temperature'
  | 'count'
  | 'conductivity'
  | 'force'
  | 'open-area';

export interface Unit {
  /** The canonical spelling, as the formatter writes it. */
  readonly id: string;
  readonly dimension: Dimension;
  /** SI units in one of this unit; exact where the definition is exact. */
  readonly factor: number;
  /** Added after the factor (temperatures only). */
  readonly offset: number;
  /** Accepted spellings, lower case, superscripts as plain digits, the canonical one included. */
  readonly spellings: readonly string[];
  readonly system: 'metric' | 'us' | 'imperial' | 'any';
  /** True for `gal` and what is built on it: the factor is that of the US gallon until the file says which. */
  readonly gallon: boolean;
  readonly name: string;
}

/** The SI unit in which each dimension is kept. */
export const siUnits: Readonly<Record<Dimension, string>> = {
  length: 'm',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  rate: 'm3/s',
  pressure: 'Pa',
  power: 'W',
  concentration: 'kg/m3',
  density: 'kg/m3',
  share: '1',
  temperature: 'K',
  count: '1',
  conductivity: 'S/m',
  force: 'N',
  'open-area': 'm2/m',
};

/** Exact factors, NIST SP 811 (2008), appendix B. */
export const exact = {
  foot: 0.3048,
  inch: 0.0254,
  usGallon: 0.003785411784,
  imperialGallon: 0.00454609,
  pound: 0.45359237,
  psi: 6894.757293168361,
  horsepower: 745.6998715822702,
} as const;

const cubicFoot = exact.foot ** 3;
const cubicYard = 27 * cubicFoot;
const litre = 0.001;

type Row = [
  id: string,
  dimension: Dimension,
  factor: number,
  system: Unit['system'],
  name: string,
  spellings: string,
  offset?: number,
];

const rows: readonly Row[] = [
  ['m', 'length', 1, 'metric', 'metre', 'm metre metres meter meters mtr'],
  ['cm', 'length', 0.01, 'metric', 'centimetre', 'cm'],
  ['mm', 'length', 0.001, 'metric', 'millimetre', 'mm'],
  ['ft', 'length', exact.foot, 'us', 'foot', 'ft feet foot'],
  ['in', 'length', exact.inch, 'us', 'inch', 'in inch inches'],
  ['m3', 'volume', 1, 'metric', 'cubic metre', 'm3|cu m|cubic m|cubic metres|cubic meters|cubic metre'],
  ['L', 'volume', litre, 'metric', 'litre', 'l litre litres liter liters'],
  ['mL', 'volume', 1e-6, 'metric', 'millilitre', 'ml'],
  ['ft3', 'volume', cubicFoot, 'us', 'cubic foot', 'ft3|cf|cu ft|cu. ft|cu.ft|cubic ft|cubic feet'],
  ['yd3', 'volume', cubicYard, 'us', 'cubic yard', 'yd3|cy|cu yd|cubic yd|cubic yards|cubic yard|yards|yard'],
  ['gal-us', 'volume', exact.usGallon, 'us', 'US gallon', 'gal-us|usgal|us gal|us gallons|us gallon'],
  [
    'gal-imp',
    'volume',
    exact.imperialGallon,
    'imperial',
    'imperial gallon',
    'gal-imp|igal|imp gal|imp gallons|imp gallon|imperial gal|imperial gallons',
  ],
  ['gal', 'volume', exact.usGallon, 'any', 'gallon', 'gal gals gallon gallons'],
  ['fl oz', 'volume', exact.usGallon / 128, 'us', 'US fluid ounce', 'fl oz|floz'],
  ['qt', 'volume', exact.usGallon / 4, 'us', 'US quart', 'qt|quart|quarts'],
  ['kg', 'mass', 1, 'metric', 'kilogram', 'kg kgs kilo kilos'],
  ['g', 'mass', 0.001, 'metric', 'gram', 'g gram grams'],
  ['t', 'mass', 1000, 'metric', 'tonne', 't tonne tonnes'],
  ['lb', 'mass', exact.pound, 'us', 'pound', 'lb lbs pound pounds'],
  ['oz', 'mass', exact.pound / 16, 'us', 'ounce', 'oz'],
  ['s', 'time', 1, 'any', 'second', 's sec secs second seconds'],
  ['min', 'time', 60, 'any', 'minute', 'min mins minute minutes'],
  ['h', 'time', 3600, 'any', 'hour', 'h hr hrs hour hours'],
  ['d', 'time', 86400, 'any', 'day', 'd day days'],
  ['L/min', 'rate', litre / 60, 'metric', 'litres a minute', 'l/min|lpm|l/m|litres/min|liters/min|lit/min'],
  ['L/s', 'rate', litre, 'metric', 'litres a second', 'l/s|lps|l/sec'],
  ['L/h', 'rate', litre / 3600, 'metric', 'litres an hour', 'l/h|lph|l/hr'],
  ['m3/h', 'rate', 1 / 3600, 'metric', 'cubic metres an hour', 'm3/h|m3/hr|cu m/h'],
  ['m3/d', 'rate', 1 / 86400, 'metric', 'cubic metres a day', 'm3/d|m3/day'],
  ['m3/min', 'rate', 1 / 60, 'metric', 'cubic metres a minute', 'm3/min|cmm'],
  ['m3/s', 'rate', 1, 'metric', 'cubic metres a second', 'm3/s|m3/sec'],
  ['cfm', 'rate', cubicFoot / 60, 'us', 'cubic feet a minute', 'cfm|ft3/min|scfm|cu ft/min'],
  ['gpm-us', 'rate', exact.usGallon / 60, 'us', 'US gallons a minute', 'gpm-us|usgpm|us gpm|gal-us/min'],
  [
    'gpm-imp',
    'rate',
    exact.imperialGallon / 60,
    'imperial',
    'imperial gallons a minute',
    'gpm-imp|igpm|imp gpm|gal-imp/min',
  ],
  ['gpm', 'rate', exact.usGallon / 60, 'any', 'gallons a minute', 'gpm|gal/min|gals/min'],
  ['gph-us', 'rate', exact.usGallon / 3600, 'us', 'US gallons an hour', 'gph-us|us gph|usgph|gal-us/h'],
  [
    'gph-imp',
    'rate',
    exact.imperialGallon / 3600,
    'imperial',
    'imperial gallons an hour',
    'gph-imp|imp gph|igph|gal-imp/h',
  ],
  ['gph', 'rate', exact.usGallon / 3600, 'any', 'gallons an hour', 'gph|gal/h|gal/hr'],
  ['Pa', 'pressure', 1, 'metric', 'pascal', 'pa'],
  ['kPa', 'pressure', 1000, 'metric', 'kilopascal', 'kpa'],
  ['MPa', 'pressure', 1e6, 'metric', 'megapascal', 'mpa'],
  ['bar', 'pressure', 1e5, 'metric', 'bar', 'bar bars'],
  ['psi', 'pressure', exact.psi, 'us', 'pound-force a square inch', 'psi psig'],
  ['kW', 'power', 1000, 'metric', 'kilowatt', 'kw'],
  ['W', 'power', 1, 'metric', 'watt', 'w watt watts'],
  ['hp', 'power', exact.horsepower, 'us', 'horsepower (550 ft lbf/s)', 'hp'],
  ['mg/L', 'concentration', 0.001, 'metric', 'milligrams a litre', 'mg/l|ppm'],
  ['ug/L', 'concentration', 1e-6, 'metric', 'micrograms a litre', 'ug/l|ppb'],
  ['g/L', 'concentration', 1, 'metric', 'grams a litre', 'g/l'],
  ['kg/m3', 'density', 1, 'metric', 'kilograms a cubic metre', 'kg/m3'],
  ['kg/L', 'density', 1000, 'metric', 'kilograms a litre', 'kg/l|g/cm3|g/ml'],
  ['lb/gal', 'density', exact.pound / exact.usGallon, 'us', 'pounds a US gallon', 'lb/gal|lbs/gal|ppg'],
  ['lb/ft3', 'density', exact.pound / cubicFoot, 'us', 'pounds a cubic foot', 'lb/ft3|lbs/ft3|pcf'],
  ['%', 'share', 0.01, 'any', 'per cent', '%|pct|percent'],
  ['C', 'temperature', 1, 'metric', 'degree Celsius', 'c|°c|deg c', 273.15],
  ['F', 'temperature', 5 / 9, 'us', 'degree Fahrenheit', 'f|°f|deg f', 273.15 - (32 * 5) / 9],
  ['bags', 'count', 1, 'any', 'bags', 'bags|bag|sacks|sack|sx'],
  ['pails', 'count', 1, 'any', 'pails', 'pails|pail|buckets|bucket'],
  ['uS/cm', 'conductivity', 1e-4, 'metric', 'microsiemens a centimetre', 'us/cm'],
  ['mS/cm', 'conductivity', 0.1, 'metric', 'millisiemens a centimetre', 'ms/cm'],
  ['kN', 'force', 1000, 'metric', 'kilonewton', 'kn'],
  ['m2/m', 'open-area', 1, 'metric', 'square metres of opening a metre', 'm2/m'],
  ['in2/ft', 'open-area', exact.inch ** 2 / exact.foot, 'us', 'square inches of opening a foot', 'in2/ft|sq in/ft'],
  ['lbf', 'force', 4.4482216152605, 'us', 'pound-force', 'lbf'],
];

const spellingsOf = (text: string): string[] => text.split(text.includes('|') ? '|' : ' ');

const gallonUnits = new Set(['gal', 'gpm', 'gph']);

/** Every unit the notation knows. */
export const units: readonly Unit[] = rows.map(([id, dimension, factor, system, name, spellings, offset = 0]) => ({
  id,
  dimension,
  factor,
  offset,
  system,
  name,
  spellings: spellingsOf(spellings),
  gallon: gallonUnits.has(id),
}));

const byId = new Map(units.map((unit) => [unit.id, unit]));
const bySpelling = new Map(units.flatMap((unit) => [unit.id, ...unit.spellings].map((s) => [s.toLowerCase(), unit])));

export type Gallon = 'gal-us' | 'gal-imp';

/** The unit of that canonical spelling. */
export const unitById = (id: string): Unit | undefined => byId.get(id);

/** The unit that a spelling stands for, whatever its letter case and blanks. */
export const unitBySpelling = (spelling: string): Unit | undefined =>
  bySpelling.get(spelling.toLowerCase().replace(/\s+/g, ' '));

/** `gal` and `gpm` in a file that says which gallon; every other unit as it is. */
export function withGallon(unit: Unit, gallon: Gallon | null): Unit {
  if (!unit.gallon || gallon === null) return unit;
  const named = unit.id.replace('gal', gallon).replace(/^(gp[mh])$/, gallon === 'gal-us' ? '$1-us' : '$1-imp');
  return byId.get(named) ?? unit;
}

/** A number in a unit, in SI. */
export const toSi = (number: number, unit: Unit): number => number * unit.factor + unit.offset;

/** A SI value, in a unit. */
export const fromSi = (value: number, unit: Unit): number => (value - unit.offset) / unit.factor;
