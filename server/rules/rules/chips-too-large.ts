import * as l10n from '@vscode/l10n';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { diameterText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { type PlacedFill, placedFills } from '../strings.ts';

/** The thinnest place of the annulus in metres; null where no diameter is known. */
const thinnest = ({ record }: PlacedFill): number | null =>
  record.pieces.length === 0 ? null : Math.min(...record.pieces.map(({ outer, inner }) => (outer - inner) / 2));

function reportOf(placed: PlacedFill, { log, limits }: RuleContext): Report[] {
  const { fill, string } = placed;
  const most = limitGiven(limits, 'chip-share-most', factsOfFill(fill, string, log));
  const [size, room] = [fill.grain?.value ?? null, thinnest(placed)];
  if (!most || !fill.grain || size === null || room === null || size <= most.value * room + 1e-4) return [];
  return [
    {
      span: fill.grain.span,
      doubts: [fill.grain, string.size.outside ?? string.size.nominal],
      message: l10n.t(
        'chips of {0} in an annulus that is {1} thick: {2}, since larger ones bridge; correct the size or a diameter',
        diameterText(size, log.units),
        diameterText(room, log.units),
        askedText(most),
      ),
      limit: most.key,
    },
  ];
}

/** Bentonite chips too large for the annulus that they were poured into. */
export const rule: Rule = {
  id: 'chips-too-large',
  severity: 'warning',
  title: 'Bentonite chips too large for the annulus',
  why: 'Large chips bridge in a thin annulus and leave it open below, where nobody sees it.',
  mend: 'Correct the size of the chips or a diameter.',
  source: 'the pack’s limit; California Bulletins 74-81 and 74-90',
  crew: 'How large were the chips, and how were they poured?',
  flagged: [
    {
      text: 'rules california-b74\nunits ft in\nhole\n  0 - 60 8\ncasing +1 - 60 pvc 4.5 x 0.237\n  seal 0 - 20 bentonite chips, size [[3/4 in]]',
      fixed:
        'rules california-b74\nunits ft in\nhole\n  0 - 60 8\ncasing +1 - 60 pvc 4.5 x 0.237\n  seal 0 - 20 bentonite chips, size 3?/4 in',
    },
  ],
  silent: [
    {
      text: 'rules california-b74\nunits ft in\nhole\n  0 - 60 8.5\ncasing +1 - 60 pvc 4.5 x 0.237\n  seal 0 - 20 bentonite chips, size 3/8 in',
    },
    {
      text: 'rules california-b74\nunits ft in\ncasing +1 - 60 pvc 4.5 x 0.237\n  seal 0 - 20 bentonite chips, size 3/4 in',
    },
    { text: 'hole\n  0 - 20 200\ncasing +0.5 - 20 pvc 114.3 sdr 26\n  seal 0 - 20 bentonite chips, size 19' },
  ],
  check: (context) =>
    placedFills(context.log, context.record.fills)
      .filter(({ fill }) => fill.fillClass === 'bentonite-dry')
      .flatMap((placed) => reportOf(placed, context)),
};
