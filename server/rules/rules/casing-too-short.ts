import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { bottomOf } from '../columns.ts';
import { factsOfString, wellCasing } from '../facts.ts';
import { depthText } from '../messages.ts';
import type { Rule } from '../rule.ts';

/** Casing that does not reach as deep as the pack asks. */
export const rule: Rule = {
  id: 'casing-too-short',
  severity: 'warning',
  title: 'Casing shorter than the pack asks',
  why: 'The casing shuts off shallow water. How deep it must go depends in some codes on the rock that it is seated in, and on how near that rock is to the surface.',
  mend: 'Correct the depth of the foot, or ask the authority before the casing is set.',
  source: 'the pack’s limit',
  crew: 'Is the depth of its foot right?',
  flagged: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 32 clay\n  - 200 dolomite\ncasing +1.5 - [[37]] steel 6.625 x 0.28',
      fixed:
        'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 32 clay\n  - 200 dolomite\ncasing +1.5 - 37? steel 6.625 x 0.28',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 12 clay\n  - 200 dolomite\ncasing +1.5 - [[50]] steel 6.625 x 0.28',
    },
    { text: 'rules ontario-903\ncasing +0.45 - [[4.6]] steel 168.3 x 6.4' },
  ],
  silent: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 32 clay\n  - 200 sandstone\ncasing +1.5 - 37 steel 6.625 x 0.28',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\nstrata\n  0 - 12 clay\n  - 90 gravel\ncasing +1.5 - 20 steel 6.625 x 0.28\n  screen 15 - 20 steel 6.625, slot 20',
    },
    { text: 'rules ontario-903\ncasing +0.45 - 6.1 steel 168.3 x 6.4' },
    { text: 'casing +0.45 - 3 steel 168.3 x 6.4' },
  ],
  check: ({ log, limits }) => {
    const casing = wellCasing(log);
    const foot = casing && bottomOf(casing);
    const least = casing && limitGiven(limits, 'casing-depth-least', factsOfString(casing, log));
    if (!casing || !least || foot === null || foot >= least.value - 1e-3) return [];
    return [
      {
        span: casing.interval.bottom?.span ?? casing.span,
        doubts: [casing.interval.bottom],
        message: l10n.t(
          'the casing ends at {0}; it must reach at least {1}, to shut off shallow water; correct the depth, or ask the authority',
          depthText(foot, log.units),
          askedText(least),
        ),
        limit: least.key,
      },
    ];
  },
};
