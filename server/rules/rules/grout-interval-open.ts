import * as l10n from '@vscode/l10n';
import type { Fill, PipeString, WellLog } from '../../model/log.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { askForSeal } from '../ask-for-seal.ts';
import { bottomOf, topOf } from '../columns.ts';
import { stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { holeDiameterAt, isDriven, isSeal, stringText } from '../strings.ts';

interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

/** A hand's breadth: what a top that settled, or a depth read on a tremie, leaves open. */
const smallest = 0.3;

/** Highest place that grout must reach: the ground, or the pitless adapter below it. */
const highest = ({ pitless }: PipeString): number => Math.max(0, ...pitless.map(({ depth }) => depth?.value ?? 0));

const stretchOf = ({ interval }: Fill): Stretch | null => {
  const top = interval?.top?.value ?? null;
  const bottom = interval?.bottom?.value ?? null;
  return top === null || bottom === null ? null : { top, bottom };
};

/** What `fills` leave open from `from` down to `to`. */
function openBetween(fills: readonly Stretch[], from: number, to: number): Stretch[] {
  const open: Stretch[] = [];
  let reached = from;
  for (const { top, bottom } of [...fills].sort((a, b) => a.top - b.top)) {
    if (top - reached > smallest && reached < to) open.push({ top: reached, bottom: Math.min(top, to) });
    reached = Math.max(reached, bottom);
  }
  return to - reached > smallest ? [...open, { top: reached, bottom: to }] : open;
}

/** Down to where a string should be sealed: its foot; with a screen, only as deep as it was. */
function sealedDownTo(string: PipeString, fills: readonly Stretch[]): number {
  const deepest = Math.max(0, ...fills.map(({ bottom }) => bottom));
  return string.screens.length > 0 || string.perforated.length > 0 ? deepest : (bottomOf(string) ?? deepest);
}

const isConcerned = (string: PipeString, log: WellLog): boolean =>
  string.kind === 'casing' && !isDriven(string, log) && isPermanent(string) && (topOf(string) ?? 1) <= 0;

/** True where the hole is known to be wider than a string that nothing was placed around. */
const standsInWiderHole = (string: PipeString, { log }: RuleContext): boolean => {
  const foot = bottomOf(string);
  const hole = foot === null ? null : holeDiameterAt(log, foot);
  return hole !== null && (string.size.outsideDiameter ?? Number.POSITIVE_INFINITY) < hole && log.strings.length === 1;
};

const reportOf = (
  string: PipeString,
  fill: Fill | null,
  { top, bottom }: Stretch,
  { log, tree }: RuleContext,
): Report => ({
  span: fill?.interval?.span ?? string.interval.span,
  doubts: [fill?.interval?.top, fill?.interval?.bottom],
  fixes: () => (fill === null ? [askForSeal(string, tree)] : []),
  message: fill
    ? l10n.t(
        'nothing is logged in the annulus of {0} at {1}: an open stretch between the shoe and the surface lets water run down outside the casing; log what was placed there',
        stringText(string, log),
        stretchText(top, bottom, log.units),
      )
    : l10n.t(
        'nothing is logged in the annulus of {0}, {1}: the hole is wider than the casing; log the grout or the seal, or say driven',
        stringText(string, log),
        stretchText(top, bottom, log.units),
      ),
  related: fill ? [{ span: string.interval.span, message: l10n.t('the string') }] : [],
});

/** The fill nearest to an open stretch: the one above it, else the one below. */
function nearestFill(fills: readonly Fill[], { top, bottom }: Stretch): Fill | null {
  const above = fills.find((fill) => stretchOf(fill)?.bottom === top);
  return above ?? fills.find((fill) => (stretchOf(fill)?.top ?? 0) >= bottom) ?? fills[0] ?? null;
}

function* reportsOf(string: PipeString, context: RuleContext): Generator<Report> {
  const fills = string.fills.filter((fill) => fill.kind !== 'plug');
  const stretches = fills.map(stretchOf).filter((each) => each !== null);
  if (stretches.length < fills.length) return;
  if (!fills.some(isSeal) && !standsInWiderHole(string, context)) return;
  for (const open of openBetween(stretches, highest(string), sealedDownTo(string, stretches)))
    yield reportOf(string, nearestFill(fills, open), open, context);
}

/** An annulus that is left open somewhere between the shoe and the surface. */
export const rule: Rule = {
  id: 'grout-interval-open',
  severity: 'warning',
  title: 'A stretch of annulus between shoe and surface that nothing fills',
  why: 'An open annulus is a pipe outside the pipe: surface water and shallow ground water run down it.',
  mend: 'Log what stands there (`grout`, `seal`, `pack`), correct an interval, or say `driven` where there is no annulus. The top may be at the pitless adapter.',
  source: 'common practice; grout from shoe to surface is asked by most codes',
  crew: 'What stands in the annulus there?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout [[2 - 7.2]] neat cement, 0.29 m3',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 2? - 7.2 neat cement, 0.29 m3',
    },
    { text: 'casing +0.45 - 12 steel 168.3 x 6.4\n  shoe 12\n  grout [[0 - 7.2]] neat cement, 0.29 m3' },
    { text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing [[+0.45 - 7.2]] steel 168.3 x 6.4\n  shoe 7.2' },
  ],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3' },
    { text: 'casing +0.9 - 12 steel 168.3 x 6.4\n  shoe 12\n  pitless 1.8\n  grout 1.8 - 12 neat cement, 0.42 m3' },
    { text: 'hole\n  0 - 42.7 200\ncasing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7' },
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 28 - 36 20/40 sand\n  seal 27 - 28 bentonite chips\n  grout 0 - 27 neat cement, 0.7 m3',
    },
  ],
  check: function* (context) {
    for (const string of context.log.strings) if (isConcerned(string, context.log)) yield* reportsOf(string, context);
  },
};
