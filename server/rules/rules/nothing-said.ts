import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { rowById } from '../../../grammar/table.ts';
import type { Line } from '../../../grammar/tree.ts';
import { writeAfter } from '../fixes.ts';
import type { Report, Rule } from '../rule.ts';

const saysNothing = ({ keyword, depths, items, remark, problems }: Line): boolean =>
  keyword !== null &&
  depths === null &&
  items.length === 0 &&
  remark === null &&
  problems.every(({ code }) => code === 'unknown-term') &&
  isLineOfItsOwn(keyword.id);

/** Headers and one-line keywords: a section may be opened by its bare keyword. */
function isLineOfItsOwn(id: string): boolean {
  const { where } = rowById(id);
  return where === 'file' || where === 'line';
}

/** `units` and `rules` take no `?`: nobody at the well knows them better. */
const mayAsk = (id: string): boolean => rowById(id).body !== 'words';

function reportOf({ keyword, problems }: Line, line: number): Report[] {
  if (!keyword) return [];
  const isBare = problems.length === 0;
  const [example = ''] = rowById(keyword.id).example.split('\n');
  return [
    {
      span: spanAt(line, keyword),
      severity: isBare ? 'hint' : 'warning',
      fixes: () =>
        isBare && mayAsk(keyword.id)
          ? [writeAfter(l10n.t('Ask the crew, with ?'), spanAt(line, keyword), '  ?', { preferred: true })]
          : [],
      message: l10n.t(
        'nothing on this line could be read for {0}; write it such as "{1}", or {0} ? to ask the crew',
        keyword.id,
        example,
      ),
    },
  ];
}

/** A keyword with nothing after it that could be read. */
export const rule: Rule = {
  id: 'nothing-said',
  severity: 'warning',
  title: 'A keyword with nothing after it',
  why: 'The line looks as if the fact were recorded, and it is not.',
  mend: 'Write the fact, or `?` where nobody knows it, or remove the line.',
  source: 'the notation',
  flagged: [{ text: '[[began]] yesterday' }, { text: '[[began]]', fixed: 'began  ?' }],
  silent: [{ text: 'began 2026-05-04' }, { text: 'began ?' }, { text: 'hole' }],
  check: ({ tree, linesBesideStrata }) =>
    linesBesideStrata.flatMap((at) => {
      const line = tree.lines[at];
      return line && saysNothing(line) ? reportOf(line, at) : [];
    }),
};
