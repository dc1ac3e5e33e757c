import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfWell } from '../facts.ts';
import { valueText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

/** Disinfection with less chlorine than the pack asks. */
export const rule: Rule = {
  id: 'disinfection-under-strength',
  severity: 'warning',
  title: 'Less chlorine than the pack asks',
  why: 'Too weak a dose does not kill what the work carried into the well.',
  mend: 'Correct the strength, or disinfect again and log it. Chlorine hurts: follow its label, keep air moving, and let nobody lean over the well.',
  source: 'the pack’s limit; Wisconsin NR 812, and Ontario Reg. 903 from memory',
  crew: 'How strong was the chlorine?',
  flagged: [
    {
      text: 'rules wisconsin-nr812\ndisinfection [[50 mg/L]], 2 h',
      fixed: 'rules wisconsin-nr812\ndisinfection 50? mg/L, 2 h',
    },
  ],
  silent: [
    { text: 'rules wisconsin-nr812\ndisinfection 100 mg/L, 2 h' },
    { text: 'rules wisconsin-nr812\ndisinfection 50 mg/L, 2 h\ndisinfection 120 mg/L, 2 h' },
    { text: 'disinfection 50 mg/L, 2 h' },
  ],
  check: ({ log, limits }): Report[] => {
    const least = limitGiven(limits, 'chlorine-least', factsOfWell(log));
    const strengths = log.disinfections.map(({ strength }) => strength);
    if (!least || strengths.some((each) => (each?.value ?? Number.POSITIVE_INFINITY) >= least.value - 1e-6)) return [];
    return strengths.flatMap((each) =>
      each === null || each.value === null
        ? []
        : [
            {
              span: each.span,
              doubts: [each],
              message: l10n.t(
                'disinfected with {0}; at least {1} kills what the work carried in; correct the strength, or disinfect again and log it',
                valueText(each.value, 'mg/L'),
                askedText(least),
              ),
              limit: least.key,
            },
          ],
    );
  },
};
