import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfWell } from '../facts.ts';
import { numberText } from '../messages.ts';
import { longestTest, pumpingReadings, timePumped } from '../pumped-tests.ts';
import type { Report, Rule } from '../rule.ts';

/** A test of the yield that ran for less time than the pack asks. */
export const rule: Rule = {
  id: 'test-too-short',
  severity: 'warning',
  title: 'A test of the yield shorter than the pack asks',
  why: 'In the first minutes a pump empties the well itself; what the ground gives shows later.',
  mend: 'Log the readings that are missing, correct the times, or test again.',
  source: 'the pack’s limit; Ontario Reg. 903 from memory, Quebec Q-2, r. 6 (since replaced)',
  crew: 'How long did the test run?',
  flagged: [
    {
      text: 'rules ontario-903\ntest pump 40 L/min, intake 50\n  0 5.2\n  10 6.1\n  [[20]] 6.4',
      fixed: 'rules ontario-903\ntest pump 40 L/min, intake 50\n  0 5.2\n  10 6.1\n  20? 6.4',
    },
    { text: 'rules ontario-903\ntest blow 40 L/min, stem 50, [[30 min]]' },
  ],
  silent: [
    { text: 'rules ontario-903\ntest blow 40 L/min, stem 50, 1 h' },
    { text: 'rules ontario-903\ntest blow 40 L/min, 20 min\ntest pump 40 L/min\n  0 5.2\n  60 6.1' },
    { text: 'rules ontario-903\ntest slug\n  0 5.2\n  10 5.1' },
    { text: 'rules ontario-903\ntest pump 40 L/min' },
    { text: 'test pump 40 L/min\n  0 5.2\n  10 6.1' },
  ],
  check: ({ log, limits }): Report[] => {
    const test = longestTest(log);
    const time = test && timePumped(test);
    const least = limitGiven(limits, 'test-time-least', factsOfWell(log));
    if (!test || !least || time === null || time >= least.value - 1) return [];
    const last = pumpingReadings(test).at(-1)?.elapsed ?? null;
    return [
      {
        span: (test.duration ?? last)?.span ?? test.span,
        doubts: [test.duration ?? last],
        message: l10n.t(
          'the test ran for {0} min; at least {1} shows what the ground gives; log the readings that are missing, or test again',
          numberText(time / 60),
          askedText(least),
        ),
        limit: least.key,
      },
    ];
  },
};
