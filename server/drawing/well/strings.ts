import type { Interval, PipeString, Screen } from '../../model/log.ts';
import type { Extent } from '../depth-window.ts';
import { filled, line, outlined, type Part, rect, type Shape, type Style, stroked } from '../shapes.ts';
import { capital, intervalWithUnit, listed, measureText, sizeText, termText, wordsText, wordText } from '../words.ts';
import { bothSides, part, type Side, type WellFrame, xAt, yAt } from './frame.ts';
import { type DrawnString, extentOf } from './geometry.ts';

/* A wall thinner than this on the page would not be seen, in mm. */
const thinnestWall = 0.5;

const solidWall = filled('ink');
const openWall = outlined('paper', 'ink', 0.18);
const temporaryWall: Style = { ...stroked('ink', 0.3, [1.4, 0.9]), fill: null };
const unsureWall: Style = { ...stroked('doubt', 0.3, [0.8, 0.6]), fill: 'paper' };

export const wallWidth = (frame: WellFrame, drawn: DrawnString): number =>
  Math.max(((drawn.outer - drawn.inner) / 2) * frame.mmAcross, thinnestWall);

/** The left edge of the wall on a side. */
export function wallLeft(frame: WellFrame, drawn: DrawnString, side: Side): number {
  const outside = xAt(frame, drawn.outer, side);
  return side < 0 ? outside : outside - wallWidth(frame, drawn);
}

function wallRect(frame: WellFrame, drawn: DrawnString, { top, bottom }: Extent, side: Side, style: Style): Shape {
  const y = yAt(frame, top);
  return rect(wallLeft(frame, drawn, side), y, wallWidth(frame, drawn), yAt(frame, bottom) - y, style);
}

function wallStyle(drawn: DrawnString): Style {
  if (drawn.string.temporary) return temporaryWall;
  return drawn.sizeKnown ? solidWall : unsureWall;
}

function boreRect(frame: WellFrame, drawn: DrawnString): Shape[] {
  if (drawn.string.temporary) return [];
  const [left, right] = [xAt(frame, drawn.outer, -1), xAt(frame, drawn.outer, 1)];
  const top = yAt(frame, drawn.top);
  return [rect(left, top, right - left, yAt(frame, drawn.bottom) - top, filled('paper'))];
}

/** A string in words: kind, place, material, size, joint, state. */
export function stringTitle(string: PipeString, unit: string): string {
  const size = sizeText(string.size) || 'size ?';
  const pulled = string.pulled === null ? '' : 'pulled';
  const what = listed([
    [wordText(string.material), size].filter(Boolean).join(' '),
    termText(string.joint),
    wordsText(string.states),
    pulled,
  ]);
  return `${capital(string.kind)} ${string.number}, ${intervalWithUnit(string.interval, unit)}: ${what}`;
}

/** The walls of every string, the widest first. */
export const stringPart = (frame: WellFrame, drawn: DrawnString): Part =>
  part(
    drawn.string.temporary ? 'string-temporary' : 'string',
    drawn.string.line,
    stringTitle(drawn.string, frame.unit),
    [...boreRect(frame, drawn), ...bothSides((side) => [wallRect(frame, drawn, drawn, side, wallStyle(drawn))])],
  );

const slotApart = 0.9;
const slot = stroked('ink', 0.22);

function slotLines(frame: WellFrame, drawn: DrawnString, extent: Extent, side: Side): Shape[] {
  const [top, bottom] = [yAt(frame, extent.top), yAt(frame, extent.bottom)];
  const left = wallLeft(frame, drawn, side);
  const count = Math.floor((bottom - top) / slotApart);
  return Array.from({ length: count }, (_, n) => {
    const y = top + (n + 0.5) * slotApart;
    return line(
      [
        [left, y],
        [left + wallWidth(frame, drawn), y],
      ],
      slot,
    );
  });
}

const slotted = (frame: WellFrame, drawn: DrawnString, extent: Extent): Shape[] =>
  bothSides((side) => [wallRect(frame, drawn, extent, side, openWall), ...slotLines(frame, drawn, extent, side)]);

/* A screen needs a wall that its slots can be seen in, in mm. */
const screenWall = 1.1;

/** The screen as wide as the notes say, else as its string. */
function asScreen(frame: WellFrame, drawn: DrawnString, outside: number | null): DrawnString {
  const outer =
    outside !== null && Number.isFinite(outside) && outside > 0 ? Math.min(outside, frame.well.widest) : drawn.outer;
  return { ...drawn, outer, inner: outer - (2 * screenWall) / frame.mmAcross };
}

/** A screen in words: place, material, size, slot. */
export function screenTitle(screen: Screen, unit: string): string {
  const slots = screen.slot === null ? '' : `slot ${measureText(screen.slot)}`;
  return `Screen ${intervalWithUnit(screen.interval, unit)}: ${listed([wordText(screen.material), sizeText(screen.size), wordsText(screen.kinds), slots]) || '?'}`;
}

function slottedPart(
  frame: WellFrame,
  drawn: DrawnString,
  interval: Interval,
  lineNumber: number,
  title: string,
): Part[] {
  const extent = extentOf(interval, frame.scale.window);
  return extent === null ? [] : [part('screen', lineNumber, title, slotted(frame, drawn, extent))];
}

/** Screens and perforated stretches of a string. */
export function screenParts(frame: WellFrame, drawn: DrawnString): Part[] {
  const { string } = drawn;
  const screens = string.screens.flatMap((screen) =>
    slottedPart(
      frame,
      asScreen(frame, drawn, screen.size.outsideDiameter),
      screen.interval,
      screen.line,
      screenTitle(screen, frame.unit),
    ),
  );
  const perforated = string.perforated.flatMap((interval) =>
    slottedPart(
      frame,
      asScreen(frame, drawn, null),
      interval,
      interval.span.line,
      `Perforated ${intervalWithUnit(interval, frame.unit)}`,
    ),
  );
  const whole =
    string.kind === 'screen'
      ? slottedPart(frame, asScreen(frame, drawn, null), string.interval, string.line, stringTitle(string, frame.unit))
      : [];
  return [...whole, ...perforated, ...screens];
}
