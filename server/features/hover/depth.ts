import * as l10n from '@vscode/l10n';
import { type Unit, unitById } from '../../../grammar/units.ts';
import { belowTop, elevationOf } from '../../calculations/index.ts';
import type { Depth, Interval } from '../../model/log.ts';
import type { Amount } from '../amounts.ts';
import { areSame, placeSlots } from '../depths.ts';
import { inBothSystems } from '../display.ts';
import { depthsIn, entryOf, intervalsIn, leadingInterval } from '../entries.ts';
import { touchesSpan } from '../position.ts';
import type { HoverPlace } from './source.ts';

const both = (metres: number, unit: Unit): string => inBothSystems(metres, unit).join(' = ');

const depthUnit = (place: HoverPlace): Unit | null => unitById(place.snapshot.log.units.depth) ?? null;

const isPlaceInHole = ({ role, slot }: Amount): boolean =>
  role === 'depth' && (slot === null || placeSlots.has(slot.slot));

/** What the log keeps of the line under the cursor. */
function entryAt({ snapshot, line, at }: HoverPlace): object | null {
  return line.row === null ? null : entryOf(snapshot.log, line.row, at.line);
}

/** The depths that most lines begin with, where an entry of the log keeps them. */
function leadingDepths(entry: object): readonly (Depth | null)[] {
  const interval = leadingInterval(entry);
  return interval === null ? [] : [interval.top, interval.bottom];
}

/** The depth of the log that a number on the line stands for; null for a length that is no place in the hole. */
export function depthOf(amount: Amount, place: HoverPlace): Depth | null {
  const entry = isPlaceInHole(amount) ? entryAt(place) : null;
  if (entry === null) return null;
  const { start, end } = amount.quantity;
  const { line } = place.at;
  const isHere = (depth: Depth | null): depth is Depth =>
    depth !== null && depth.span.line === line && depth.span.start <= start && end <= depth.span.end;
  return leadingDepths(entry).find(isHere) ?? depthsIn(entry, line).find(isHere) ?? null;
}

/** True for a reading of another well, of which neither the ground nor the casing is that of this log. */
function isOfAnotherWell(place: HoverPlace): boolean {
  if (place.line.row !== 'test.line') return false;
  const { tests } = place.snapshot.log;
  return tests.some(({ observed }) =>
    observed.some(({ phases }) => phases.some(({ readings }) => readings.some(({ line }) => line === place.at.line))),
  );
}

/** True for a number that stands in the place of a level and is a drawdown, as the line above says. */
export function isDrawdown({ quantity, slot }: Amount, place: HoverPlace): boolean {
  const entry = slot?.slot === 'level' ? entryAt(place) : null;
  const drawdown = entry !== null && 'drawdown' in entry ? (entry.drawdown as Depth | null) : null;
  return drawdown !== null && drawdown.span.start <= quantity.start && quantity.end <= drawdown.span.end;
}

/** What a depth of the log is counted from. */
export function countedFrom({ datum, td, value }: Depth): string {
  if (td) return l10n.t('the bottom of the hole');
  if (datum === 'toc') return l10n.t('depth below the top of the casing');
  return value !== null && value < 0 ? l10n.t('height above ground') : l10n.t('depth below ground');
}

function groundLine({ value, datum, td }: Depth, unit: Unit): string | null {
  if (value === null || (datum === 'bgs' && !td)) return null;
  const shown = both(Math.abs(value), unit);
  return value < 0 ? l10n.t('{0} above ground', shown) : l10n.t('{0} below ground', shown);
}

function elevationLine({ value, approximate, doubtful }: Depth, { snapshot }: HoverPlace, unit: Unit): string | null {
  const ground = snapshot.log.ground?.elevation ?? null;
  if (value === null || ground?.value == null) return null;
  const shown = both(elevationOf(ground.value, value), unit);
  const isAbout = [approximate, doubtful, ground.approximate, ground.doubtful].includes(true);
  return isAbout ? l10n.t('Elevation about {0}', shown) : l10n.t('Elevation {0}', shown);
}

function topOfCasingLine({ value, datum, number, unit: written }: Depth, place: HoverPlace, unit: Unit): string | null {
  const top = place.snapshot.record.topOfCasing;
  if (value === null || top === null) return null;
  const below = belowTop(value, top);
  const says = unitById(written)?.factor ?? Number.NaN;
  if (datum === 'toc' && areSame(below, (number ?? Number.NaN) * says)) return null;
  if (areSame(below, 0)) return l10n.t('At the top of the casing');
  const shown = both(Math.abs(below), unit);
  if (datum === 'toc' && below > 0) return l10n.t('{0} below the top of the casing as it was left', shown);
  return below < 0
    ? l10n.t('{0} above the top of the casing', shown)
    : l10n.t('{0} below the top of the casing', shown);
}

const thicknessText = ({ top, bottom }: Pick<Interval, 'top' | 'bottom'>, unit: Unit): string | null =>
  top?.value == null || bottom?.value == null
    ? null
    : l10n.t('Interval of {0}', both(Math.abs(bottom.value - top.value), unit));

function thicknessLine(depth: Depth, place: HoverPlace, unit: Unit): string | null {
  const entry = entryAt(place);
  if (entry === null) return null;
  const ends = ({ top, bottom }: Interval): boolean => top === depth || bottom === depth;
  const leading = leadingInterval(entry);
  const interval = leading !== null && ends(leading) ? leading : intervalsIn(entry, place.at.line).find(ends);
  return interval === undefined ? null : thicknessText(interval, unit);
}

/** What is known of a depth: its interval's thickness, its elevation, and its place against the top of the casing. */
export function depthLines(depth: Depth, place: HoverPlace): readonly (string | null)[] {
  const unit = depthUnit(place);
  if (unit === null || depth.value === null || isOfAnotherWell(place)) return [];
  return [
    groundLine(depth, unit),
    thicknessLine(depth, place, unit),
    elevationLine(depth, place, unit),
    topOfCasingLine(depth, place, unit),
  ];
}

/** The depths on either side of a dash. */
function depthsBeside(entry: object, line: number, dash: number): Pick<Interval, 'top' | 'bottom'> {
  const depths = depthsIn(entry, line).filter(({ span }) => span.line === line);
  return {
    top: depths.findLast(({ span }) => span.end <= dash) ?? null,
    bottom: depths.find(({ span }) => span.start > dash) ?? null,
  };
}

/** How thick the interval is whose dash stands at a column, and where its upper end comes from. */
export function intervalLines(dash: number, place: HoverPlace): readonly (string | null)[] {
  const unit = depthUnit(place);
  const entry = entryAt(place);
  if (unit === null || entry === null) return [];
  const { line } = place.at;
  const interval = intervalsIn(entry, line).find(({ span }) => touchesSpan(span, { line, column: dash }));
  if (interval === undefined) return [thicknessText(depthsBeside(entry, line, dash), unit)];
  const { top } = interval;
  return [
    thicknessText(interval, unit),
    interval.continued && top !== null && top.value !== null
      ? l10n.t('It begins at the base above: {0} (line {1})', both(top.value, unit), top.span.line + 1)
      : null,
  ];
}
