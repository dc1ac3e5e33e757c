import * as l10n from '@vscode/l10n';
import type { Depth, Fill, WellLog } from '../../model/log.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';
import { kindText } from '../strings.ts';

const pumpable = new Set(['cement', 'bentonite-slurry', 'concrete']);

/** The highest level of the water in the ground; null where none is logged. */
function waterIn({ water }: WellLog): Depth | null {
  return water.levels.reduce<Depth | null>((high, { level }) => {
    if (level?.value == null) return high;
    return (high?.value ?? Number.POSITIVE_INFINITY) <= level.value ? high : level;
  }, null);
}

function reportOf({ kind, placement, interval }: Fill, water: Depth, { units }: WellLog): Report[] {
  const bottom = interval?.bottom?.value ?? null;
  if (!placement || bottom === null || water.value === null || bottom <= water.value + 0.3) return [];
  return [
    {
      span: placement.span,
      doubts: [interval?.bottom, water],
      message: l10n.t(
        'this {0} was let fall to {1}, and the water stands at {2}: grout that falls through water thins and parts; log the tremie pipe if there was one, or correct a depth',
        kindText({ kind }),
        depthText(bottom, units),
        depthText(water.value, units),
      ),
      related: [{ span: water.span, message: l10n.t('the water, at {0}', depthText(water.value, units)) }],
    },
  ];
}

/** Grout let fall from the surface through water. */
export const rule: Rule = {
  id: 'gravity-through-water',
  severity: 'warning',
  title: 'Grout let fall through water',
  why: 'Cement and slurry that fall through water are washed out, and what settles seals little.',
  mend: 'Log the tremie pipe if there was one, note that the annulus was dry, or correct a depth.',
  source: 'common practice; most codes bar it',
  crew: 'How was the grout placed, and how high did the water stand in the annulus?',
  flagged: [
    {
      text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  grout 0 - 12 neat cement, [[gravity]]\nwater\n  level 4',
      fixed: 'casing +0.45 - 12 steel 168.3 x 6.4\n  grout 0 - 12? neat cement, gravity\nwater\n  level 4',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  grout 0 - 12 neat cement, tremie\nwater\n  level 4' },
    { text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  grout 0 - 3 neat cement, gravity\nwater\n  level 4' },
    { text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  seal 0 - 12 bentonite chips, gravity\nwater\n  level 4' },
    { text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  grout 0 - 12 neat cement, gravity' },
  ],
  check: ({ log }) => {
    const water = waterIn(log);
    if (water === null) return [];
    return log.strings
      .flatMap(({ fills }) => fills)
      .filter(({ fillClass, placement }) => pumpable.has(fillClass ?? '') && placement?.id === 'gravity')
      .flatMap((fill) => reportOf(fill, water, log));
  },
};
