import * as l10n from '@vscode/l10n';
import type { Measure, Moment } from '../model/log.ts';
import { fix } from './fixes.ts';
import type { Fix, Report } from './rule.ts';

/** A value that a finding rests on, and that may be the one that is wrong. */
export type Doubtable = Measure | Moment;

const valuesOf = ({ doubts = [] }: Report): readonly Doubtable[] =>
  doubts.filter((each) => each !== null && each !== undefined);

/** True where one of the values that a finding rests on is marked as doubtful: the crew is asked already. */
export const isAsked = (report: Report): boolean => valuesOf(report).some(({ doubtful }) => doubtful);

const isMeasure = (value: Doubtable): value is Measure => 'written' in value;

/** A plain number with its signs, and a unit after it or nothing. */
const plainFigure = /^[~<>+-]*\d*\.?\d+(?=\s*(?:[a-z%°³²/]|$))/i;

/** Where the `?` goes in a value: behind its number, or behind the whole of a date or of feet and inches. */
function markAt(value: Doubtable): number {
  const figure = isMeasure(value) ? plainFigure.exec(value.written)?.[0] : undefined;
  return figure === undefined ? value.span.end : value.span.start + figure.length;
}

const isKnown = (value: Doubtable): boolean =>
  isMeasure(value) ? value.number !== null && value.high === null : value.date !== null;

const nameOf = (value: Doubtable): string => (isMeasure(value) ? value.written : `${value.date}`);

function doubtFix(value: Doubtable): Fix {
  const at = markAt(value);
  return fix(l10n.t('Mark {0} as doubtful, to ask the crew', nameOf(value)), [
    { span: { line: value.span.line, start: at, end: at }, text: '?' },
  ]);
}

/** For each value that a finding rests on, a fix that marks it as doubtful; each place once. */
export function doubtFixes(report: Report): readonly Fix[] {
  const places = new Map(
    valuesOf(report)
      .filter(isKnown)
      .map((value) => [`${value.span.line}:${value.span.start}`, value] as const),
  );
  return [...places.values()].map(doubtFix);
}
