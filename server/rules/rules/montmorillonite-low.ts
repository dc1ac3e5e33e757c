import * as l10n from '@vscode/l10n';
import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

/** The text asks for more than its figure, not for as much. */
function reportOf(fill: Fill, string: PipeString, { log, limits }: RuleContext): Report[] {
  const least = limitGiven(limits, 'montmorillonite-least', factsOfFill(fill, string, log));
  const share = fill.montmorillonite?.value ?? null;
  if (!least || !fill.montmorillonite || share === null || share > least.value + 1e-9) return [];
  return [
    {
      span: fill.montmorillonite.span,
      doubts: [fill.montmorillonite],
      message: l10n.t(
        'the bentonite of this {0} has {1} montmorillonite: {2}, which is what swells; correct the share as the bag says',
        kindText(fill),
        valueText(share, '%'),
        askedText(least),
      ),
      limit: least.key,
    },
  ];
}

/** Bentonite with too little of what swells. */
export const rule: Rule = {
  id: 'montmorillonite-low',
  severity: 'warning',
  title: 'Bentonite with less montmorillonite than the pack asks',
  why: 'It is the sodium montmorillonite in bentonite that swells and seals; other clays sold under that name do not.',
  mend: 'Correct the share as the bag or the maker’s sheet says.',
  source: 'the pack’s limit; ministry bulletin on Ontario Regulation 903, April 2011',
  crew: 'What does the bag say of the bentonite?',
  flagged: [
    {
      text: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  seal 0 - 7.2 bentonite chips, montmorillonite [[50 %]]',
      fixed:
        'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  seal 0 - 7.2 bentonite chips, montmorillonite 50? %',
    },
  ],
  silent: [
    {
      text: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  seal 0 - 7.2 bentonite chips, montmorillonite 85 %',
    },
    { text: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  seal 0 - 7.2 bentonite chips' },
  ],
  check: (context) =>
    context.log.strings.flatMap((string) => string.fills.flatMap((fill) => reportOf(fill, string, context))),
};
