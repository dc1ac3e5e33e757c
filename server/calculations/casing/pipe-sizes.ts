import { INCH } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'pipe sizes',
  text: 'outside diameter by nominal size; wall by nominal size and schedule',
  source:
    'ASME B36.10M (steel), ASTM F480 (plastic); light well wall ARM 36.21.640. Outside diameters 4 to 16 in and light walls as published, all other rows from memory',
  range: 'the sizes in the table',
  caution: null,
};

export type PipeMaterial = 'steel' | 'plastic';

/** One nominal size. `nominal`, `outside` and the walls in inches as the standards print them, `dn` the metric name, or null. */
interface PipeSize {
  readonly nominal: number;
  readonly dn: number | null;
  readonly outside: number;
  readonly walls: Readonly<Record<string, number>>;
}

const STEEL: readonly PipeSize[] = [
  { nominal: 0.5, dn: 15, outside: 0.84, walls: { '40': 0.109, '80': 0.147, std: 0.109, xs: 0.147 } },
  { nominal: 0.75, dn: 20, outside: 1.05, walls: { '40': 0.113, '80': 0.154, std: 0.113, xs: 0.154 } },
  { nominal: 1, dn: 25, outside: 1.315, walls: { '40': 0.133, '80': 0.179, std: 0.133, xs: 0.179 } },
  { nominal: 1.25, dn: 32, outside: 1.66, walls: { '40': 0.14, '80': 0.191, std: 0.14, xs: 0.191 } },
  { nominal: 1.5, dn: 40, outside: 1.9, walls: { '40': 0.145, '80': 0.2, std: 0.145, xs: 0.2 } },
  { nominal: 2, dn: 50, outside: 2.375, walls: { '10': 0.109, '40': 0.154, '80': 0.218, std: 0.154, xs: 0.218 } },
  { nominal: 2.5, dn: 65, outside: 2.875, walls: { '10': 0.12, '40': 0.203, '80': 0.276, std: 0.203, xs: 0.276 } },
  { nominal: 3, dn: 80, outside: 3.5, walls: { '10': 0.12, '40': 0.216, '80': 0.3, std: 0.216, xs: 0.3 } },
  { nominal: 3.5, dn: 90, outside: 4, walls: { '10': 0.12, '40': 0.226, '80': 0.318, std: 0.226, xs: 0.318 } },
  {
    nominal: 4,
    dn: 100,
    outside: 4.5,
    walls: { '10': 0.12, '40': 0.237, '80': 0.337, '120': 0.438, std: 0.237, xs: 0.337 },
  },
  {
    nominal: 5,
    dn: 125,
    outside: 5.563,
    walls: { '10': 0.134, '40': 0.258, '80': 0.375, '120': 0.5, std: 0.258, xs: 0.375 },
  },
  {
    nominal: 6,
    dn: 150,
    outside: 6.625,
    walls: { '10': 0.134, '40': 0.28, '80': 0.432, '120': 0.562, std: 0.28, xs: 0.432, light: 0.25 },
  },
  {
    nominal: 8,
    dn: 200,
    outside: 8.625,
    walls: {
      '10': 0.148,
      '20': 0.25,
      '30': 0.277,
      '40': 0.322,
      '60': 0.406,
      '80': 0.5,
      '120': 0.719,
      std: 0.322,
      xs: 0.5,
      light: 0.25,
    },
  },
  {
    nominal: 10,
    dn: 250,
    outside: 10.75,
    walls: {
      '10': 0.165,
      '20': 0.25,
      '30': 0.307,
      '40': 0.365,
      '60': 0.5,
      '80': 0.594,
      '120': 0.844,
      std: 0.365,
      xs: 0.5,
      light: 0.25,
    },
  },
  {
    nominal: 12,
    dn: 300,
    outside: 12.75,
    walls: {
      '10': 0.18,
      '20': 0.25,
      '30': 0.33,
      '40': 0.406,
      '60': 0.562,
      '80': 0.688,
      '120': 1,
      std: 0.375,
      xs: 0.5,
      light: 0.312,
    },
  },
  {
    nominal: 14,
    dn: 350,
    outside: 14,
    walls: { '10': 0.25, '20': 0.312, '30': 0.375, '40': 0.438, '60': 0.594, '80': 0.75, std: 0.375, xs: 0.5 },
  },
  {
    nominal: 16,
    dn: 400,
    outside: 16,
    walls: { '10': 0.25, '20': 0.312, '30': 0.375, '40': 0.5, '60': 0.656, '80': 0.844, std: 0.375, xs: 0.5 },
  },
  {
    nominal: 18,
    dn: 450,
    outside: 18,
    walls: { '10': 0.25, '20': 0.312, '30': 0.438, '40': 0.562, '60': 0.75, '80': 0.938, std: 0.375, xs: 0.5 },
  },
  {
    nominal: 20,
    dn: 500,
    outside: 20,
    walls: { '10': 0.25, '20': 0.375, '30': 0.5, '40': 0.594, '60': 0.812, '80': 1.031, std: 0.375, xs: 0.5 },
  },
  {
    nominal: 24,
    dn: 600,
    outside: 24,
    walls: { '10': 0.25, '20': 0.375, '30': 0.562, '40': 0.688, '60': 0.969, '80': 1.219, std: 0.375, xs: 0.5 },
  },
  { nominal: 30, dn: 750, outside: 30, walls: { '10': 0.312, '20': 0.5, '30': 0.625, std: 0.375, xs: 0.5 } },
  { nominal: 36, dn: 900, outside: 36, walls: { '10': 0.312, '20': 0.5, '30': 0.625, std: 0.375, xs: 0.5 } },
];

const PLASTIC: readonly PipeSize[] = [
  { nominal: 1, dn: 25, outside: 1.315, walls: { '40': 0.133, '80': 0.179 } },
  { nominal: 1.25, dn: 32, outside: 1.66, walls: { '40': 0.14, '80': 0.191 } },
  { nominal: 1.5, dn: 40, outside: 1.9, walls: { '40': 0.145, '80': 0.2 } },
  { nominal: 2, dn: 50, outside: 2.375, walls: { '40': 0.154, '80': 0.218 } },
  { nominal: 2.5, dn: 65, outside: 2.875, walls: { '40': 0.203, '80': 0.276 } },
  { nominal: 3, dn: 80, outside: 3.5, walls: { '40': 0.216, '80': 0.3 } },
  { nominal: 3.5, dn: 90, outside: 4, walls: { '40': 0.226, '80': 0.318 } },
  { nominal: 4, dn: 100, outside: 4.5, walls: { '40': 0.237, '80': 0.337 } },
  { nominal: 4.5, dn: null, outside: 4.95, walls: {} },
  { nominal: 5, dn: 125, outside: 5.563, walls: { '40': 0.258, '80': 0.375 } },
  { nominal: 6, dn: 150, outside: 6.625, walls: { '40': 0.28, '80': 0.432 } },
  { nominal: 6.25, dn: null, outside: 6.9, walls: {} },
  { nominal: 8, dn: 200, outside: 8.625, walls: { '40': 0.322, '80': 0.5 } },
  { nominal: 10, dn: 250, outside: 10.75, walls: { '40': 0.365, '80': 0.593 } },
  { nominal: 12, dn: 300, outside: 12.75, walls: { '40': 0.406, '80': 0.687 } },
  { nominal: 14, dn: 350, outside: 14, walls: { '40': 0.437, '80': 0.75 } },
  { nominal: 16, dn: 400, outside: 16, walls: { '40': 0.5, '80': 0.843 } },
];

const TABLES: Readonly<Record<PipeMaterial, readonly PipeSize[]>> = { steel: STEEL, plastic: PLASTIC };

/** A size written as 6 in and one written as DN 150 are apart by more than this, m. */
const NOMINAL_TOLERANCE = 0.0001;

/**
 * Outside diameter, m, of a nominal size given in m: 0.1524 for 6 in, or its metric name, 0.150 for DN 150.
 *
 * Source: ASME B36.10M and ASTM F480. Worked example: 6 in: 6.625 in = 168.275 mm, by both.
 */
export function outsideOfNominal(nominal: number, material: PipeMaterial): Outcome {
  const size = sizeOfNominal(nominal, material);
  return size ? known(size.outside * INCH) : refused(noSuchSize(material));
}

/**
 * Nominal size, m (inches times 0.0254), of the pipe whose outside diameter is nearest, within a tolerance; all in m.
 *
 * Worked example: 168.3 mm within 1 mm: 0.1524 m, that is 6 in.
 */
export function nominalOfOutside(outside: number, material: PipeMaterial, tolerance: number): Outcome {
  const away = (size: PipeSize): number => Math.abs(size.outside * INCH - outside);
  const near = TABLES[material].filter((size) => away(size) <= tolerance).sort((a, b) => away(a) - away(b));
  return near[0] ? known(near[0].nominal * INCH) : refused(`no ${standardOf(material)} size has that outside diameter`);
}

/** The metric name, DN, of a nominal size given in m: 150 for 6 in; null where the table has none. Source: as above. */
export const metricNameOf = (nominal: number, material: PipeMaterial): number | null =>
  sizeOfNominal(nominal, material)?.dn ?? null;

/**
 * Wall, m, of a nominal size (m) in a schedule: '10' to '120', 'std', 'xs', and 'light' for light steel well casing;
 * 'sch' or 'schedule' before the number, 'stdwt', and case do not matter.
 *
 * Source: ASME B36.10M, ASTM F480 (least walls), ARM 36.21.640 for 'light'. Worked example: 6 in, 40: 0.280 in = 7.112 mm.
 */
export function wallOf(nominal: number, schedule: string, material: PipeMaterial): Outcome {
  const size = sizeOfNominal(nominal, material);
  if (!size) return refused(noSuchSize(material));
  const wall = new Map(Object.entries(size.walls)).get(scheduleName(schedule));
  return wall === undefined ? refused(`${standardOf(material)} has no such schedule in that size`) : known(wall * INCH);
}

function sizeOfNominal(nominal: number, material: PipeMaterial): PipeSize | undefined {
  const near = (length: number): boolean => Math.abs(length - nominal) <= NOMINAL_TOLERANCE;
  return TABLES[material].find((size) => near(size.nominal * INCH) || (size.dn !== null && near(size.dn / 1000)));
}

function scheduleName(schedule: string): string {
  return schedule
    .toLowerCase()
    .replace(/^sch(edule)?\.?\s*/, '')
    .replace(/^std\s?wt$/, 'std')
    .trim();
}

function noSuchSize(material: PipeMaterial): string {
  return `${standardOf(material)} has no such nominal size`;
}

function standardOf(material: PipeMaterial): string {
  return material === 'steel' ? 'ASME B36.10M' : 'ASTM F480';
}
