import * as l10n from '@vscode/l10n';
import { capital } from '../../drawing/words.ts';
import type { WellLog } from '../../model/log.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import { type Asked, type CrewQuestion, parts, type WrittenLine } from './question.ts';
import { type Spot, spotsOf } from './spots.ts';

type Question = WellLog['questions'][number];

/** A question before it has its number; `column` orders those of one line. */
interface Draft extends Omit<CrewQuestion, 'number' | 'about'> {
  readonly column: number;
  readonly about: string;
}

/** A line without the remark of the writer to himself. */
const withoutComment = (text: string): string => text.replace(/(^|\s)#(\s.*)?$/, '').trim();

const writtenIn = (lines: readonly string[], line: number): WrittenLine => ({
  line,
  text: withoutComment(lines[line] ?? '').replace(/\s+/g, ' '),
});

const headSpot = (line: number): Spot => ({ line, part: 'well', depth: null, about: '', beside: [] });

function placed(spot: Spot, lines: readonly string[]): Omit<Draft, 'column' | 'says' | 'asks'> {
  const { part, depth, about, line, beside } = spot;
  return {
    part,
    depth,
    about,
    written: writtenIn(lines, line),
    beside: beside.map((each) => writtenIn(lines, each)).filter(({ text }) => text !== ''),
  };
}

/** `grout` of `grout: volume placed`. */
const keywordOf = (what: string): string => what.replace(/:.*$/, '');

/** `volume placed` of `grout: volume placed`, in the language of the window. */
const factOf = (what: string): string => l10n.t(what.replace(/^[^:]*: /, ''));

function saidOf({ what, kind, span }: Question, lines: readonly string[]): { says: string; asks: string } {
  const fact = factOf(what);
  if (kind === 'unknown') return { says: l10n.t('Not written down: {0}.', fact), asks: l10n.t('What was it?') };
  const written = (lines[span.line] ?? '').slice(span.start, span.end).replace(/\s+/g, ' ');
  const says =
    written === ''
      ? l10n.t('Marked as doubtful: {0}.', fact)
      : l10n.t('Marked as doubtful: {0}, "{1}".', fact, written);
  return { says, asks: l10n.t('Is it right, and if not, what was it?') };
}

/** A finding's message without its last clause, which tells the writer of the log what to do. */
const withoutAdvice = (message: string): string => {
  const end = message.lastIndexOf('; ');
  return `${capital(end < 0 ? message : message.slice(0, end))}.`;
};

const place = (value: number | null): number => value ?? Number.NEGATIVE_INFINITY;

const inOrder = (a: Draft, b: Draft): number =>
  parts.indexOf(a.part) - parts.indexOf(b.part) ||
  (a.part === 'hole' && place(a.depth) !== place(b.depth) ? (place(a.depth) < place(b.depth) ? -1 : 1) : 0) ||
  a.written.line - b.written.line ||
  a.column - b.column;

/**
 * Everything that only those who were at the well can answer: each `?`, each doubtful value, and each finding that
 * asks the crew something. Down the hole in the order of depth, what has no depth first; the rest in the order of the
 * file. `lines` are those of the log; without them no question shows what was written.
 */
export function questionsFor(
  { log }: WellRecord,
  findings: readonly Asked[],
  lines: readonly string[],
): readonly CrewQuestion[] {
  const spots = spotsOf(log);
  const at = (line: number) => placed(spots.get(line) ?? headSpot(line), lines);
  const open = log.questions
    .filter(({ kind }) => kind !== 'approximate')
    .map((each): Draft => {
      const where = at(each.span.line);
      const about = where.about || l10n.t(keywordOf(each.what));
      return { ...where, about, column: each.span.start, ...saidOf(each, lines) };
    });
  const found = findings.flatMap(({ message, span, crew }): Draft[] =>
    crew ? [{ ...at(span.line), column: span.start, says: withoutAdvice(message), asks: l10n.t(crew) }] : [],
  );
  return [...open, ...found].sort(inOrder).map(({ column: _, ...question }, index) => ({
    ...question,
    number: index + 1,
    about: question.about || l10n.t('the log'),
  }));
}
