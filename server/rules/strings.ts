import * as l10n from '@vscode/l10n';
import type { Fill, Measure, PipeString, Stratum, WellLog } from '../model/log.ts';
import type { FillRecord } from '../record/record.ts';
import { bottomOf, topOf } from './columns.ts';
import { intervalText } from './messages.ts';

const metals = new Set(['steel', 'galvanised-steel', 'stainless-steel', 'iron']);

/** True for metal pipe; a string whose material nobody wrote down is taken for steel. */
export const isMetal = ({ material }: PipeString): boolean => material === null || metals.has(material.id);

/** Ways to make a hole in which the casing goes down with the bit. */
const casingFollows = new Set(['dual-rotary', 'casing-hammer', 'casing-advance', 'driven']);

/** How far the foot of a string and the base of the hole that it followed may be apart, in metres. */
const nearFoot = 0.5;

/**
 * Driven and dual-rotary strings stand in the ground itself: they have no annulus. Also those whose hole was made by
 * a way in which the casing follows the bit, down to its foot.
 */
export function isDriven(string: PipeString, { hole }: WellLog): boolean {
  if (string.driven || string.states.some(({ id }) => id === 'driven' || id === 'advanced')) return true;
  const foot = bottomOf(string);
  return hole.some(
    (entry) =>
      entry.methods.some(({ id }) => casingFollows.has(id)) &&
      Math.abs((bottomOf(entry) ?? Number.POSITIVE_INFINITY) - (foot ?? Number.NEGATIVE_INFINITY)) <= nearFoot,
  );
}

/** In French every one of them is masculine and begins with a consonant, so that "le {0}" and "du {0}" hold. */
const kindWords: Readonly<Record<PipeString['kind'] | Fill['kind'], () => string>> = {
  casing: () => l10n.t('casing'),
  liner: () => l10n.t('liner'),
  screen: () => l10n.t('screen'),
  grout: () => l10n.t('grout'),
  seal: () => l10n.t('seal'),
  pack: () => l10n.t('pack'),
  plug: () => l10n.t('plug'),
  abandonment: () => l10n.t('abandonment'),
};

/** What stands in the hole or the annulus, in a sentence. */
export const kindText = ({ kind }: { readonly kind: keyof typeof kindWords }): string => kindWords[kind]();

/** `casing 0 – 7.2 m`. */
export const stringText = (string: PipeString, { units }: WellLog): string =>
  `${kindText(string)} ${intervalText(string.interval, units)}`;

/** Length of a string in metres as it was set, before it was cut; null where an end is not known. */
export function lengthAsSet(string: PipeString): number | null {
  const top = topOf(string);
  const bottom = bottomOf(string);
  if (top === null || bottom === null) return null;
  return bottom - Math.min(top, ...string.cuts.map((cut) => cut.from?.value ?? top));
}

/** The layer that a depth in metres stands in; at a contact, the lower one. */
export function stratumAt({ strata }: WellLog, depth: number): Stratum | null {
  return (
    strata.find((each) => (topOf(each) ?? Number.POSITIVE_INFINITY) <= depth && (bottomOf(each) ?? -1) > depth) ?? null
  );
}

/** The widest hole logged at a depth in metres, in metres; null where none is. */
export function holeDiameterAt({ hole }: WellLog, depth: number): number | null {
  const diameters = hole
    .filter((each) => (topOf(each) ?? Number.POSITIVE_INFINITY) < depth && (bottomOf(each) ?? -1) >= depth)
    .map((each) => each.diameter?.value ?? 0);
  const widest = Math.max(0, ...diameters);
  return widest > 0 ? widest : null;
}

/** True where the fill has something placed to seal with. */
export const isSeal = ({ kind }: Fill): boolean => kind === 'grout' || kind === 'seal';

export interface PlacedFill {
  readonly string: PipeString;
  readonly fill: Fill;
  readonly record: FillRecord;
}

/** The fills around strings that have an annulus, each with what was reckoned of it. */
export function placedFills(log: WellLog, records: readonly FillRecord[]): PlacedFill[] {
  const byPlace = new Map(records.map((record) => [`${record.kind} ${record.line}`, record]));
  return log.strings
    .filter((string) => !isDriven(string, log))
    .flatMap((string) =>
      string.fills.flatMap((fill) => {
        const record = byPlace.get(`${fill.kind} ${fill.line}`);
        return record ? [{ string, fill, record }] : [];
      }),
    );
}

/** Where a string's size stands: the size, else the string's line. */
export const sizeSpan = (string: PipeString) => string.size.span ?? string.span;

/** Where a volume or other measure stands, else the whole fill. */
export const spanOf = (measure: Measure | null, fill: Fill) => measure?.span ?? fill.span;

/** Narrower than any water well: a figure in another unit, from which nothing more should be concluded. */
export const isTooNarrow = (diameter: number): boolean => diameter < 0.03;

/** True where a volume is some thousand times its annulus: a slip of unit, and no lost grout. */
export const isThousandfold = (volume: number, annulus: number): boolean =>
  volume >= 300 * annulus && volume <= 5000 * annulus;
