import type { Arguments } from './command.ts';
import { type Option, valueOption } from './command.ts';
import { Unusable } from './unusable.ts';
import type { World } from './world.ts';

export const todayOption: Option = valueOption(
  'today',
  'YYYY-MM-DD',
  'the day to check dates against (default: today)',
);

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.slice(0, 10) === text;

/** A day of the calendar as YYYY-MM-DD. @throws Unusable naming where it was given */
export function dayFrom(text: string, where: string): string {
  if (isDay(text)) return text;
  throw new Unusable(`${where} takes a day of the calendar as YYYY-MM-DD; "${text}" is none`);
}

export function todayFrom(given: Arguments, world: World): string {
  const written = given.value('today');
  return written === null ? world.today : dayFrom(written, '--today');
}
