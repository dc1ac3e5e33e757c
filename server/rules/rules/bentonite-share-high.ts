import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { valueText } from '../messages.ts';
import type { Rule } from '../rule.ts';
import { kindText } from '../strings.ts';

/** Cement grout with more bentonite than the pack allows. */
export const rule: Rule = {
  id: 'bentonite-share-high',
  severity: 'warning',
  title: 'More bentonite in the cement than the pack allows',
  why: 'A little bentonite keeps cement from settling in the mix; much of it takes more water, and leaves the grout weak.',
  mend: 'Correct the share. It is counted by mass of the cement.',
  source: 'the pack’s limit; Michigan R 325.1603a and Washington WAC 173-160',
  crew: 'How much bentonite went into the mix?',
  flagged: [
    {
      text: 'rules michigan-r325\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 cement-bentonite, bentonite [[8 %]]',
      fixed:
        'rules michigan-r325\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 cement-bentonite, bentonite 8? %',
    },
  ],
  silent: [
    {
      text: 'rules michigan-r325\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 cement-bentonite, bentonite 5 %',
    },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 cement-bentonite, bentonite 8 %' },
  ],
  check: function* ({ log, limits }) {
    for (const string of log.strings)
      for (const fill of string.fills) {
        const share = fill.bentonite?.value ?? null;
        const most = limitGiven(limits, 'bentonite-share-most', factsOfFill(fill, string, log));
        if (!most || !fill.bentonite || share === null || share <= most.value + 1e-4) continue;
        yield {
          span: fill.bentonite.span,
          doubts: [fill.bentonite],
          message: l10n.t(
            '{0} with {1} of bentonite by mass of the cement; at most {2} leaves it strong enough; correct the share',
            kindText(fill),
            valueText(share, '%'),
            askedText(most),
          ),
          limit: most.key,
        };
      }
  },
};
