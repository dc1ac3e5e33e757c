import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { bottomOf, topOf } from '../columns.ts';
import { factsOfString, firstRock, rockOf, wellCasing } from '../facts.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

const aboveRock = (apart: string, rock: string, asked: string): string =>
  l10n.t(
    'the casing ends {0} above rock, which begins at {1}; it must go at least {2}, below what is broken; correct a depth, or ask the authority',
    apart,
    rock,
    asked,
  );

const intoRock: typeof aboveRock = (into, rock, asked) =>
  l10n.t(
    'the casing goes {0} into rock, which begins at {1}; it must go at least {2}, below what is broken; correct a depth, or ask the authority',
    into,
    rock,
    asked,
  );

/** Casing that does not go as far into rock as the pack asks. */
export const rule: Rule = {
  id: 'rock-seat-short',
  severity: 'warning',
  title: 'Casing not set as deep into rock as the pack asks',
  why: 'The top of rock is often broken. A seat in sound rock below it keeps shallow water from coming in under the casing.',
  mend: 'Correct the foot of the casing or the top of rock, or ask the authority before the casing is set.',
  source: 'the pack’s limit',
  crew: 'Where does the rock begin, and how far into it does the casing go?',
  flagged: [
    {
      text: 'rules oregon-690-210\nunits ft in\nstrata\n  0 - 20 clay\n  - 200 basalt\ncasing +1.5 - [[22]] steel 6.625 x 0.25',
      fixed:
        'rules oregon-690-210\nunits ft in\nstrata\n  0 - 20 clay\n  - 200 basalt\ncasing +1.5 - 22? steel 6.625 x 0.25',
    },
    {
      text: 'rules montana-36-21\nunits ft in\nhole\n  0 - 200 6\nstrata\n  0 - 30 clay\n  - 200 shale\ncasing +1.5 - [[28]] steel 6.625 x 0.25',
    },
  ],
  silent: [
    {
      text: 'rules oregon-690-210\nunits ft in\nstrata\n  0 - 20 clay\n  - 200 basalt\ncasing +1.5 - 25 steel 6.625 x 0.25',
    },
    {
      text: 'rules oregon-690-210\nunits ft in\nhole\n  0 - 62 10\nstrata\n  0 - 60 gravel\n  - 62 basalt\ncasing +1.5 - 60 steel 6.625 x 0.25\n  screen 50 - 60 steel 6.625, slot 20',
    },
    { text: 'strata\n  0 - 6.1 clay\n  - 61 limestone\ncasing +0.45 - 6.2 steel 168.3 x 6.4' },
  ],
  check: ({ log, limits }): Report[] => {
    const casing = wellCasing(log);
    const rock = firstRock(log);
    const [foot, top] = [casing && bottomOf(casing), rock && topOf(rock)];
    const least = casing && limitGiven(limits, 'rock-seat-least', factsOfString(casing, log));
    if (!casing || !rock || !least || foot === null || top === null || rockOf(casing, log) === null) return [];
    const into = foot - top;
    if (into >= least.value - 1e-3) return [];
    return [
      {
        span: casing.interval.bottom?.span ?? casing.span,
        doubts: [casing.interval.bottom, rock.interval.top],
        message: (into < 0 ? aboveRock : intoRock)(
          lengthText(into, log.units),
          depthText(top, log.units),
          askedText(least),
        ),
        related: [{ span: rock.interval.span, message: l10n.t('rock begins here') }],
        limit: least.key,
      },
    ];
  },
};
