import * as l10n from '@vscode/l10n';
import { shortened } from '../../messages.ts';
import type { FolderRule } from '../rule.ts';
import { reportsOfSame } from '../same-text.ts';

/** Two logs of a folder that give their well the same id. */
export const rule: FolderRule = {
  id: 'well-id-twice',
  severity: 'warning',
  title: 'The same well id in two logs of the folder',
  why: 'Whoever looks for the well finds two, and records sent in under one id are mixed up.',
  mend: 'Give each well an id of its own. The log of a well that was deepened says so by its status or an `existing` line, and is let pass.',
  source: 'common practice, no source',
  flagged: [
    { 'a.well': 'well [[KH-3]]', 'b.well': 'well [[kh-3]]' },
    { 'a.well': 'well [[KH-3]]', 'b.well': 'well [[KH-3]]\nstatus abandoned', 'c.well': 'well KH-4' },
  ],
  silent: [
    { 'a.well': 'well KH-3', 'b.well': 'well KH-4' },
    { 'a.well': 'well ?', 'b.well': 'well ?' },
    { 'a.well': 'well KH-3', 'b.well': 'well KH-3\nstatus deepened' },
    {
      'a.well': 'well KH-3 # allow well-id-twice: the pilot hole, b.well is the well',
      'b.well': 'well KH-3 # allow well-id-twice: the pilot hole is in a.well',
    },
  ],
  check: ({ wells }) =>
    reportsOfSame(
      wells.filter(({ continues }) => !continues),
      ({ id }) => id,
      (text, others) =>
        l10n.t(
          'the well id {0} is also in {1}; give each well its own, or say that one log goes on from the other (status deepened)',
          shortened(text),
          others,
        ),
    ),
};
