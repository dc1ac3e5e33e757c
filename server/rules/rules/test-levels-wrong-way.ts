import * as l10n from '@vscode/l10n';
import type { Depth, Phase, Reading } from '../../model/log.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** Ways to test in which levels jump about, or are only judged. */
const rough = new Set(['bail', 'blow', 'slug', 'packer-test', 'estimated']);

interface Step {
  readonly before: Depth;
  readonly after: Depth;
  /** Metres in the wrong way. */
  readonly wrong: number;
}

const levelOf = ({ level, drawdown }: Reading): Depth | null => level ?? drawdown;

/** While the pump runs the level goes down, a growing depth; in recovery it comes back. */
const wrongBy = (before: number, after: number, { kind }: Phase): number =>
  kind === 'pumping' ? before - after : after - before;

function stepsOf(phase: Phase): Step[] {
  const levels = phase.readings.map(levelOf).filter((level) => level !== null && level.value !== null);
  return levels.slice(1).flatMap((after, index) => {
    const before = levels[index];
    if (before?.value == null || after?.value == null) return [];
    return [{ before, after, wrong: wrongBy(before.value, after.value, phase) }];
  });
}

function rangeOf(phase: Phase): number {
  const levels = phase.readings.flatMap((reading) => levelOf(reading)?.value ?? []);
  return levels.length === 0 ? 0 : Math.max(...levels) - Math.min(...levels);
}

const risesWords = (first: string, second: string): string =>
  l10n.t(
    'the level rises while the pump runs, {0} and {1}, with no change of rate logged; correct the readings, log the change with rate, or begin recovery where the pump stopped',
    first,
    second,
  );

const fallsWords: typeof risesWords = (first, second) =>
  l10n.t(
    'the level falls while the well recovers, {0} and {1}, with no change of rate logged; correct the readings, log the change with rate, or begin recovery where the pump stopped',
    first,
    second,
  );

function reportOf(phase: Phase, { log, limits }: RuleContext): Report | null {
  const least = limits['test-wrong-way-level-least']?.value ?? 0.05;
  const share = limits['test-wrong-way-share-least']?.value ?? 0.02;
  const floor = Math.max(least, share * rangeOf(phase));
  const [first, second] = stepsOf(phase).filter(({ wrong }) => wrong > floor + 1e-9);
  if (!first || !second) return null;
  const text = ({ before, after, wrong }: Step) =>
    l10n.t(
      'from {0} to {1} ({2})',
      depthText(before.value ?? 0, log.units),
      depthText(after.value ?? 0, log.units),
      lengthText(wrong, log.units),
    );
  return {
    span: second.after.span,
    doubts: [second.after, first.after],
    message: (phase.kind === 'pumping' ? risesWords : fallsWords)(text(first), text(second)),
    related: [{ span: first.after.span, message: l10n.t('the first time, {0}', text(first)) }],
    limit: 'test-wrong-way-level-least',
  };
}

/** Readings of a test that move against the pumping, more than once. */
export const rule: Rule = {
  id: 'test-levels-wrong-way',
  severity: 'warning',
  title: 'Test levels that run the wrong way',
  why: 'At a steady rate the level falls and then steadies; in recovery it rises. Readings that go the other way, more than a ripple, tell of another rate or of slips of the pen.',
  mend: 'Correct the readings, log the change of `rate`, or put `recovery` where the pump stopped.',
  source: 'common practice; how much is a ripple is the pack’s, no source',
  crew: 'Are these readings right, and was the rate changed?',
  flagged: [
    {
      text: 'test pump 40 L/min\n  0 5.2\n  1 6.14\n  2 7.9\n  3 6.71\n  10 9.4\n  15 [[8.1]]\n  60 11.9',
      fixed: 'test pump 40 L/min\n  0 5.2\n  1 6.14\n  2 7.9\n  3 6.71\n  10 9.4\n  15 8.1?\n  60 11.9',
    },
    { text: 'test pump 40 L/min\n  0 5.2\n  60 11.9\n  recovery\n  1 10.2\n  2 10.9\n  5 8\n  10 [[9]]' },
  ],
  silent: [
    { text: 'test pump 40 L/min\n  0 5.2\n  1 6.14\n  2 6.71\n  60 11.9\n  recovery\n  1 10.2\n  60 5.6' },
    { text: 'test pump 40 L/min\n  0 5.2\n  1 6.14\n  2 6.11\n  3 6.09\n  60 11.9' },
    { text: 'test pump 40 L/min\n  0 5.2\n  1 6.14\n  2 5.9\n  60 11.9' },
  ],
  check: (context) =>
    context.log.tests
      .filter(({ method }) => !rough.has(method?.id ?? ''))
      .flatMap((test) => [...test.phases, ...test.observed.flatMap((well) => well.phases)])
      .flatMap((phase) => reportOf(phase, context) ?? []),
};
