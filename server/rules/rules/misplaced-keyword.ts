import * as l10n from '@vscode/l10n';
import { writeBefore } from '../fixes.ts';
import { ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Fix, Rule } from '../rule.ts';

const messageOf = ({ written, facts }: ProblemOnLine): string =>
  facts.sections
    ? l10n.t(
        '{0} belongs under {1}, and none is open above it; move the line, or add what it hangs on',
        written,
        facts.sections.split(', ').reduce((all, each) => l10n.t('{0} or {1}', all, each)),
      )
    : l10n.t(
        '{0} opens a section only before a depth, or alone on its line; put what follows on the next line',
        written,
      );

/** What opens a section of which nothing more is known. */
const openings: Readonly<Record<string, string>> = { casing: 'casing  ? - ?  ?', test: 'test  ?' };

/** Opens the first of the sections that the keyword may hang on, above it, with `?` for all that is not known of it. */
function openAbove({ line, facts }: ProblemOnLine, text: string): Fix[] {
  const [section] = facts.sections?.split(', ') ?? [];
  if (section === undefined) return [];
  const opening = openings[section] ?? section;
  return [writeBefore(l10n.t('Put "{0}" above it', opening), line, text, `${opening}\n  `)];
}

/** A keyword where nothing is open that it could hang on. */
export const rule: Rule = {
  id: 'misplaced-keyword',
  severity: 'error',
  title: 'A keyword out of its place',
  why: 'What the line says cannot be given to a string or a section, so it is not read.',
  mend: 'Move the line below the `casing` (or the section) that it belongs to.',
  source: 'the notation',
  flagged: [{ text: '[[shoe]] 7.2', fixed: 'casing  ? - ?  ?\n  shoe 7.2' }, { text: '[[rate]] 60 L/min' }],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
    { text: 'test pump 40 L/min\n  0 5.2\n  rate 60 L/min' },
  ],
  check: ofProblem('misplaced-keyword', {
    message: (problem) => messageOf(problem),
    fixes: openAbove,
  }),
};
