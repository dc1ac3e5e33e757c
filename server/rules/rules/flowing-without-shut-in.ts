import * as l10n from '@vscode/l10n';
import { writeAfter } from '../fixes.ts';
import type { Rule } from '../rule.ts';

/** A flowing well of which neither a shut-in nor a word on leaks is logged. */
export const rule: Rule = {
  id: 'flowing-without-shut-in',
  severity: 'warning',
  title: 'A flowing well without a shut-in or a word on leaks',
  why: 'Whether the flow can be shut in without leaking round the casing is what tells that the seal holds.',
  mend: 'Log `shut-in` with its pressure or head, or say `no leak`, `leaks`, or `valve`. Shutting in a flowing well can lift casing and ground: follow the local code and licensed practice.',
  source: 'common practice, no source',
  crew: 'How was the flow shut in, at what pressure, and did it leak?',
  flagged: [{ text: 'water\n  [[flowing 35 L/min]]', fixed: 'water\n  flowing 35 L/min, shut-in ?' }],
  silent: [
    { text: 'water\n  flowing 35 L/min, shut-in 42 kPa' },
    { text: 'water\n  flowing 35 L/min, valve, no leak' },
  ],
  check: ({ log }) =>
    log.water.flowing
      .filter(({ shutIn, control }) => shutIn === null && control.length === 0)
      .map(({ span }) => ({
        span,
        fixes: () => [
          writeAfter(l10n.t('Ask the crew for the shut-in, with ?'), span, ', shut-in ?', { preferred: true }),
        ],
        message: l10n.t(
          'a flowing well is logged with no shut-in and no word on leaks, so that nobody can tell whether its seal holds; log shut-in with its pressure, or no leak, or ? to ask the crew',
        ),
      })),
};
