import type { Finding, Severity } from '../rules/rule.ts';

/** From the gravest down. */
export const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

export const isAtLeast = (severity: Severity, level: Severity): boolean =>
  severities.indexOf(severity) <= severities.indexOf(level);

const names: Readonly<{ [severity in Severity]: readonly [one: string, many: string] }> = {
  error: ['error', 'errors'],
  warning: ['warning', 'warnings'],
  information: ['information', 'information'],
  hint: ['hint', 'hints'],
};

/** `2 errors, 1 hint`; `no findings` where there are none. */
export function countText(findings: readonly Finding[]): string {
  const parts = severities.flatMap((severity) => {
    const count = findings.filter((each) => each.severity === severity).length;
    return count === 0 ? [] : [`${count} ${names[severity][count === 1 ? 0 : 1]}`];
  });
  return parts.length === 0 ? 'no findings' : parts.join(', ');
}
