import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { askedText } from '../asked.ts';
import { factsOfString } from '../facts.ts';
import { diameterText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';
import { sizeSpan } from '../strings.ts';

/** Half a hundredth of a millimetre: less than the digits of a table of pipe. */
const rounding = 5e-6;

/** Casing with a thinner wall than the pack asks. */
export const rule: Rule = {
  id: 'wall-too-thin',
  severity: 'warning',
  title: 'A casing wall thinner than the pack asks',
  why: 'Thin steel rusts through, dents as it is driven, and gives way under the weight of the grout.',
  mend: 'Correct the wall as the pipe is marked. A nominal size with its schedule gives the wall of the table.',
  source: 'the pack’s limit; Maine Ch. 232, and Ontario Reg. 903 from memory',
  crew: 'What wall is marked on the pipe?',
  flagged: [
    {
      text: 'rules maine-232\nunits ft in\ncasing +1.5 - 40 steel [[6.625 x 0.188]] welded',
      fixed: 'rules maine-232\nunits ft in\ncasing +1.5 - 40 steel 6.625 x 0.188? welded',
    },
    { text: 'rules ontario-903\ncasing +0.45 - 7.2 steel [[168.3 x 4.5]] welded' },
  ],
  silent: [
    { text: 'rules maine-232\nunits ft in\ncasing +1.5 - 40 steel 6.625 x 0.25 welded' },
    { text: 'rules maine-232\nunits ft in\ncasing +1.5 - 40 pvc 4.5 x 0.173' },
    { text: 'rules ontario-903\ncasing +0.45 - 7.2 steel 168.3' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 4.5 welded' },
  ],
  check: ({ log, limits }) =>
    log.strings.filter(isPermanent).flatMap((string): Report[] => {
      const wall = string.size.wallThickness;
      const least = limitGiven(limits, 'wall-least', factsOfString(string, log));
      if (string.kind !== 'casing' || !least || wall === null || wall >= least.value - rounding) return [];
      return [
        {
          span: sizeSpan(string),
          doubts: [string.size.wall ?? string.size.outside ?? string.size.nominal],
          message: l10n.t(
            'the wall of the casing is {0}; at least {1} lasts; correct the wall as the pipe is marked',
            diameterText(wall, log.units),
            askedText(least),
          ),
          limit: least.key,
        },
      ];
    }),
};
