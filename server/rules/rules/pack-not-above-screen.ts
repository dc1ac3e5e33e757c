import * as l10n from '@vscode/l10n';
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

const tooFar = (pack: string, above: string, screen: string, enough: string): string =>
  l10n.t(
    'the pack comes up to {0}, {1} above the top of the screen at {2}; {3} is enough to allow for its settling, and each metre more is a way for water down past the seal; correct a depth, or note why',
    pack,
    above,
    screen,
    enough,
  );

const tooLittle: typeof tooFar = (pack, above, screen, least) =>
  l10n.t(
    'the pack comes up to {0}, only {1} above the top of the screen at {2}; at least {3} allows for its settling; correct a depth, or log what was added',
    pack,
    above,
    screen,
    least,
  );

const notAbove = (pack: string, screen: string, least: string): string =>
  l10n.t(
    'the pack comes up to {0}, not above the top of the screen at {1}; at least {2} allows for its settling; correct a depth, or log what was added',
    pack,
    screen,
    least,
  );

/** Says how the top of a pack and of its screen, metres, stand to each other. */
function messageOf(fault: Name, pack: number, screen: number, context: RuleContext): string {
  const { units } = context.log;
  const [packTop, screenTop, asked] = [depthText(pack, units), depthText(screen, units), limitText(context, fault)];
  if (screen <= pack) return notAbove(packTop, screenTop, asked);
  const words = fault === 'pack-above-screen-least' ? tooLittle : tooFar;
  return words(packTop, lengthText(screen - pack, units), screenTop, asked);
}

function reportOf(string: PipeString, packs: readonly Fill[], context: RuleContext): Report | null {
  const screen = highest(string.screens.map(({ interval }) => interval.top?.value));
  const pack = highest(packs.map(({ interval }) => interval?.top?.value));
  const fault = screen === null || pack === null ? null : faultOf(screen - pack, context);
  if (screen === null || pack === null || fault === null) return null;
  const uppermost = packs.find(({ interval }) => interval?.top?.value === pack);
  return {
    span: uppermost?.interval?.span ?? string.span,
    severity: fault === 'pack-above-screen-least' ? 'warning' : 'hint',
    doubts: [uppermost?.interval?.top, ...string.screens.map(({ interval }) => interval.top)],
    message: messageOf(fault, pack, screen, context),
    related: string.screens.map(({ interval }) => ({ span: interval.span, message: l10n.t('the screen') })),
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
