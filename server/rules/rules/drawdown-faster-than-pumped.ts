import * as l10n from '@vscode/l10n';
import type { Phase, PipeString, Reading, Test } from '../../model/log.ts';
import { bottomOf, topOf } from '../columns.ts';
import { limitText } from '../limit-text.ts';
import { depthText, numberText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { holeDiameterAt } from '../strings.ts';

/** The narrowest bore that stands round a depth in metres: the innermost string, else the hole. */
function boreAt(depth: number, { log }: RuleContext): number | null {
  const covers = (string: PipeString) => (topOf(string) ?? 1e9) <= depth && (bottomOf(string) ?? -1) >= depth;
  const insides = log.strings.filter(covers).map(({ size }) => size.insideDiameter);
  if (insides.length === 0) return holeDiameterAt(log, depth);
  return insides.every((inside) => inside !== null) ? Math.min(...insides.map(Number)) : null;
}

/** Volume in m³ that the bore gave up between two levels, by the narrower of its two ends. */
function emptied(before: number, after: number, context: RuleContext): number | null {
  const bores = [boreAt(before, context), boreAt(after, context)];
  if (bores.some((bore) => bore === null)) return null;
  return ((Math.PI / 4) * Math.min(...bores.map(Number)) ** 2 * (after - before)) as number;
}

interface Start {
  readonly level: number;
  /** Rate in m³/s at which the test ran. */
  readonly rate: number;
}

function reportOf(reading: Reading, { level, rate }: Start, context: RuleContext): Report | null {
  const most = context.limits['drawdown-volume-ratio-most'];
  const after = reading.level?.value ?? null;
  const seconds = reading.elapsed?.value ?? 0;
  if (!most || after === null || seconds <= 0 || after <= level) return null;
  const volume = emptied(level, after, context);
  if (volume === null || volume <= most.value * rate * seconds) return null;
  return {
    span: reading.level?.span ?? reading.span,
    doubts: [reading.level, reading.elapsed],
    message: l10n.t(
      '{0} of water left the bore on the way down to {1}, but {2} for {3} min pumps only {4}; over {5} cannot be; check the rate, the time, the level or the diameters',
      valueText(volume, 'L'),
      depthText(after, context.log.units),
      valueText(rate, 'L/min'),
      numberText(seconds / 60, 3),
      valueText(rate * seconds, 'L'),
      limitText(context, 'drawdown-volume-ratio-most'),
    ),
    limit: 'drawdown-volume-ratio-most',
  };
}

const firstPhase = ({ phases }: Test): Phase | null => phases.find(({ kind }) => kind === 'pumping') ?? null;

function startOf(test: Test): Start | null {
  const phase = firstPhase(test);
  const first = phase?.readings[0];
  const rate = phase?.rate?.value ?? test.rate?.value ?? null;
  const level = first?.elapsed?.value === 0 ? (first.level?.value ?? null) : null;
  return rate === null || level === null ? null : { level, rate: test.rate?.high ?? rate };
}

/** A bore that lost more water than the pump can have taken. */
export const rule: Rule = {
  id: 'drawdown-faster-than-pumped',
  severity: 'information',
  title: 'A level that fell faster than the pump can have lowered it',
  why: 'The pump must take at least the water that stood in the bore between two levels, and whatever the ground gave besides. Less than that cannot be.',
  mend: 'Check the rate, the time, the level and the diameters.',
  source: 'conservation of volume; the tolerance is common practice, no source',
  crew: 'What were the rate and the level at that time?',
  flagged: [
    {
      text: 'hole\n  0 - 61 152\ntest pump 4 L/min\n  0 5.2\n  1 [[6.14]]\n  60 9',
      fixed: 'hole\n  0 - 61 152\ntest pump 4 L/min\n  0 5.2\n  1 6.14?\n  60 9',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\ntest pump 40 L/min\n  0 5.2\n  1 6.14\n  2 6.71\n  60 11.9' },
    { text: 'test pump 4 L/min\n  0 5.2\n  1 16.14' },
  ],
  check: function* (context) {
    for (const test of context.log.tests.filter(({ method }) => method?.id === 'pump')) {
      const start = startOf(test);
      for (const reading of firstPhase(test)?.readings ?? []) {
        const report = start ? reportOf(reading, start, context) : null;
        if (report) yield report;
      }
    }
  },
};
