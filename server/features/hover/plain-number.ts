import * as l10n from '@vscode/l10n';
import { waterOfRatio } from '../../calculations/grout/water-cement-ratio.ts';
import { CEMENT_SACK, centralMeridian, US_GALLON } from '../../calculations/index.ts';
import { numberText } from '../display.ts';

/** Water for each kilogram of cement and for a US sack, of a ratio by mass. */
function waterText(ratio: number): string | null {
  const sack = waterOfRatio(ratio, CEMENT_SACK);
  if (!sack.ok) return null;
  const gallons = numberText(sack.value / US_GALLON);
  return l10n.t('{0} L of water to each kg of cement, {1} US gal to a sack of 94 lb', numberText(ratio), gallons);
}

const notes: Readonly<Record<string, (number: number) => string | null>> = {
  'water-cement': waterText,
  sdr: (ratio) => l10n.t('The outside diameter is {0} times the wall', numberText(ratio)),
};

/** What a number without a unit comes to; null where the number says all. */
export const plainNumberNote = (slot: string, number: number): string | null => notes[slot]?.(number) ?? null;

const seconds = (degrees: number): string => {
  const tenths = Math.round(degrees * 36_000);
  const [whole, rest] = [Math.floor(tenths / 36_000), tenths % 36_000];
  return `${whole}° ${Math.floor(rest / 600)}′ ${(rest % 600) / 10}″`;
};

const letters: Readonly<Record<string, readonly [string, string]>> = { latitude: ['N', 'S'], longitude: ['E', 'W'] };

/** A latitude or a longitude in degrees, minutes and seconds; null for any other number of a place. */
export function angleText(slot: string, number: number, minus: boolean): string | null {
  const letter = letters[slot]?.[minus ? 1 : 0];
  return letter === undefined ? null : `${seconds(number)} ${letter}`;
}

/** What a UTM zone is the zone of. */
export function zoneText(zone: string): string | null {
  const meridian = centralMeridian(Number.parseInt(zone, 10));
  if (!meridian.ok) return null;
  const side = meridian.value < 0 ? 'W' : 'E';
  return l10n.t('Central meridian {0}', `${Math.abs(meridian.value)}° ${side}`);
}
