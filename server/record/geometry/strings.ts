import { remembered } from '../../../grammar/remembered.ts';
import type { Period, PipeSize, PipeString, Screen } from '../../model/log.ts';
import { bottomOf, inDoubt, intervalInDoubt, type Stretch, stretchOf, topOf } from '../intervals.ts';
import { type Layer, layered } from './layers.ts';
import { endOf, orderOf, startOf } from './moments.ts';

/** More strings than any well has. */
export const mostStrings = 64;
export const tooManyStrings = `no more than ${mostStrings} strings in one file`;

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

/** True where a size of pipe is in doubt. */
export const sizeInDoubt = ({ outside, wall, inside, nominal, schedule, sdr }: PipeSize): boolean =>
  [outside, wall, inside, nominal, schedule, sdr].some(inDoubt);

/** True where the depths or the size of a string, or of a screen on it, are in doubt. */
export const stringInDoubt = remembered(({ interval, size, screens }: PipeString): boolean =>
  [{ interval, size }, ...screens].some((part) => intervalInDoubt(part.interval) || sizeInDoubt(part.size)),
);

/** The stretch that a string and the screens on it take up; null where its depths are not known. */
export const extentOf = remembered((string: PipeString): Stretch | null => {
  const own = stretchOf(string.interval);
  if (!own) return null;
  let { top, bottom } = own;
  for (const { interval } of string.screens) {
    const screen = stretchOf(interval);
    top = Math.min(top, screen?.top ?? top);
    bottom = Math.max(bottom, screen?.bottom ?? bottom);
  }
  return { top, bottom };
});

export interface Outside {
  /** m; null where it was not written down. */
  readonly outside: number | null;
}

/** The outside of a string from the top down, without overlap: its screens with their own diameter, else the pipe. */
export const outsidesOf = remembered((string: PipeString): Layer<Outside>[] =>
  layered([
    ...string.screens.flatMap((screen) => layerOf(screen, outsideOfScreen(screen, string))),
    ...layerOf(string, string.size.outsideDiameter),
  ]),
);

function layerOf(part: PipeString | Screen, outside: number | null): Layer<Outside>[] {
  const stretch = stretchOf(part.interval);
  return stretch ? [{ ...stretch, of: { outside } }] : [];
}

/** Outside diameter of a screen in metres; the string's own where none was written for it. */
export const outsideOfScreen = (screen: Screen, string: PipeString): number | null =>
  screen.size.outsideDiameter ?? string.size.outsideDiameter;

/** `casing 1`, as the record calls a string. */
export const nameOf = (string: PipeString): string => `${string.kind} ${string.number}`;

/** Depth of the foot in metres, screens included; null where it is not known. */
export const footOf = (string: PipeString): number | null => extentOf(string)?.bottom ?? bottomOf(string.interval);

/** Depth of the top in metres; null where it is not known. */
export const headOf = (string: PipeString): number | null => topOf(string.interval);
