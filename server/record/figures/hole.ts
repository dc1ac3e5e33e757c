import type { Formula } from '../../calculations/formula.ts';
import { figureOf } from '../figure.ts';
import { depthOf } from '../ingredient.ts';
import { bottomOf } from '../intervals.ts';
import type { Family } from './family.ts';

const about: Formula = {
  name: 'depth of the hole',
  text: 'the deepest base logged under hole',
  source: 'the log',
  range: null,
  caution: null,
};

/** `hole.depth`. */
export const holeFigures: Family = ({ log }) => {
  const deepest = log.hole.find((entry) => bottomOf(entry.interval) === log.totalDepth && log.totalDepth !== null);
  const at = deepest ?? log.hole[0];
  if (!at) return [];
  return [
    figureOf(
      {
        id: 'hole.depth',
        title: 'depth of the hole',
        shown: 'length',
        formula: about,
        ingredients: [depthOf('deepest base', at.interval.bottom, at.line, 'the depth of the hole')],
        compute: (depth) => depth,
        digits: 'sum',
        at,
      },
      log.units,
    ),
  ];
};
