import * as l10n from '@vscode/l10n';
import type { Stratum, WellLog, Word } from '../../model/log.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { depthText, intervalText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

const airy = new Set(['air', 'air-water', 'mist', 'foam', 'air-rotary', 'down-the-hole-hammer']);

const isAiry = ({ id }: Word): boolean => airy.has(id);

/** True where the well was drilled with air, and never with anything that holds a hole open. */
function isDrilledWithAir({ hole, drilling }: WellLog): boolean {
  const words = [
    ...hole.flatMap(({ methods }) => methods),
    ...drilling.flatMap((each) => [...each.flush, ...each.methods, ...each.intervals.flatMap(({ flush }) => flush)]),
  ];
  return words.length > 0 && words.every(isAiry);
}

const looseKinds = /(^|-)(sand|gravel)(-|$)/;

const isLoose = ({ ground, principal }: Stratum): boolean =>
  ground !== null && !ground.rock && looseKinds.test(principal?.id ?? '');

/** The highest water that the log tells of, in metres; null where it tells of none. */
function waterTop({ water }: WellLog): number | null {
  const levels = water.levels.flatMap(({ level }) => level?.value ?? []);
  return levels.length === 0 ? null : Math.min(...levels);
}

const isCased = ({ strings }: WellLog, top: number, bottom: number): boolean =>
  strings.some((each) => (topOf(each) ?? 1e9) <= top + sameDepth && (bottomOf(each) ?? -1e9) >= bottom - sameDepth);

function reportsOf(stratum: Stratum, water: number, log: WellLog): Report[] {
  const [top, bottom] = [topOf(stratum), bottomOf(stratum)];
  if (top === null || bottom === null || bottom <= water || isCased(log, Math.max(top, water), bottom)) return [];
  return [
    {
      span: stratum.interval.span,
      doubts: [stratum.interval.top, stratum.interval.bottom],
      message: l10n.t(
        '{0} is {1} below the water at {2}, drilled with air, and no casing stands there: such ground does not stay open; log the casing or the mud, or correct the ground',
        intervalText(stratum.interval, log.units),
        stratum.principal?.name ?? '?',
        depthText(water, log.units),
      ),
    },
  ];
}

/** Sand or gravel below water, drilled with air and left without casing. */
export const rule: Rule = {
  id: 'open-hole-in-loose-ground',
  severity: 'information',
  title: 'An open hole in sand or gravel below water',
  why: 'Sand and gravel under water run into a hole that neither casing nor mud holds open.',
  mend: 'Log the casing, the liner or the mud, or correct the description of the ground.',
  source: 'common practice, no source',
  crew: 'Did the hole stay open there, and what holds it?',
  flagged: [
    {
      text: 'hole\n  0 - 40 152 air rotary\nstrata\n  0 - 10 clay\n  [[- 40]] sand\ncasing +0.5 - 12 steel 168.3 x 6.4\nwater\n  level 5',
      fixed:
        'hole\n  0 - 40 152 air rotary\nstrata\n  0 - 10? clay\n  - 40 sand\ncasing +0.5 - 12 steel 168.3 x 6.4\nwater\n  level 5',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 40 152 air rotary\nstrata\n  0 - 10 clay\n  - 40 limestone\ncasing +0.5 - 12 steel 168.3 x 6.4\nwater\n  level 5',
    },
    {
      text: 'hole\n  0 - 40 152 air rotary\nstrata\n  0 - 10 clay\n  - 40 sand\ncasing +0.5 - 40 steel 168.3 x 6.4\nwater\n  level 5',
    },
    {
      text: 'hole\n  0 - 40 152 mud rotary\nstrata\n  0 - 10 clay\n  - 40 sand\ncasing +0.5 - 12 steel 168.3 x 6.4\nwater\n  level 5',
    },
    { text: 'hole\n  0 - 40 152 air rotary\nstrata\n  0 - 40 sand\nwater\n  level 5' },
  ],
  check: ({ log }) => {
    const water = waterTop(log);
    if (water === null || log.strings.length === 0 || !isDrilledWithAir(log)) return [];
    return log.strata.filter(isLoose).flatMap((each) => reportsOf(each, water, log));
  },
};
