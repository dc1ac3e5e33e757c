import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfWell } from '../facts.ts';
import { valueText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

/** Disinfection with more chlorine than the pack allows. */
export const rule: Rule = {
  id: 'disinfection-over-strength',
  severity: 'warning',
  title: 'More chlorine than the pack allows',
  why: 'A dose far above what is asked attacks pump and pipe, is harder to flush out, and gives off gas that hurts.',
  mend: 'Correct the strength, or note how it was flushed out before the water was used.',
  source: 'the pack’s limit; Ontario Reg. 903 from memory',
  crew: 'How strong was the chlorine, and how was it flushed out?',
  flagged: [
    {
      text: 'rules ontario-903\ndisinfection [[500 mg/L]], 12 h',
      fixed: 'rules ontario-903\ndisinfection 500? mg/L, 12 h',
    },
  ],
  silent: [{ text: 'rules ontario-903\ndisinfection 200 mg/L, 12 h' }, { text: 'disinfection 500 mg/L, 12 h' }],
  check: ({ log, limits }) => {
    const most = limitGiven(limits, 'chlorine-most', factsOfWell(log));
    return log.disinfections.flatMap(({ strength }): Report[] => {
      if (!most || strength === null || strength.value === null || strength.value <= most.value + 1e-6) return [];
      return [
        {
          span: strength.span,
          doubts: [strength],
          message: l10n.t(
            'disinfected with {0}; at most {1}; correct the strength, or note how it was flushed out',
            valueText(strength.value, 'mg/L'),
            askedText(most),
          ),
          limit: most.key,
        },
      ];
    });
  },
};
