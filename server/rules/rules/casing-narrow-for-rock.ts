import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { nominalDiameterOf } from '../../record/strings/nominal-diameter.ts';
import { askedText } from '../asked.ts';
import { factsOfString, wellCasing } from '../facts.ts';
import { diameterText } from '../messages.ts';
import type { Rule } from '../rule.ts';
import { isTooNarrow, sizeSpan } from '../strings.ts';

/** Casing narrower than the pack asks. */
export const rule: Rule = {
  id: 'casing-narrow-for-rock',
  severity: 'warning',
  title: 'Casing narrower than the pack asks in rock',
  why: 'A wide casing leaves room to drill on through it, to seal it and to fit a pump.',
  mend: 'Correct the size: the limit is a nominal one.',
  source: 'the pack’s limit; Wisconsin NR 812',
  crew: 'What size is the casing?',
  flagged: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 12 clay\n  - 200 granite\ncasing +1.5 - 50 steel [[4.5 x 0.237]]',
      fixed:
        'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 12 clay\n  - 200 granite\ncasing +1.5 - 50 steel 4.5? x 0.237',
    },
  ],
  silent: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 12 clay\n  - 200 granite\ncasing +1.5 - 50 steel 6.625 x 0.28',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 12 clay\n  - 90 gravel\ncasing +1.5 - 90 steel 4.5 x 0.237\n  screen 80 - 90 steel 4.5, slot 20',
    },
  ],
  check: ({ log, limits }) => {
    const casing = wellCasing(log);
    const size = casing && (nominalDiameterOf(casing) ?? casing.size.outsideDiameter);
    const least = casing && limitGiven(limits, 'casing-size-least', factsOfString(casing, log));
    if (!casing || !least || size === null || isTooNarrow(size) || size >= least.value - 1e-4) return [];
    return [
      {
        span: sizeSpan(casing),
        doubts: [casing.size.outside ?? casing.size.nominal],
        message: l10n.t(
          'the casing is {0} across; at least {1} leaves room to drill on and to seal; correct the size, or ask the authority',
          diameterText(size, log.units),
          askedText(least),
        ),
        limit: least.key,
      },
    ];
  },
};
