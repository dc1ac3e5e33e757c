import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfWell } from '../facts.ts';
import { numberText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

/** Chlorine left in the well for less time than the pack asks. */
export const rule: Rule = {
  id: 'disinfection-too-short',
  severity: 'warning',
  title: 'Chlorine left in the well for less time than the pack asks',
  why: 'Chlorine needs time as much as strength.',
  mend: 'Correct the time, or disinfect again and log it.',
  source: 'the pack’s limit; Wisconsin NR 812, and Ontario Reg. 903 from memory',
  crew: 'How long did the chlorine stand?',
  flagged: [
    {
      text: 'rules ontario-903\ndisinfection 100 mg/L, [[2 h]]',
      fixed: 'rules ontario-903\ndisinfection 100 mg/L, 2? h',
    },
  ],
  silent: [
    { text: 'rules ontario-903\ndisinfection 100 mg/L, 12 h' },
    { text: 'rules wisconsin-nr812\ndisinfection 100 mg/L, 2 h' },
    { text: 'rules ontario-903\ndisinfection 100 mg/L' },
    { text: 'disinfection 100 mg/L, 1 h' },
  ],
  check: ({ log, limits }): Report[] => {
    const least = limitGiven(limits, 'chlorine-contact-least', factsOfWell(log));
    const times = log.disinfections.map(({ contact }) => contact);
    if (!least || times.some((each) => (each?.value ?? Number.POSITIVE_INFINITY) >= least.value - 1)) return [];
    return times.flatMap((each) =>
      each === null || each.value === null
        ? []
        : [
            {
              span: each.span,
              doubts: [each],
              message: l10n.t(
                'the chlorine stood for {0} h; at least {1} lets it work; correct the time, or disinfect again and log it',
                numberText(each.value / 3600),
                askedText(least),
              ),
              limit: least.key,
            },
          ],
    );
  },
};
