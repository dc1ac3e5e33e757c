import type { Period, PipeString, Screen } from '../../model/log.ts';
import { bottomOf, type Stretch, stretchOf, topOf } from '../intervals.ts';
import type { Layer } from './layers.ts';
import { endOf, orderOf, startOf } from './moments.ts';

/** Whether a string stands in the hole while something is placed. */
export type Standing = 'stands' | 'gone' | 'unclear';

/**
 * A string that was pulled before the work began, or set after it ended, is gone. For a temporary string the log has to
 * say which came first.
 */
export function standingDuring(string: PipeString, work: Period | null): Standing {
  if (orderOf(endOf(work), string.set) === 'before' && string.set?.date !== endOf(work)?.date) return 'gone';
  if (!string.temporary && string.pulled === null) return 'stands';
  const pulled = orderOf(string.pulled, startOf(work));
  if (pulled === 'unclear') return 'unclear';
  return pulled === 'before' ? 'gone' : 'stands';
}

/** The stretch that a string and the screens on it take up; null where its depths are not known. */
export function extentOf(string: PipeString): Stretch | null {
  const parts = [string.interval, ...string.screens.map((screen) => screen.interval)].map(stretchOf);
  const known = parts.filter((part) => part !== null);
  if (known.length === 0 || parts[0] === null) return null;
  return {
    top: Math.min(...known.map((part) => part.top)),
    bottom: Math.max(...known.map((part) => part.bottom)),
  };
}

/** The outside of a string from the top down: its screens with their own diameter, then the pipe. */
export function outsidesOf(string: PipeString): Layer<{ readonly outside: number | null }>[] {
  const screens = string.screens.flatMap((screen) => layerOf(screen, outsideOfScreen(screen, string)));
  return [...screens, ...layerOf(string, string.size.outsideDiameter)];
}

const layerOf = (part: PipeString | Screen, outside: number | null): Layer<{ readonly outside: number | null }>[] => {
  const stretch = stretchOf(part.interval);
  return stretch ? [{ ...stretch, of: { outside } }] : [];
};

/** Outside diameter of a screen in metres; the string's own where none was written for it. */
export const outsideOfScreen = (screen: Screen, string: PipeString): number | null =>
  screen.size.outsideDiameter ?? string.size.outsideDiameter;

/** `casing 1`, as the record calls a string. */
export const nameOf = (string: PipeString): string => `${string.kind} ${string.number}`;

/** Depth of the foot in metres, screens included; null where it is not known. */
export const footOf = (string: PipeString): number | null => extentOf(string)?.bottom ?? bottomOf(string.interval);

/** Depth of the top in metres; null where it is not known. */
export const headOf = (string: PipeString): number | null => topOf(string.interval);
