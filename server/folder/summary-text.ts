import { show } from '../record/index.ts';
import { depthText, diameterText } from '../rules/messages.ts';
import { type FindingCounts, type NextDue, type StringSummary, severities, type WellSummary } from './summary.ts';

/** `6 days left`, `1 day over`, `today`. */
export function daysLeftText(left: number): string {
  if (left === 0) return 'today';
  const days = Math.abs(left);
  return `${days} ${days === 1 ? 'day' : 'days'} ${left < 0 ? 'over' : 'left'}`;
}

/** `record 2027-01-04 (6 days left)`. */
export const dueText = ({ what, day, left }: NextDue): string =>
  `${what} ${day}${left === null ? '' : ` (${daysLeftText(left)})`}`;

const names = {
  error: ['error', 'errors'],
  warning: ['warning', 'warnings'],
  information: ['information', 'information'],
  hint: ['hint', 'hints'],
} as const;

/** `2 errors, 1 hint`; `no findings`. */
export function countsText(counts: FindingCounts): string {
  const parts = severities.flatMap((severity) => {
    const count = counts[severity];
    return count === 0 ? [] : [`${count} ${names[severity][count === 1 ? 0 : 1]}`];
  });
  return parts.length === 0 ? 'no findings' : parts.join(', ');
}

export const placeText = ({ latitude, longitude }: NonNullable<WellSummary['place']>): string =>
  `${latitude.toFixed(5)} ${longitude.toFixed(5)}`;

/** `casing to 7.2 m, 168.3 mm`. */
export function stringText({ kind, bottom, outside }: StringSummary, { units }: WellSummary): string {
  const foot = bottom === null ? '' : ` to ${depthText(bottom, units)}`;
  return `${kind}${foot}${outside === null ? '' : `, ${diameterText(outside, units)}`}`;
}

export const depthOf = ({ depth, units }: WellSummary): string | null =>
  depth === null ? null : depthText(depth, units);

export const levelOf = ({ level, units }: WellSummary): string | null =>
  level === null ? null : depthText(level.depth, units);

export const yieldOf = (summary: WellSummary): string | null =>
  summary.yield === null ? null : show(summary.yield.rate, 'rate', summary.units).text;
