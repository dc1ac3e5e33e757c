import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { rowById } from '../../../grammar/table.ts';
import type { Keyword } from '../../../grammar/tree.ts';
import { writeBefore } from '../fixes.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const manyTimes = new Set(['distance', 'shift', 'existing', 'photo', 'note']);
const onceForAString = new Set(['shoe']);

/** True for a line that opens a string; a screen that hangs on the string above opens none. */
const opensString = (keyword: Keyword, section: string | null): boolean =>
  keyword.id === 'casing' || keyword.id === 'liner' || (keyword.id === 'screen' && section === 'screen');

const isOnceForAFile = (id: string): boolean => !manyTimes.has(id) && rowById(id).where === 'file';

interface First {
  readonly keyword: Keyword;
  readonly line: number;
}

const twiceInFile = (keyword: string, line: number): string =>
  l10n.t(
    '{0} stands twice in this file; the first counts, on line {1}, and this one is left out; remove one of the two',
    keyword,
    line,
  );

const twiceOnString: typeof twiceInFile = (keyword, line) =>
  l10n.t(
    '{0} stands twice under one string; the first counts, on line {1}, and this one is left out; remove one of the two',
    keyword,
    line,
  );

const reportOf = (keyword: Keyword, line: number, first: First, words: typeof twiceInFile, text: string): Report => ({
  fixes: () => [writeBefore(l10n.t('Make this line a comment'), line, text, '# ')],
  span: spanAt(line, keyword),
  message: words(keyword.id, first.line + 1),
  related: [{ span: spanAt(first.line, first.keyword), message: l10n.t('the first, which counts') }],
});

function* repeated({ tree, linesBesideStrata }: RuleContext): Generator<Report> {
  const inFile = new Map<string, First>();
  let onString = new Map<string, First>();
  for (const line of linesBesideStrata) {
    const { keyword = null, section = null, text = '' } = tree.lines[line] ?? {};
    if (!keyword) continue;
    if (opensString(keyword, section)) onString = new Map();
    const isFile = isOnceForAFile(keyword.id);
    if (!isFile && !onceForAString.has(keyword.id)) continue;
    const seen = isFile ? inFile : onString;
    const first = seen.get(keyword.id);
    if (first) yield reportOf(keyword, line, first, isFile ? twiceInFile : twiceOnString, text);
    else seen.set(keyword.id, { keyword, line });
  }
}

/** A keyword given twice where one counts. */
export const rule: Rule = {
  id: 'second-keyword',
  severity: 'warning',
  title: 'A keyword that stands twice where one counts',
  why: 'The first one counts and the second is left out of the record; they may disagree.',
  mend: 'Remove one of the two.',
  source: 'the notation',
  flagged: [
    { text: 'well KH-04\n[[well]] KH-05', fixed: 'well KH-04\n# well KH-05' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  [[shoe]] 7.2' },
  ],
  silent: [
    { text: 'note one\nnote two' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  joints 6.1\n  joints 1.55' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\ncasing +0.3 - 40 steel 114.3 x 6\n  shoe 40' },
  ],
  check: repeated,
};
