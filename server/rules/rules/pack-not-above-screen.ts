import type { Fill, PipeString } from '../../model/log.ts';
import { limitText } from '../limit-text.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const highest = (tops: readonly (number | null | undefined)[]): number | null => {
  const known = tops.filter((top) => typeof top === 'number');
  return known.length === 0 || known.length < tops.length ? null : Math.min(...known);
};

type Name = 'pack-above-screen-least' | 'pack-above-screen-most';

/** How far the pack stands above the screen, against what is asked; null where it is neither too little nor too much. */
function faultOf(above: number, { limits }: RuleContext): Name | null {
  const { 'pack-above-screen-least': least, 'pack-above-screen-most': most } = limits;
  if (least && above < least.value - 1e-9) return 'pack-above-screen-least';
  return most && above > most.value + 1e-9 ? 'pack-above-screen-most' : null;
}

const adviceOn = (fault: Name, context: RuleContext): string =>
  fault === 'pack-above-screen-least'
    ? `at least ${limitText(context, fault)} allows for its settling; correct a depth, or log what was added`
    : `${limitText(context, fault)} is enough to allow for its settling, and each metre more is a way for water down past the seal; correct a depth, or note why`;

function reportOf(string: PipeString, packs: readonly Fill[], context: RuleContext): Report | null {
  const screen = highest(string.screens.map(({ interval }) => interval.top?.value));
  const pack = highest(packs.map(({ interval }) => interval?.top?.value));
  const fault = screen === null || pack === null ? null : faultOf(screen - pack, context);
  if (screen === null || pack === null || fault === null) return null;
  const { units } = context.log;
  const uppermost = packs.find(({ interval }) => interval?.top?.value === pack);
  const above =
    screen > pack
      ? `${fault === 'pack-above-screen-least' ? 'only ' : ''}${lengthText(screen - pack, units)} above`
      : 'not above';
  return {
    span: uppermost?.interval?.span ?? string.span,
    severity: fault === 'pack-above-screen-least' ? 'warning' : 'hint',
    doubts: [uppermost?.interval?.top, ...string.screens.map(({ interval }) => interval.top)],
    message: `the pack comes up to ${depthText(pack, units)}, ${above} the top of the screen at ${depthText(screen, units)}; ${adviceOn(fault, context)}`,
    related: string.screens.map(({ interval }) => ({ span: interval.span, message: 'the screen' })),
    limit: fault,
  };
}

/** A filter pack that does not reach far enough above its screen. */
export const rule: Rule = {
  id: 'pack-not-above-screen',
  severity: 'warning',
  title: 'A filter pack that stands too little above its screen, or very far',
  why: 'A pack settles while the well is developed; where it sinks below the top of the screen, the formation comes in.',
  mend: 'Correct a depth, or log the pack that was added.',
  source: 'water-well handbooks, from memory',
  crew: 'How far up does the pack come, and where does the screen begin?',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack [[30 - 36]] 20/40 sand',
      fixed: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 30? - 36 20/40 sand',
    },
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack [[20 - 36]] 20/40 sand',
    },
  ],
  silent: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 29.4 - 36 20/40 sand',
    },
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 29 - 36 20/40 sand',
    },
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5' },
  ],
  check: function* (context) {
    for (const string of context.log.strings) {
      const packs = string.fills.filter(({ kind }) => kind === 'pack');
      const report = packs.length > 0 && string.screens.length > 0 ? reportOf(string, packs, context) : null;
      if (report) yield report;
    }
  },
};
