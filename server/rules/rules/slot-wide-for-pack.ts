import * as l10n from '@vscode/l10n';
import type { Fill, PipeString, Screen } from '../../model/log.ts';
import { bottomOf, topOf } from '../columns.ts';
import { limitText } from '../limit-text.ts';
import { diameterText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { sieveOpening } from '../sieves.ts';

interface Grains {
  /** Nearly every grain is coarser than this, in metres; null where the notes do not tell. */
  readonly finest: number | null;
  /** Grains finer than this make up half of the pack or more. */
  readonly middle: number | null;
}

const grainsOf = ({ grading, grain }: Fill): Grains => ({
  finest: grading && sieveOpening(grading.fine),
  middle: grading ? sieveOpening(grading.coarse) : (grain?.value ?? null),
});

const stands = (fill: Fill, screen: Screen): boolean =>
  (fill.interval?.top?.value ?? 1e9) < (bottomOf(screen) ?? 0) &&
  (fill.interval?.bottom?.value ?? -1e9) > (topOf(screen) ?? 1e9);

/** Says how much of the pack goes through slots of a width, given its measures as text. */
function messageOf(isLost: boolean, ofMiddle: boolean, width: string, grains: string, asked: string): string {
  if (ofMiddle)
    return l10n.t(
      'slots of {0} against a pack whose middle grains are {1}: most of it goes through; the screen should keep back {2}; correct the slot or the pack',
      width,
      grains,
      asked,
    );
  return isLost
    ? l10n.t(
        'slots of {0} against a pack whose finest grains are {1}: most of it goes through; the screen should keep back {2}; correct the slot or the pack',
        width,
        grains,
        asked,
      )
    : l10n.t(
        'slots of {0} against a pack whose finest grains are {1}: some of it goes through; the screen should keep back {2}; correct the slot or the pack',
        width,
        grains,
        asked,
      );
}

function reportOf(screen: Screen, pack: Fill, context: RuleContext): Report[] {
  const { units } = context.log;
  const width = screen.slot?.value ?? null;
  const { finest, middle } = grainsOf(pack);
  const most = finest ?? middle;
  if (!screen.slot || width === null || most === null || width <= most + 1e-6) return [];
  const lost = middle !== null && width >= middle - 1e-6;
  return [
    {
      span: screen.slot.span,
      severity: lost ? 'warning' : 'information',
      doubts: [screen.slot, pack.grain],
      message: messageOf(
        lost,
        finest === null,
        diameterText(width, units),
        diameterText(most, units),
        limitText(context, 'pack-kept-back-least'),
      ),
      related: [{ span: pack.span, message: l10n.t('the pack') }],
      limit: 'pack-kept-back-least',
    },
  ];
}

const packsOf = ({ fills }: PipeString, screen: Screen): readonly Fill[] =>
  fills.filter((fill) => fill.kind === 'pack' && stands(fill, screen));

/** Slots that let the filter pack through. */
export const rule: Rule = {
  id: 'slot-wide-for-pack',
  severity: 'information',
  title: 'Slots wider than the grains of the pack',
  why: 'A screen that lets its pack through pumps sand, and the ground settles after it.',
  mend: 'Correct the slot, the grading or the grain. A graded pack such as 20/40 is held to run from the opening of the one sieve to that of the other.',
  source: 'water-well handbooks, from memory; sieve openings of ASTM E11, from memory',
  crew: 'What slot has the screen, and what sand was placed around it?',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot [[0.5]]\n  pack 28 - 36 20/40 sand',
      fixed: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5?\n  pack 28 - 36 20/40 sand',
    },
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot [[1]]\n  pack 28 - 36 sand, grain 0.6',
    },
  ],
  silent: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.4\n  pack 28 - 36 20/40 sand',
    },
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 10 - 20 20/40 sand',
    },
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 28 - 36 sand',
    },
  ],
  check: (context) =>
    context.log.strings.flatMap((string) =>
      string.screens.flatMap((screen) => packsOf(string, screen).flatMap((pack) => reportOf(screen, pack, context))),
    ),
};
