import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { valueText } from '../messages.ts';
import type { Rule } from '../rule.ts';
import { kindText } from '../strings.ts';

/** A bentonite slurry with fewer solids than the pack asks. */
export const rule: Rule = {
  id: 'solids-too-low',
  severity: 'warning',
  title: 'A bentonite slurry with fewer solids than the pack asks',
  why: 'A thin slurry settles and dries out, and leaves the top of the annulus open.',
  mend: 'Correct the share of solids as it was mixed, by mass.',
  source: 'the pack’s limit; Ontario Reg. 903 from memory',
  crew: 'How was the slurry mixed?',
  flagged: [
    {
      text: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 bentonite slurry, [[12 %]] solids',
      fixed: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 bentonite slurry, 12? % solids',
    },
  ],
  silent: [
    { text: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 bentonite slurry, 20 % solids' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 bentonite slurry, 12 % solids' },
  ],
  check: function* ({ log, limits }) {
    for (const string of log.strings)
      for (const fill of string.fills) {
        const share = fill.solids?.value ?? null;
        const least = limitGiven(limits, 'solids-least', factsOfFill(fill, string, log));
        if (!least || !fill.solids || fill.fillClass !== 'bentonite-slurry') continue;
        if (share === null || share >= least.value - 1e-4) continue;
        yield {
          span: fill.solids.span,
          doubts: [fill.solids],
          message: l10n.t(
            '{0} with {1} solids by mass; at least {2} keeps it from settling; correct the share as it was mixed',
            kindText(fill),
            valueText(share, '%'),
            askedText(least),
          ),
          limit: least.key,
        };
      }
  },
};
