import * as l10n from '@vscode/l10n';
import type { Moment, Period } from '../../../grammar/tree.ts';
import { midnight } from '../../calculations/dates/days.ts';

const weekdays = (): readonly string[] => [
  l10n.t('Sunday'),
  l10n.t('Monday'),
  l10n.t('Tuesday'),
  l10n.t('Wednesday'),
  l10n.t('Thursday'),
  l10n.t('Friday'),
  l10n.t('Saturday'),
];

const months = (): readonly string[] => [
  l10n.t('January'),
  l10n.t('February'),
  l10n.t('March'),
  l10n.t('April'),
  l10n.t('May'),
  l10n.t('June'),
  l10n.t('July'),
  l10n.t('August'),
  l10n.t('September'),
  l10n.t('October'),
  l10n.t('November'),
  l10n.t('December'),
];

function dayText(day: number): string {
  const at = new Date(day);
  const [weekday = '', month = ''] = [weekdays()[at.getUTCDay()], months()[at.getUTCMonth()]];
  return l10n.t('{0}, {1} {2} {3}', weekday, at.getUTCDate(), month, at.getUTCFullYear());
}

/** A date in words, a time of day as it stands; null for a date that no calendar has. */
export function momentText({ date, time }: Moment): string | null {
  const day = midnight(date ?? '');
  if (day === null) return date === null ? time : null;
  return time === null ? dayText(day) : `${dayText(day)}, ${time}`;
}

/** Minutes as hours and minutes: `1 h 30 min`. */
export function durationText(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

const minute = 60_000;

function instantOf({ date, time }: Moment): number | null {
  const day = midnight(date ?? '');
  const [hours, minutes] = (time ?? '').split(':').map(Number);
  return day === null || hours === undefined || minutes === undefined ? null : day + (hours * 60 + minutes) * minute;
}

function lengthOf(from: Moment, to: Moment): string {
  const [begun, ended] = [instantOf(from), instantOf(to)];
  return begun === null || ended === null || ended < begun ? '' : ` (${durationText((ended - begun) / minute)})`;
}

/** Both ends of a period, the day once where it is the same, and how long it is. */
export function periodText({ from, to }: Period): string | null {
  const ended = { ...to, date: to.date ?? from.date };
  const last = to.time !== null && ended.date === from.date ? to.time : momentText(ended);
  const ends = [momentText(from), last].filter((text) => text !== null);
  return ends.length === 0 ? null : `${ends.join(' – ')}${lengthOf(from, ended)}`;
}
