import type { Gallon } from '../../../../grammar/units.ts';
import type { UnitPair } from './exact-number.ts';

type Row = [us: string, metric: string, numerator: bigint, denominator: bigint, moreInMetric: number, moreInUs: number];

/**
 * Units that take each other's place, with the exact factors of NIST SP 811 (2008), appendix B. With the digits given
 * what was in feet and inches is exact; everything else is within 15 parts in 100,000 of what was written.
 */
const rows: readonly Row[] = [
  ['ft', 'm', 3048n, 10_000n, 4, 4],
  ['in', 'mm', 254n, 10n, 1, 5],
  ['ft3', 'm3', 28_316_846_592n, 10n ** 12n, 6, 4],
  ['lb', 'kg', 45_359_237n, 10n ** 8n, 4, 4],
  ['cfm', 'm3/min', 28_316_846_592n, 10n ** 12n, 6, 4],
  ['psi', 'kPa', 6_894_757_293_168_361n, 10n ** 15n, 4, 5],
  ['hp', 'kW', 7_456_998_715_822_702n, 10n ** 16n, 4, 4],
  ['lb/ft3', 'kg/m3', 45_359_237n * 10n ** 4n, 28_316_846_592n, 4, 5],
];

const inCentimetres: Row = ['in', 'cm', 254n, 100n, 2, 4];

const usGallon: readonly [bigint, bigint] = [3_785_411_784n, 10n ** 9n];
const imperialGallon: readonly [bigint, bigint] = [454_609n, 10n ** 5n];

function gallonRows(gallon: Gallon | null): readonly Row[] {
  const [numerator, denominator] = gallon === 'gal-imp' ? imperialGallon : usGallon;
  const [volume, rate] = gallon === null ? ['gal-us', 'gpm-us'] : ['gal', 'gpm'];
  return [
    [volume, 'L', numerator, denominator, 4, 5],
    [rate, 'L/min', numerator, denominator, 4, 5],
  ];
}

const pairOf = ([us, metric, numerator, denominator, moreInMetric, moreInUs]: Row): UnitPair => ({
  us,
  metric,
  numerator,
  denominator,
  moreInMetric,
  moreInUs,
});

/** The pairs of a file; one that names its gallon writes plain gallons. */
export const unitPairs = (gallon: Gallon | null): readonly UnitPair[] => [...rows, ...gallonRows(gallon)].map(pairOf);

/** Pairs of the units that a file gives its bare depths and diameters. */
export const barePairs: readonly UnitPair[] = [...rows.slice(0, 2), inCentimetres].map(pairOf);
