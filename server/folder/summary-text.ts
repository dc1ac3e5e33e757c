import * as l10n from '@vscode/l10n';
import { show } from '../record/index.ts';
import { depthText, diameterText } from '../rules/messages.ts';
import type { Severity } from '../rules/rule.ts';
import { kindText } from '../rules/strings.ts';
import { type FindingCounts, type NextDue, type StringSummary, severities, type WellSummary } from './summary.ts';

/** `6 days left`, `1 day over`, `today`. */
export function daysLeftText(left: number): string {
  if (left === 0) return l10n.t('today');
  if (left < 0) return left === -1 ? l10n.t('1 day over') : l10n.t('{0} days over', -left);
  return left === 1 ? l10n.t('1 day left') : l10n.t('{0} days left', left);
}

const dueNames: Readonly<Record<NextDue['what'], () => string>> = {
  record: () => l10n.t('record'),
  'copy for the owner': () => l10n.t('copy for the owner'),
  'plugging report': () => l10n.t('plugging report'),
};

/** What has to be sent in, in words. */
export const dueName = (what: NextDue['what']): string => dueNames[what]();

/** `record 2027-01-04 (6 days left)`. */
export const dueText = ({ what, day, left }: NextDue): string =>
  `${dueName(what)} ${day}${left === null ? '' : ` (${daysLeftText(left)})`}`;

const counted: Readonly<Record<Severity, (count: number) => string>> = {
  error: (count) => (count === 1 ? l10n.t('1 error') : l10n.t('{0} errors', count)),
  warning: (count) => (count === 1 ? l10n.t('1 warning') : l10n.t('{0} warnings', count)),
  information: (count) => (count === 1 ? l10n.t('1 information') : l10n.t('{0} information', count)),
  hint: (count) => (count === 1 ? l10n.t('1 hint') : l10n.t('{0} hints', count)),
};

/** `2 errors, 1 hint`; `no findings`. */
export function countsText(counts: FindingCounts): string {
  const parts = severities.flatMap((severity) => {
    const count = counts[severity];
    return count === 0 ? [] : [counted[severity](count)];
  });
  return parts.length === 0 ? l10n.t('no findings') : parts.join(', ');
}

export const placeText = ({ latitude, longitude }: NonNullable<WellSummary['place']>): string =>
  `${latitude.toFixed(5)} ${longitude.toFixed(5)}`;

/** `casing to 7.2 m, 168.3 mm`. */
export function stringText({ kind, bottom, outside }: StringSummary, { units }: WellSummary): string {
  const name = kindText({ kind });
  const whole = bottom === null ? name : l10n.t('{0} to {1}', name, depthText(bottom, units));
  return `${whole}${outside === null ? '' : `, ${diameterText(outside, units)}`}`;
}

export const depthOf = ({ depth, units }: WellSummary): string | null =>
  depth === null ? null : depthText(depth, units);

export const levelOf = ({ level, units }: WellSummary): string | null =>
  level === null ? null : depthText(level.depth, units);

export const yieldOf = (summary: WellSummary): string | null =>
  summary.yield === null ? null : show(summary.yield.rate, 'rate', summary.units).text;
