import * as l10n from '@vscode/l10n';
import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

const poured = new Set(['gravity', 'gravity-tremie']);
const pumpable = new Set(['cement', 'bentonite-slurry', 'concrete']);

function reportOf(fill: Fill, string: PipeString, { log, limits }: RuleContext): Report[] {
  const { interval, placement } = fill;
  const most = limitGiven(limits, 'gravity-depth-most', factsOfFill(fill, string, log));
  const bottom = interval?.bottom?.value ?? null;
  if (!most || !interval || !placement || bottom === null || bottom <= most.value + 1e-3) return [];
  return [
    {
      span: placement.span,
      doubts: [interval.bottom],
      message: l10n.t(
        '{0} {1} was placed by {2}: {3}, since grout that falls far thins and bridges; correct how it was placed, or the depth',
        kindText(fill),
        intervalText(interval, log.units),
        placement.name,
        askedText(most),
      ),
      limit: most.key,
    },
  ];
}

/** Grout let fall deeper than the pack allows. */
export const rule: Rule = {
  id: 'gravity-placement-too-deep',
  severity: 'warning',
  title: 'Grout placed by gravity deeper than the pack allows',
  why: 'Grout that falls through the annulus mixes with what stands there and bridges, so that it leaves gaps that nobody sees.',
  mend: 'Correct how it was placed. Next time pump it through a tremie pipe from the bottom.',
  source: 'the pack’s limit; Minnesota 4725 for dumping, Wisconsin NR 812 for a tremie filled by gravity',
  crew: 'How was it placed, and from what depth?',
  flagged: [
    {
      text: 'rules minnesota-4725\nunits ft in\ncasing +1 - 30 steel 6.625 x 0.28\n  grout 0 - 30 neat cement, [[gravity]]',
      fixed:
        'rules minnesota-4725\nunits ft in\ncasing +1 - 30 steel 6.625 x 0.28\n  grout 0 - 30? neat cement, gravity',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\ncasing +1 - 120 steel 6.625 x 0.28\n  grout 0 - 120 neat cement, [[gravity tremie]]',
    },
  ],
  silent: [
    {
      text: 'rules minnesota-4725\nunits ft in\ncasing +1 - 30 steel 6.625 x 0.28\n  grout 0 - 30 neat cement, tremie',
    },
    {
      text: 'rules minnesota-4725\nunits ft in\ncasing +1 - 30 steel 6.625 x 0.28\n  seal 0 - 30 bentonite chips, gravity',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\ncasing +1 - 90 steel 6.625 x 0.28\n  grout 0 - 90 neat cement, gravity tremie',
    },
  ],
  check: function* (context) {
    for (const string of context.log.strings)
      for (const fill of string.fills)
        if (pumpable.has(fill.fillClass ?? '') && poured.has(fill.placement?.id ?? ''))
          yield* reportOf(fill, string, context);
  },
};
