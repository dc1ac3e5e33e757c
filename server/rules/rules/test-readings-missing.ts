import * as l10n from '@vscode/l10n';
import type { Tree } from '../../../grammar/tree.ts';
import type { Test } from '../../model/log.ts';
import type { TestReadings } from '../../packs/limits.ts';
import { saidBy } from '../asked.ts';
import { fix, lineAfter } from '../fixes.ts';
import { longestTest, pumpingReadings } from '../pumped-tests.ts';
import type { Edit, Fix, Report, Rule } from '../rule.ts';

/** Ways of drawing water by which the level can be followed. */
const followed = new Set(['pump', 'constant-rate', 'step']);

const minutesOf = (test: Test): number[] =>
  pumpingReadings(test).flatMap(({ elapsed }) => (elapsed?.value == null ? [] : [elapsed.value / 60]));

const missingOf = (test: Test, { minutes }: TestReadings): number[] => {
  const read = minutesOf(test);
  return minutes.filter((each) => !read.some((time) => Math.abs(time - each) < 0.25));
};

/** The line after which a reading at `minute` belongs. */
function lineBefore(test: Test, minute: number): number {
  const earlier = pumpingReadings(test).filter(({ elapsed }) => (elapsed?.value ?? Infinity) / 60 < minute);
  return Math.max(test.line, ...earlier.map(({ line }) => line));
}

function linesFor(test: Test, missing: readonly number[], { lines }: Tree): Edit[] {
  const byPlace = new Map<number, number[]>();
  for (const minute of missing) {
    const line = lineBefore(test, minute);
    byPlace.set(line, [...(byPlace.get(line) ?? []), minute]);
  }
  return [...byPlace].map(([line, minutes]) =>
    lineAfter(line, lines[line]?.text ?? '', minutes.map((minute) => `${minute}  ?`).join('\n  ')),
  );
}

const fixesOf = (test: Test, missing: readonly number[], tree: Tree): Fix[] =>
  missing.length === 0
    ? []
    : [fix(l10n.t('Add the readings with ?, to ask the crew'), linesFor(test, missing, tree), { preferred: true })];

/** Says which readings are missing, by their minutes, and whether those of the recovery are; null where none is. */
function messageOf(minutes: readonly number[], noRecovery: boolean, asked: string): string | null {
  const at = minutes.join(', ');
  if (minutes.length > 0 && noRecovery)
    return l10n.t(
      'the test has no reading at {0} min and no reading of the recovery: {1}; log them, or ? to ask the crew',
      at,
      asked,
    );
  if (minutes.length > 0)
    return l10n.t('the test has no reading at {0} min: {1}; log them, or ? to ask the crew', at, asked);
  return noRecovery
    ? l10n.t('the test has no reading of the recovery: {0}; log them, or ? to ask the crew', asked)
    : null;
}

function reportsOf(test: Test, asked: TestReadings, pack: string, tree: Tree): Report[] {
  const missing = missingOf(test, asked);
  const noRecovery = asked.recovery && !test.phases.some(({ kind }) => kind === 'recovery');
  const message = messageOf(missing, noRecovery, saidBy(asked, pack));
  if (message === null) return [];
  return [
    {
      span: test.span,
      message,
      limit: `${pack}/testReadings`,
      fixes: () => fixesOf(test, missing, tree),
    },
  ];
}

/** Readings that a pack asks of a pumping test, and that the log lacks. */
export const rule: Rule = {
  id: 'test-readings-missing',
  severity: 'information',
  title: 'Readings of the test that the pack asks for',
  why: 'The shape of the drawdown tells how the well will do over a season; it needs readings close together at first, and those of the recovery.',
  mend: 'Log the readings, or `?` where the crew may still have them. Nothing is filled in for you.',
  source: 'the pack’s list of readings; Ontario Reg. 903 from memory',
  crew: 'Were these readings taken, and what were they?',
  flagged: [
    {
      text: 'rules ontario-903\n[[test pump 40 L/min]]\n  0 5.2\n  1 5.3\n  2 5.4\n  3 5.5\n  4 5.6\n  5 5.7\n  10 6\n  15 6.1\n  20 6.2\n  25 6.3\n  30 6.4\n  60 6.6\n  recovery\n  1 5.9',
      fixed:
        'rules ontario-903\ntest pump 40 L/min\n  0 5.2\n  1 5.3\n  2 5.4\n  3 5.5\n  4 5.6\n  5 5.7\n  10 6\n  15 6.1\n  20 6.2\n  25 6.3\n  30 6.4\n  40  ?\n  50  ?\n  60 6.6\n  recovery\n  1 5.9',
    },
    {
      text: 'rules ontario-903\n[[test pump 40 L/min]]\n  1 5.3\n  2 5.4\n  3 5.5\n  4 5.6\n  5 5.7\n  10 6\n  15 6.1\n  20 6.2\n  25 6.3\n  30 6.4\n  40 6.5\n  50 6.5\n  60 6.6',
    },
  ],
  silent: [
    {
      text: 'rules ontario-903\ntest pump 40 L/min\n  1 5.3\n  2 5.4\n  3 5.5\n  4 5.6\n  5 5.7\n  10 6\n  15 6.1\n  20 6.2\n  25 6.3\n  30 6.4\n  40 6.5\n  50 ?\n  60 6.6\n  recovery\n  1 5.9',
    },
    { text: 'rules ontario-903\ntest blow 40 L/min, stem 50, 1 h' },
    { text: 'test pump 40 L/min\n  0 5.2\n  60 6.6' },
  ],
  check: function* ({ log, limits, tree }) {
    const test = longestTest(log);
    if (!test?.method || !followed.has(test.method.id)) return;
    for (const { id, testReadings } of limits.packs ?? [])
      if (testReadings) yield* reportsOf(test, testReadings, id, tree);
  },
};
