import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { factsOfString, firstRock, rockOf, wellCasing } from '../facts.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Rule } from '../rule.ts';

/** Casing that ends above the rock in which the open hole goes on. */
export const rule: Rule = {
  id: 'casing-not-in-rock',
  severity: 'warning',
  title: 'Casing that ends above the rock that the hole goes on in',
  why: 'Between the foot of the casing and the rock the hole stands open in loose ground: it caves, and shallow water comes in.',
  mend: 'Correct the foot of the casing or the top of rock, or log the liner or the screen that stands below.',
  source:
    'common practice, no source; where a pack says how far into rock the casing must go, that is told in its place',
  crew: 'Where does the rock begin, and is the casing seated in it?',
  flagged: [
    {
      text: 'hole\n  0 - 61 200\nstrata\n  0 - 9 clay\n  - 61 limestone\ncasing +0.45 - [[7.2]] steel 168.3 x 6.4\n  grout 0 - 7.2 neat cement, 0.1 m3',
      fixed:
        'hole\n  0 - 61 200\nstrata\n  0 - 9 clay\n  - 61 limestone\ncasing +0.45 - 7.2? steel 168.3 x 6.4\n  grout 0 - 7.2 neat cement, 0.1 m3',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 61 200\nstrata\n  0 - 6 clay\n  - 61 limestone\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 neat cement, 0.1 m3',
    },
    {
      text: 'rules montana-36-21\nhole\n  0 - 61 200\nstrata\n  0 - 9 clay\n  - 61 limestone\ncasing +0.45 - 7.2 steel 168.3 x 6.4',
    },
    {
      text: 'hole\n  0 - 61 200\nstrata\n  0 - 9 clay\n  - 61 limestone\ncasing +0.45 - 7.2 steel 168.3 x 6.4\nliner 0 - 12 pvc 114.3 sdr 26',
    },
  ],
  check: ({ log, limits }) => {
    const casing = wellCasing(log);
    const rock = firstRock(log);
    const [foot, top] = [casing && bottomOf(casing), rock && topOf(rock)];
    if (!casing || !rock || foot === null || top === null || rockOf(casing, log) === null) return [];
    const goesOn = log.strings.some((each) => each !== casing && (bottomOf(each) ?? 0) > foot + sameDepth);
    if (goesOn || top - foot <= sameDepth || limitGiven(limits, 'rock-seat-least', factsOfString(casing, log)))
      return [];
    return [
      {
        span: casing.interval.bottom?.span ?? casing.span,
        doubts: [casing.interval.bottom, rock.interval.top],
        message: l10n.t(
          'the casing ends {0} above the rock, which begins at {1}, and the hole goes on below with nothing to hold the ground between; correct a depth, or log what stands there',
          lengthText(top - foot, log.units),
          depthText(top, log.units),
        ),
        related: [{ span: rock.interval.span, message: l10n.t('rock begins here') }],
      },
    ];
  },
};
