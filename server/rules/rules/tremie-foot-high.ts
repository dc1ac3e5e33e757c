import * as l10n from '@vscode/l10n';
import type { Fill, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

function reportOf(fill: Fill, string: PipeString, { log, limits }: RuleContext): Report[] {
  const most = limitGiven(limits, 'tremie-foot-most', factsOfFill(fill, string, log));
  const [foot, bottom] = [fill.pipeFoot?.value ?? null, fill.interval?.bottom?.value ?? null];
  if (!most || !fill.pipeFoot || foot === null || bottom === null || bottom - foot <= most.value + 1e-3) return [];
  return [
    {
      span: fill.pipeFoot.span,
      doubts: [fill.pipeFoot, fill.interval?.bottom],
      message: l10n.t(
        'the tremie pipe stood at {0}, {1} above the bottom of the {2} at {3}; {4} lets it rise from below without mixing; correct a depth',
        depthText(foot, log.units),
        lengthText(bottom - foot, log.units),
        kindText(fill),
        depthText(bottom, log.units),
        askedText(most),
      ),
      limit: most.key,
    },
  ];
}

/** A tremie pipe that stood too far above the bottom of what it placed. */
export const rule: Rule = {
  id: 'tremie-foot-high',
  severity: 'warning',
  title: 'A tremie pipe too far above the bottom',
  why: 'Grout that falls from the pipe through water thins, and leaves the foot of the annulus unsealed.',
  mend: 'Correct a depth. Next time begin with the pipe near the bottom, and lift it as the grout rises.',
  source: 'the pack’s limit; Minnesota 4725',
  crew: 'How deep did the tremie pipe stand when placing began?',
  flagged: [
    {
      text: 'rules minnesota-4725\nunits ft in\ncasing +1 - 90 steel 6.625 x 0.28\n  grout 0 - 90 neat cement, tremie, pipe at [[70]]',
      fixed:
        'rules minnesota-4725\nunits ft in\ncasing +1 - 90 steel 6.625 x 0.28\n  grout 0 - 90 neat cement, tremie, pipe at 70?',
    },
  ],
  silent: [
    {
      text: 'rules minnesota-4725\nunits ft in\ncasing +1 - 90 steel 6.625 x 0.28\n  grout 0 - 90 neat cement, tremie, pipe at 82',
    },
    {
      text: 'rules minnesota-4725\nunits ft in\ncasing +1 - 90 steel 6.625 x 0.28\n  grout 0 - 90 neat cement, tremie',
    },
    { text: 'casing +1 - 90 steel 168.3 x 6.4\n  grout 0 - 90 neat cement, tremie, pipe at 70' },
  ],
  check: function* (context) {
    for (const string of context.log.strings) for (const fill of string.fills) yield* reportOf(fill, string, context);
  },
};
