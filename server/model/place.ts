import type { Quantity } from '../../grammar/tree.ts';
import { toSi, unitById } from '../../grammar/units.ts';
import type { Place } from './log.ts';
import { measureOfValue } from './measure.ts';
import { remembered } from './remembered.ts';
import { entryOf, itemIn, type Source } from './source.ts';
import { wordIn } from './words.ts';

const metre = unitById('m') ?? null;

function quantityIn(source: Source, slot: string): Quantity | null {
  const value = itemIn(source, slot)?.value;
  return value?.kind === 'quantity' ? value : null;
}

const degrees = (quantity: Quantity | null): number | null =>
  quantity === null || quantity.number === null ? null : quantity.number * (quantity.minus ? -1 : 1);

/** Grid metres, whatever the depth unit of the file. */
function metres(quantity: Quantity | null): number | null {
  if (quantity === null || quantity.number === null) return null;
  return quantity.unit ? toSi(quantity.number, quantity.unit) : quantity.number;
}

/** Latitude bands run from C to X, those from N on north of the equator; a zone without a band is taken as northern. */
const hemisphereOf = (band: string): 'N' | 'S' => (band === '' || band >= 'N' ? 'N' : 'S');

type Utm = NonNullable<Place['utm']>;

function zoneOf(source: Source): Pick<Utm, 'zone' | 'hemisphere'> | null {
  const value = itemIn(source, 'zone')?.value;
  const [, number, band = ''] = value?.kind === 'text' ? (/^(\d{1,2})\s*([a-z]?)$/i.exec(value.text.trim()) ?? []) : [];
  return number === undefined ? null : { zone: Number(number), hemisphere: hemisphereOf(band.toUpperCase()) };
}

function utmOf(source: Source): Place['utm'] {
  const zone = zoneOf(source);
  const easting = metres(quantityIn(source, 'easting'));
  const northing = metres(quantityIn(source, 'northing'));
  return zone && easting !== null && northing !== null ? { ...zone, easting, northing } : null;
}

const isDoubtful = ({ line }: Source): boolean =>
  line.items.some(({ value }) => value.kind === 'quantity' && (value.doubtful || value.approximate));

function readPlace(source: Source): Place {
  const accuracy = itemIn(source, 'accuracy');
  return {
    ...entryOf(source),
    latitude: degrees(quantityIn(source, 'latitude')),
    longitude: degrees(quantityIn(source, 'longitude')),
    utm: utmOf(source),
    datum: wordIn(source, 'datum'),
    accuracy: accuracy ? measureOfValue(source, accuracy.value, metre) : null,
    doubtful: isDoubtful(source),
  };
}

/** The `place` line. */
export const placeFact = remembered(readPlace);
