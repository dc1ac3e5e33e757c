import * as l10n from '@vscode/l10n';
import type { Depth, WellLog } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import type { LimitInForce } from '../../packs/limits.ts';
import { askedText } from '../asked.ts';
import { bottomOf } from '../columns.ts';
import { factsOfWell } from '../facts.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

const isOver = (limit: LimitInForce | null, depth: number): limit is LimitInForce =>
  limit !== null && depth < limit.value - 1e-3;

const footOf = (log: WellLog, depth: number): Depth | null =>
  log.hole.find((each) => bottomOf(each) === depth)?.interval.bottom ?? null;

const neverUnder = (depth: string, asked: string): string =>
  l10n.t('the well is {0} deep; a well is {1}; correct the depth, or ask the authority', depth, asked);

const atLeast: typeof neverUnder = (depth, asked) =>
  l10n.t('the well is {0} deep; it should be at least {1}; correct the depth, or ask the authority', depth, asked);

const reportOf = (log: WellLog, depth: number, least: LimitInForce, words: typeof neverUnder): Report => ({
  span: footOf(log, depth)?.span ?? { line: 0, start: 0, end: 0 },
  doubts: [footOf(log, depth)],
  message: words(depthText(depth, log.units), askedText(least)),
  limit: least.key,
});

/** A well that is shallower than the pack allows. */
export const rule: Rule = {
  id: 'well-too-shallow',
  severity: 'warning',
  title: 'A well shallower than the pack asks',
  why: 'A shallow well takes in water that the ground has hardly cleaned.',
  mend: 'Correct the depth, or ask the authority: some codes allow less where no deeper water is found, and never less than a floor.',
  source: 'the pack’s limit; Ontario Reg. 903',
  crew: 'How deep is the well?',
  flagged: [
    {
      text: 'rules ontario-903\nhole\n  0 - [[4.5]] 1200 bucket auger',
      fixed: 'rules ontario-903\nhole\n  0 - 4.5? 1200 bucket auger',
    },
    { text: 'rules ontario-903\nhole\n  0 - [[2.4]] 1200 bucket auger' },
  ],
  silent: [
    { text: 'rules ontario-903\nhole\n  0 - 6 1200 bucket auger' },
    { text: 'rules ontario-903\nhole\n  0 - 4.5 1200\nabandonment 2026-06-01\n  0 - 4.5 bentonite chips' },
    { text: 'hole\n  0 - 2.4 1200 bucket auger' },
  ],
  check: ({ log, limits }) => {
    const depth = log.totalDepth;
    if (depth === null || log.abandonments.length > 0) return [];
    const facts = factsOfWell(log);
    const never = limitGiven(limits, 'well-depth-never-under', facts);
    const least = limitGiven(limits, 'well-depth-least', facts);
    if (isOver(never, depth)) return [{ ...reportOf(log, depth, never, neverUnder), severity: 'error' as const }];
    return isOver(least, depth) ? [reportOf(log, depth, least, atLeast)] : [];
  },
};
