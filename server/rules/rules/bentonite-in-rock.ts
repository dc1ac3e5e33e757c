import * as l10n from '@vscode/l10n';
import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { topOf } from '../columns.ts';
import { factsOfFill, firstRock } from '../facts.ts';
import { depthText, intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

function reportOf(fill: Fill, string: PipeString, { log, limits }: RuleContext): Report[] {
  const most = limitGiven(limits, 'bentonite-in-rock-most', factsOfFill(fill, string, log));
  const rock = firstRock(log);
  const [top, bottom] = [rock && topOf(rock), fill.interval?.bottom?.value ?? null];
  if (!most || !rock || !fill.interval || top === null || bottom === null || bottom <= top + most.value + 1e-3)
    return [];
  return [
    {
      span: fill.material?.span ?? fill.span,
      doubts: [fill.interval.bottom, rock.interval.top],
      message: l10n.t(
        '{0} {1} is {2}, and rock begins at {3}: {4}; correct the material or a depth, or log the cement below',
        kindText(fill),
        intervalText(fill.interval, log.units),
        fill.material?.name ?? 'bentonite',
        depthText(top, log.units),
        askedText(most),
      ),
      related: [{ span: rock.interval.span, message: l10n.t('rock begins here') }],
      limit: most.key,
    },
  ];
}

/** Bentonite grout in rock, where the pack bars it. */
export const rule: Rule = {
  id: 'bentonite-in-rock',
  severity: 'warning',
  title: 'Bentonite grout in rock, where the pack bars it',
  why: 'Bentonite grout stays soft. In fractured rock moving water washes it out, where cement stays.',
  mend: 'Correct the material or a depth; log the cement that stands in the rock.',
  source: 'the pack’s limit; Minnesota 4725',
  crew: 'What was placed there, and down to what depth?',
  flagged: [
    {
      text: 'rules minnesota-4725\nunits ft in\nstrata\n  0 - 40 clay\n  - 200 limestone\ncasing +1 - 60 steel 6.625 x 0.28\n  grout 0 - 60 [[bentonite slurry]], tremie',
      fixed:
        'rules minnesota-4725\nunits ft in\nstrata\n  0 - 40 clay\n  - 200 limestone\ncasing +1 - 60 steel 6.625 x 0.28\n  grout 0 - 60? bentonite slurry, tremie',
    },
  ],
  silent: [
    {
      text: 'rules minnesota-4725\nunits ft in\nstrata\n  0 - 40 clay\n  - 200 limestone\ncasing +1 - 60 steel 6.625 x 0.28\n  grout 0 - 40 bentonite slurry, tremie\n  grout 40 - 60 neat cement, tremie',
    },
    {
      text: 'strata\n  0 - 12 clay\n  - 60 limestone\ncasing +0.45 - 18 steel 168.3 x 6.4\n  grout 0 - 18 bentonite slurry',
    },
  ],
  check: function* (context) {
    for (const string of context.log.strings)
      for (const fill of string.fills)
        if (fill.fillClass === 'bentonite-slurry') yield* reportOf(fill, string, context);
  },
};
