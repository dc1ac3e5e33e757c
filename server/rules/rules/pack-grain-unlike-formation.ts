import * as l10n from '@vscode/l10n';
import type { Fill, Stratum } from '../../model/log.ts';
import { bottomOf, topOf } from '../columns.ts';
import { limitText } from '../limit-text.ts';
import { diameterText, intervalText, numberText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const tooFine = (own: string, times: string, where: string, ground: string, usual: string): string =>
  l10n.t(
    'the pack has grains of {0}, {1} times those of the ground at {2}, {3}; {4} is usual, and a pack that fine gives little water; correct one of the two, or note how it was chosen',
    own,
    times,
    where,
    ground,
    usual,
  );

const tooCoarse: typeof tooFine = (own, times, where, ground, usual) =>
  l10n.t(
    'the pack has grains of {0}, {1} times those of the ground at {2}, {3}; {4} is usual, and a pack that coarse lets the ground through; correct one of the two, or note how it was chosen',
    own,
    times,
    where,
    ground,
    usual,
  );

/** Sand: of coarser ground a log gives the greatest stone, not the grain that a pack is chosen by. */
const isSand = ({ ground, principal }: Stratum): boolean =>
  ground !== null && !ground.rock && /(^|-)sand$/.test(principal?.id ?? '');

const standsIn = (fill: Fill, stratum: Stratum): boolean =>
  (fill.interval?.top?.value ?? 1e9) < (bottomOf(stratum) ?? 0) &&
  (fill.interval?.bottom?.value ?? -1e9) > (topOf(stratum) ?? 1e9);

function reportOf(pack: Fill, stratum: Stratum, context: RuleContext): Report[] {
  const { log, limits } = context;
  const [least, most] = [limits['pack-grain-ratio-least'], limits['pack-grain-ratio-most']];
  const [own, ground] = [pack.grain?.value ?? null, stratum.grain?.value ?? null];
  if (!least || !most || !pack.grain || own === null || ground === null || ground <= 0) return [];
  const times = own / ground;
  if (times >= least.value - 1e-9 && times <= most.value + 1e-9) return [];
  const isFine = times < least.value;
  const name = isFine ? 'pack-grain-ratio-least' : 'pack-grain-ratio-most';
  return [
    {
      span: pack.grain.span,
      doubts: [pack.grain, stratum.grain],
      message: (isFine ? tooFine : tooCoarse)(
        diameterText(own, log.units),
        numberText(times, 2),
        intervalText(stratum.interval, log.units),
        diameterText(ground, log.units),
        limitText(context, name),
      ),
      related: [{ span: stratum.interval.span, message: l10n.t('the ground') }],
      limit: name,
    },
  ];
}

/** A filter pack whose grain does not suit the ground that it stands in. */
export const rule: Rule = {
  id: 'pack-grain-unlike-formation',
  severity: 'information',
  title: 'A filter pack too fine or too coarse for the ground',
  why: 'A pack four to six times as coarse as the ground holds it back and still lets the water in.',
  mend: 'Correct the grain of the pack or that of the sand, or note by which sieving it was chosen.',
  source: 'water-well handbooks, from memory',
  crew: 'What grain has the pack, and what grain was seen in the sand?',
  flagged: [
    {
      text: 'strata\n  0 - 36 sand, size 0.5\ncasing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 sand, grain [[0.8]]',
      fixed: 'strata\n  0 - 36 sand, size 0.5\ncasing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 sand, grain 0.8?',
    },
    {
      text: 'strata\n  0 - 36 sand, size 0.2\ncasing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 sand, grain [[2]]',
    },
  ],
  silent: [
    { text: 'strata\n  0 - 36 sand, size 0.2\ncasing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 sand, grain 1' },
    { text: 'strata\n  0 - 36 gravel, size 20\ncasing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 sand, grain 1' },
    {
      text: 'strata\n  0 - 20 sand, size 0.5\n  - 36 gravel\ncasing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 sand, grain 0.8',
    },
  ],
  check: (context) =>
    context.log.strings.flatMap((string) =>
      string.fills
        .filter(({ kind }) => kind === 'pack')
        .flatMap((pack) =>
          context.log.strata
            .filter((stratum) => isSand(stratum) && standsIn(pack, stratum))
            .flatMap((stratum) => reportOf(pack, stratum, context)),
        ),
    ),
};
