import * as l10n from '@vscode/l10n';
import { shortened } from '../../messages.ts';
import type { FolderRule } from '../rule.ts';
import { reportsOfSame } from '../same-text.ts';

/** Two logs of a folder with the same tag. */
export const rule: FolderRule = {
  id: 'tag-twice',
  severity: 'warning',
  title: 'The same tag on two wells of the folder',
  why: 'A tag is fixed to one well. Two records with one tag mean that one of them was copied or misread.',
  mend: 'Read the tag on the casing, and correct the log that has it wrong, or put `?`.',
  source: 'common practice, no source',
  flagged: [{ 'a.well': 'well KH-3\ntag [[F 20619]]', 'b.well': 'well KH-4\ntag [[F  20619]]' }],
  silent: [
    { 'a.well': 'tag F 20619', 'b.well': 'tag F 20620' },
    { 'a.well': 'tag F 20619', 'b.well': 'tag ?', 'c.well': 'tag ?' },
    { 'a.well': 'tag F 20619', 'b.well': 'tag F 20619\nexisting 0 - 24.4' },
  ],
  check: ({ wells }) =>
    reportsOfSame(
      wells.filter(({ continues }) => !continues),
      ({ tag }) => tag,
      (text, others) =>
        l10n.t('the tag {0} is also in {1}; read it on the casing and correct one of them', shortened(text), others),
    ),
};
