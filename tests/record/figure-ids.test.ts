import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { recordOf } from './record-of.ts';

/** The figures that others ask for by name, the numbers of strings, fills and tests left open. */
const asked = [
  'casing.N.mass',
  'casing.N.hoist-load',
  'casing.N.collapse-resistance',
  'casing.N.grout.M.pressure-difference',
  'casing.N.grout.M.bags-volume',
  'casing.N.grout.M.density',
  'casing.N.grout.M.water-cement-ratio',
  'casing.N.grout.M.solids',
  'casing.N.buoyed-weight-empty',
  'casing.N.buoyed-weight-full',
  'casing.N.screen.M.entrance-velocity',
  'casing.N.pack.M.volume',
  'drilling.N.rate-break',
  'strata.N.rate-change',
  'water.shut-off-rate',
  'water.open-rate',
  'test.N.specific-capacity',
  'test.N.cooper-jacob.transmissivity',
  'test.N.cooper-jacob.slope',
  'test.N.theis.transmissivity',
  'test.N.recovery.transmissivity',
  'test.N.step.K.specific-capacity',
  'disinfection.water-volume',
  'disinfection.hypochlorite-12',
  'disinfection.hypochlorite-5',
  'disinfection.granules-65',
  'abandonment.N.volume',
  'place.latitude',
  'place.longitude',
  'place.utm-easting',
  'place.utm-northing',
];

const samples = new URL('../../samples/', import.meta.url);

const wellsIn = (folder: string): string[] =>
  readdirSync(new URL(folder, samples))
    .filter((name) => name.endsWith('.well'))
    .map((name) => readFileSync(new URL(`${folder}${name}`, samples), 'utf8'));

/** Ids of the figures that have a value in some sample, their numbers left open. */
const known = new Set(
  [...wellsIn('./'), ...wellsIn('tests/'), ...wellsIn('packs/')].flatMap((text) =>
    recordOf(text).figures.flatMap(({ id, value }) => (value === null ? [] : [id.replace(/\.\d+(?=\.)/g, '.#')])),
  ),
);

test.each(asked)('%s has a value in some sample', (id) => {
  expect([...known]).toContain(id.replace(/\.[NMK](?=\.)/g, '.#'));
});
