import * as l10n from '@vscode/l10n';
import { nearest } from '../../../grammar/terms/index.ts';
import type { TextField, WellLog } from '../../model/log.ts';
import { overwrite } from '../fixes.ts';
import { didYouMean, shortened } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

interface Said {
  readonly list: 'use' | 'status';
  readonly field: TextField;
}

/** Uses and the status that are kept as text because no term of their list fits. */
function keptAsText({ uses, status }: WellLog): Said[] {
  const said = [
    ...uses.map((field) => ({ list: 'use' as const, field })),
    ...(status ? [{ list: 'status' as const, field: status }] : []),
  ];
  return said.flatMap(({ list, field }) => ('text' in field && field.text !== '?' ? [{ list, field }] : []));
}

const unknownText = ({ list, field }: Said): string =>
  list === 'use'
    ? l10n.t('"{0}" is no use known here; it is kept as written', shortened(field.text))
    : l10n.t('"{0}" is no status known here; it is kept as written', shortened(field.text));

function reportOf(said: Said): Report {
  const { text, span } = said.field;
  const near = nearest(text, [said.list], 3).map(({ term }) => term.name);
  return {
    span,
    message: `${unknownText(said)}${didYouMean(near)}`,
    fixes: () => near.map((name, index) => overwrite(span, name, { preferred: index === 0 })),
  };
}

/** A use or a status that its list does not know. */
export const rule: Rule = {
  id: 'unknown-use-or-status',
  severity: 'hint',
  title: 'A use or a status that is not known',
  why: 'It is kept as written, but rules that go by the use or the status of a well do not see it.',
  mend: 'Take one of the terms offered, where one fits.',
  source: 'the lists of terms',
  flagged: [{ text: 'use [[domestc]]', fixed: 'use domestic' }],
  silent: [{ text: 'use domestic\nstatus dry' }, { text: 'use ?' }],
  check: ({ log }) => keptAsText(log).map(reportOf),
};
