import type { Fill, PipeString } from '../../model/log.ts';
import { limitText } from '../limit-text.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const highest = (tops: readonly (number | null | undefined)[]): number | null => {
  const known = tops.filter((top) => typeof top === 'number');
  return known.length === 0 || known.length < tops.length ? null : Math.min(...known);
};

function reportOf(string: PipeString, packs: readonly Fill[], context: RuleContext): Report | null {
  const least = context.limits['pack-above-screen-least'];
  const screen = highest(string.screens.map(({ interval }) => interval.top?.value));
  const pack = highest(packs.map(({ interval }) => interval?.top?.value));
  if (!least || screen === null || pack === null || screen - pack >= least.value - 1e-9) return null;
  const { units } = context.log;
  const uppermost = packs.find(({ interval }) => interval?.top?.value === pack);
  const above = screen > pack ? `only ${lengthText(screen - pack, units)} above` : 'not above';
  return {
    span: uppermost?.interval?.span ?? string.span,
    doubts: [uppermost?.interval?.top, ...string.screens.map(({ interval }) => interval.top)],
    message: `the pack comes up to ${depthText(pack, units)}, ${above} the top of the screen at ${depthText(screen, units)}; at least ${limitText(context, 'pack-above-screen-least')} allows for its settling, and ${limitText(context, 'pack-above-screen-most')} is enough; correct a depth, or log what was added`,
    related: string.screens.map(({ interval }) => ({ span: interval.span, message: 'the screen' })),
    limit: 'pack-above-screen-least',
  };
}

/** A filter pack that does not reach far enough above its screen. */
export const rule: Rule = {
  id: 'pack-not-above-screen',
  severity: 'warning',
  title: 'A filter pack that does not stand above its screen',
  why: 'A pack settles while the well is developed; where it sinks below the top of the screen, the formation comes in.',
  mend: 'Correct a depth, or log the pack that was added.',
  source: 'water-well handbooks, from memory',
  crew: 'How far up does the pack come, and where does the screen begin?',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack [[30 - 36]] 20/40 sand',
      fixed: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 30? - 36 20/40 sand',
    },
  ],
  silent: [
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
