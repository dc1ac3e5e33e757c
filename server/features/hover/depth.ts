import { type Unit, unitById } from '../../../grammar/units.ts';
import type { Depth, Interval } from '../../model/log.ts';
import type { Amount } from '../amounts.ts';
import { inBothSystems } from '../display.ts';
import { depthsIn, entryOf, intervalsIn } from '../entries.ts';
import type { HoverPlace } from './source.ts';

const both = (metres: number, unit: Unit): string => inBothSystems(metres, unit).join(' = ');

const depthUnit = (place: HoverPlace): Unit | null => unitById(place.snapshot.log.units.depth) ?? null;

function groundLine(depth: Depth, unit: Unit): string | null {
  if (depth.value === null || (depth.datum === 'bgs' && !depth.td)) return null;
  const side = depth.value < 0 ? 'above' : 'below';
  return `${both(Math.abs(depth.value), unit)} ${side} ground`;
}

const elevationLine = (depth: number, ground: number | null, unit: Unit): string | null =>
  ground === null ? null : `Elevation ${both(ground - depth, unit)}`;

function topOfCasingLine(depth: number, top: number | null, unit: Unit): string | null {
  if (top === null) return null;
  const below = depth + top;
  return `${both(Math.abs(below), unit)} ${below < 0 ? 'above' : 'below'} the top of the casing`;
}

function thicknessLine({ top, bottom }: Interval, unit: Unit): string | null {
  if (top?.value == null || bottom?.value == null) return null;
  return `Interval of ${both(bottom.value - top.value, unit)}`;
}

const holds = (span: { start: number; end: number }, { quantity }: Amount): boolean =>
  span.start <= quantity.start && quantity.end <= span.end;

/** What is known of a depth: its interval's thickness, its elevation, and its place against the top of the casing. */
export function depthLines(amount: Amount, place: HoverPlace): readonly (string | null)[] {
  const { log, record } = place.snapshot;
  const { line } = place.at;
  const entry = amount.role === 'depth' && place.line.row !== null ? entryOf(log, place.line.row, line) : null;
  const unit = depthUnit(place);
  if (entry === null || unit === null) return [];
  const depth = depthsIn(entry, line).find((each) => holds(each.span, amount));
  if (depth?.value == null) return [];
  const interval = intervalsIn(entry, line).find((each) => each.top === depth || each.bottom === depth);
  return [
    groundLine(depth, unit),
    interval === undefined ? null : thicknessLine(interval, unit),
    elevationLine(depth.value, log.ground?.elevation?.value ?? null, unit),
    topOfCasingLine(depth.value, record.topOfCasing, unit),
  ];
}
