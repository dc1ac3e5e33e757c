import { type Formula, known, type Outcome, refused } from '../../calculations/formula.ts';
import {
  type EarthPlace,
  type GridDatum,
  type GridPlace,
  about as ofUtm,
  placeOfUtm,
  utmOf,
} from '../../calculations/place/utm.ts';
import type { FileUnits, Place } from '../../model/log.ts';
import type { Shown } from '../display.ts';
import { figureOf } from '../figure.ts';
import { decimals } from '../format-number.ts';
import type { Ingredient } from '../ingredient.ts';
import { inDoubt } from '../intervals.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';

/** `place.latitude`, `.longitude`, `.utm-zone`, `.utm-easting`, `.utm-northing`. */
export const placeFigures: Family = ({ log }) => (log.place ? figuresOf(log.place, log.units) : []);

/** Datums by the ellipsoid that their grid is counted on; those on GRS80 share the entry of NAD83. */
const datums: Readonly<Record<string, GridDatum>> = {
  wgs84: 'WGS84',
  nad83: 'NAD83',
  'nad83-csrs': 'NAD83',
  etrs89: 'NAD83',
  gda94: 'NAD83',
  gda2020: 'NAD83',
  nad27: 'NAD27',
};

const datumOf = ({ datum }: Place): GridDatum | null => (datum ? (datums[datum.id] ?? null) : 'WGS84');

function figuresOf(place: Place, units: FileUnits): Figure[] {
  const earth = earthOf(place);
  const grid = gridOf(place);
  const figure = (name: string, title: string, shown: Shown, digits: number, value: Outcome): Figure =>
    figureOf(
      {
        id: `place.${name}`,
        title,
        shown,
        formula: formulaOf(place),
        ingredients: ingredientsOf(place),
        compute: () => value,
        digits: decimals(digits),
        at: place,
        caution: place.datum ? null : ofUtm.caution,
      },
      units,
    );
  return [
    figure(
      'latitude',
      'latitude',
      'degrees',
      degreeDecimals,
      part(earth, ({ latitude }) => latitude),
    ),
    figure(
      'longitude',
      'longitude',
      'degrees',
      degreeDecimals,
      part(earth, ({ longitude }) => longitude),
    ),
    figure(
      'utm-zone',
      'UTM zone',
      'ratio',
      0,
      part(grid, ({ zone }) => zone),
    ),
    figure(
      'utm-easting',
      'UTM easting',
      'map-length',
      0,
      part(grid, ({ easting }) => easting),
    ),
    figure(
      'utm-northing',
      'UTM northing',
      'map-length',
      0,
      part(grid, ({ northing }) => northing),
    ),
  ];
}

/** Five decimals of a degree are about one metre. */
const degreeDecimals = 5;

const formulaOf = ({ datum }: Place): Formula => ({ ...ofUtm, text: `${ofUtm.text}; ${datum?.name ?? 'WGS84 taken'}` });

const part = <T>(outcome: Outcome<T>, of: (value: T) => number): Outcome =>
  outcome.ok ? known(of(outcome.value)) : outcome;

const unknownDatum = refused('the ellipsoid of that datum is not known here');

function earthOf(place: Place): Outcome<EarthPlace> {
  const { latitude, longitude, utm } = place;
  if (latitude !== null && longitude !== null) return known({ latitude, longitude });
  const datum = datumOf(place);
  if (!utm) return refused('no place is written down');
  return datum ? placeOfUtm(utm, datum) : unknownDatum;
}

function gridOf(place: Place): Outcome<GridPlace> {
  const { latitude, longitude, utm } = place;
  if (utm) return known(utm);
  const datum = datumOf(place);
  if (latitude === null || longitude === null) return refused('no place is written down');
  return datum ? utmOf({ latitude, longitude }, datum) : unknownDatum;
}

function ingredientsOf(place: Place): Ingredient[] {
  const numbers = place.utm
    ? [
        ['zone', place.utm.zone, '1'],
        ['easting', place.utm.easting, 'm'],
        ['northing', place.utm.northing, 'm'],
      ]
    : [
        ['latitude', place.latitude, 'deg'],
        ['longitude', place.longitude, 'deg'],
      ];
  return numbers.map(([name, value, unit]) => ({
    value: value as number | null,
    inputs: [
      {
        name: String(name),
        value: value as number | null,
        unit: String(unit),
        text: String(value ?? '?'),
        line: place.line,
      },
    ],
    waitsFor: value === null ? [`the ${name}`] : [],
    doubtful: place.doubtful || inDoubt(place.accuracy),
    significant: null,
    decimals: null,
    unit: null,
  }));
}
