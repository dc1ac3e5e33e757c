import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** `#10` with no word that says slot or sieve. */
export const rule: Rule = {
  id: 'slot-word-missing',
  severity: 'error',
  title: 'A slot or sieve number without its word',
  why: '`#10` is a width of slot, or a sieve; without the word nobody can tell.',
  mend: 'Write `slot #10`.',
  source: 'the notation',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3 [[#10]]',
      fixed: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3 slot #10',
    },
  ],
  silent: [{ text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3 slot #10' }],
  check: ofProblem('slot-word-missing', {
    message: ({ written, meant }) =>
      `${l10n.t('{0} is a slot or a sieve number, and needs the word before it', written)}${didYouMean(meant)}`,
  }),
};
