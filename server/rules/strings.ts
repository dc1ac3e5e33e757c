import type { Fill, Measure, PipeString, Stratum, WellLog } from '../model/log.ts';
import type { FillRecord } from '../record/record.ts';
import { bottomOf, topOf } from './columns.ts';
import { intervalText } from './messages.ts';

const plastics = /pvc|plastic|abs|polyethylene|hdpe|fibreglass|fiberglass/;

export const isPlastic = ({ material }: PipeString): boolean => material !== null && plastics.test(material.id);

/** Driven and dual-rotary strings stand in the ground itself: they have no annulus. */
export const isDriven = ({ driven, states }: PipeString): boolean =>
  driven || states.some(({ id }) => id.includes('driven') || id.includes('rotary'));

/** A string that stays in the well. */
export const isPermanent = ({ temporary, pulled }: PipeString): boolean => !temporary && pulled === null;

/** `casing 0 – 7.2 m`. */
export const stringText = (string: PipeString, { units }: WellLog): string =>
  `${string.kind} ${intervalText(string.interval, units)}`;

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
    .filter((string) => !isDriven(string))
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
