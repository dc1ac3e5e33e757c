import type { PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { bottomOf } from '../columns.ts';
import { factsOfString, wellCasing } from '../facts.ts';
import { fix, lineAfter } from '../fixes.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';
import { isMetal } from '../strings.ts';

const isBare = ({ shoe }: PipeString): boolean => shoe === null || shoe.kinds.some(({ id }) => id === 'no-shoe');

/** Casing without the shoe that the pack asks for. */
export const rule: Rule = {
  id: 'shoe-required-by-pack',
  severity: 'warning',
  title: 'No shoe where the pack asks for one',
  why: 'The shoe keeps the foot of the casing whole and round as it is driven or turned into its seat.',
  mend: 'Log the shoe. Where nobody knows, `shoe ?` keeps the question.',
  source: 'the pack’s limit; Maine Ch. 232, Wisconsin NR 812, Quebec Q-2, r. 6 (since replaced)',
  flagged: [
    {
      text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\n  - 200 6\ncasing +1 - [[40]] steel 6.625 x 0.28',
      fixed:
        'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\n  - 200 6\ncasing +1 - 40 steel 6.625 x 0.28\n  shoe  ?',
    },
    { text: 'rules wisconsin-nr812\nunits ft in\ncasing +1 - [[120]] steel 6.625 x 0.28 welded' },
  ],
  silent: [
    {
      text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\n  - 200 6\ncasing +1 - 40 steel 6.625 x 0.28\n  shoe 40 coupling',
    },
    { text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 cable tool\ncasing +1 - 40 steel 6.625 x 0.28' },
    { text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\ncasing +1 - 40 pvc 4.5 x 0.237' },
    { text: 'rules wisconsin-nr812\nunits ft in\ncasing +1 - 60 steel 6.625 x 0.28 welded' },
  ],
  check: ({ log, limits, tree }): Report[] => {
    const casing = wellCasing(log);
    const foot = casing && bottomOf(casing);
    const beyond = casing && limitGiven(limits, 'shoe-beyond', factsOfString(casing, log));
    if (!casing || !beyond || foot === null || foot <= beyond.value + 1e-3) return [];
    if (!isBare(casing) || !isMetal(casing) || casing.screens.length > 0) return [];
    const line = lineAfter(casing.line, tree.lines[casing.line]?.text ?? '', 'shoe  ?');
    return [
      {
        span: casing.interval.bottom?.span ?? casing.span,
        message: `no shoe is logged at ${depthText(foot, log.units)}: ${askedText(beyond)}; log it, or shoe ? to ask the crew`,
        limit: beyond.key,
        fixes: () =>
          casing.shoe === null ? [fix('Add a shoe line with ?, to ask the crew', [line], { preferred: true })] : [],
      },
    ];
  },
};
