import * as l10n from '@vscode/l10n';
import type { WaterFound } from '../../model/log.ts';
import { sameDepth } from '../columns.ts';
import { depthText } from '../messages.ts';
import type { Rule } from '../rule.ts';

const deepest = ({ depth, interval }: WaterFound) => interval?.bottom ?? depth;

/** Water found deeper than the hole. */
export const rule: Rule = {
  id: 'water-beyond-bottom',
  severity: 'error',
  title: 'Water found deeper than the hole',
  why: 'Water cannot be met below the bottom of the hole: one of the two depths is wrong.',
  mend: 'Correct the depth of the water, or log the hole down to it.',
  source: 'geometry',
  crew: 'At what depth did the water come in?',
  flagged: [
    {
      text: 'hole\n  0 - 61 152\nwater\n  38.5 fresh, 25 L/min\n  [[64]] fresh, 15 L/min',
      fixed: 'hole\n  0 - 61 152\nwater\n  38.5 fresh, 25 L/min\n  64? fresh, 15 L/min',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\nwater\n  38.5 fresh, 25 L/min\n  61 fresh, 15 L/min' },
    { text: 'water\n  64 fresh, 15 L/min' },
  ],
  check: function* ({ log }) {
    const total = log.totalDepth;
    for (const found of log.water.found) {
      const depth = deepest(found);
      if (total === null || !depth || depth.value === null || depth.value <= total + sameDepth) continue;
      yield {
        span: depth.span,
        doubts: [depth],
        message: l10n.t(
          'water is logged at {0}, below the bottom of the hole at {1}; correct this depth, or log the hole down to it',
          depthText(depth.value, log.units),
          depthText(total, log.units),
        ),
      };
    }
  },
};
