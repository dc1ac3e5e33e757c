import { countsOf } from '../folder/summary.ts';
import { countsText } from '../folder/summary-text.ts';
import type { Finding, Severity } from '../rules/rule.ts';

/** From the gravest down. */
export const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

export const isAtLeast = (severity: Severity, level: Severity): boolean =>
  severities.indexOf(severity) <= severities.indexOf(level);

/** `2 errors, 1 hint`; `no findings` where there are none. */
export const countText = (findings: readonly Finding[]): string => countsText(countsOf(findings));
