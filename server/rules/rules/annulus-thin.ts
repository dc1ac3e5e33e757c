import * as l10n from '@vscode/l10n';
import type { PipeString } from '../../model/log.ts';
import { limitsGiven } from '../../packs/index.ts';
import type { Counting, LimitInForce } from '../../packs/limits.ts';
import type { AnnulusPiece } from '../../record/record.ts';
import { nominalDiameterOf } from '../../record/strings/nominal-diameter.ts';
import { askedText } from '../asked.ts';
import { factsOfFill } from '../facts.ts';
import { diameterText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, kindText, type PlacedFill, placedFills, sizeSpan } from '../strings.ts';

interface Thin {
  readonly piece: AnnulusPiece;
  /** The diameter that the hole is measured against, and by how much it is wider, both in m. */
  readonly against: number;
  readonly clear: number;
}

type Against = (piece: AnnulusPiece, string: PipeString) => number | null;

const againstBy: Readonly<Record<Counting, Against>> = {
  'over nominal': (_, string) => nominalDiameterOf(string),
  'over outside': ({ inner }) => inner,
  'over coupling': ({ inner }, { size }) => size.coupling?.value ?? inner,
  thickness: ({ inner }) => inner,
};

type Words = (...parts: string[]) => string;

/* What is around, how much is clear, the string, where, both diameters, what is logged there, what is asked. */
const wordsBy: Readonly<Record<Counting, Words>> = {
  'over nominal': (...parts) =>
    l10n.t(
      '{0} is only {1} wider than the nominal diameter of the {2} at {3} ({4} and {5}), and {6} is logged there; at least {7} lets it pass all round; correct a diameter, or note how it was placed',
      ...parts,
    ),
  'over outside': (...parts) =>
    l10n.t(
      '{0} is only {1} wider than the {2} at {3} ({4} and {5}), and {6} is logged there; at least {7} lets it pass all round; correct a diameter, or note how it was placed',
      ...parts,
    ),
  'over coupling': (...parts) =>
    l10n.t(
      '{0} is only {1} wider than the couplings or the outside of the {2} at {3} ({4} and {5}), and {6} is logged there; at least {7} lets it pass all round; correct a diameter, or note how it was placed',
      ...parts,
    ),
  thickness: (...parts) =>
    l10n.t(
      '{0} is only {1} clear on each side of the {2} at {3} ({4} and {5}), and {6} is logged there; at least {7} lets it pass all round; correct a diameter, or note how it was placed',
      ...parts,
    ),
};

const countedBy = ({ counted }: LimitInForce): Counting => counted ?? 'over outside';

/** An annulus as the limit counts it; null where the log does not tell the diameter that it is measured against. */
function measured(piece: AnnulusPiece, string: PipeString, limit: LimitInForce): Thin | null {
  const counted = countedBy(limit);
  const against = againstBy[counted](piece, string);
  if (against === null || piece.outer <= piece.inner) return null;
  const wider = piece.outer - against;
  return { piece, against, clear: counted === 'thickness' ? wider / 2 : wider };
}

/** A tenth of a millimetre: less than diameters are read to. */
const rounding = 1e-4;

const thinnest = ({ record, string }: PlacedFill, limit: LimitInForce): Thin | null =>
  record.pieces
    .map((piece) => measured(piece, string, limit))
    .filter((each) => each !== null)
    .filter(({ clear }) => clear < limit.value - rounding)
    .sort((a, b) => a.clear - b.clear)[0] ?? null;

function reportOf({ string, fill }: PlacedFill, thin: Thin, limit: LimitInForce, { log }: RuleContext): Report {
  const { piece, against, clear } = thin;
  const { units } = log;
  const around =
    piece.bounds === 'hole' ? l10n.t('the hole') : l10n.t('the string around it, string {0},', piece.bounds);
  return {
    span: sizeSpan(string),
    doubts: [string.size.outside ?? string.size.nominal],
    message: wordsBy[countedBy(limit)](
      around,
      diameterText(clear, units),
      kindText(string),
      stretchText(piece.top, piece.bottom, units),
      diameterText(piece.outer, units),
      diameterText(against, units),
      kindText(fill),
      askedText(limit),
    ),
    related: [{ span: fill.span, message: l10n.t('the {0}', kindText(fill)) }],
    limit: limit.key,
  };
}

/** Grout logged in an annulus too narrow for it. */
export const rule: Rule = {
  id: 'annulus-thin',
  severity: 'warning',
  title: 'An annulus too thin for the grout logged in it',
  why: 'Grout does not pass evenly through a narrow annulus, and a tremie pipe does not go down it. Codes count what is clear in different ways: against the nominal, the outside or the coupling’s diameter, as a difference of diameters or as a thickness. Each is told in its own way.',
  mend: 'Correct a diameter, or note how the grout was placed.',
  source: 'the pack’s limit; in `general` Oregon OAR 690-210, Wisconsin NR 812 and Michigan R 325',
  crew: 'How was the grout placed in so narrow a space, and are the two diameters right?',
  flagged: [
    {
      text: 'hole\n  0 - 7.2 200\n  - 61 152\ncasing +0.45 - 7.2 steel [[168.3 x 6.4]]\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.1 m3',
      fixed:
        'hole\n  0 - 7.2 200\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3? x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.1 m3',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\nhole\n  0 - 24 9\n  - 200 6\ncasing +1.5 - 24 steel [[6.625 x 0.28]]\n  shoe 24\n  grout 0 - 24 neat cement',
    },
    {
      text: 'rules minnesota-4725\nunits ft in\nhole\n  0 - 24 10\n  - 200 6\nstrata\n  0 - 12 clay\n  - 200 limestone\ncasing +1.5 - 24 steel [[6.625 x 0.28, coupling 7.39]]\n  shoe 24\n  grout 0 - 24 neat cement',
    },
  ],
  silent: [
    {
      text: 'rules wisconsin-nr812\nunits ft in\nhole\n  0 - 24 10\n  - 200 6\ncasing +1.5 - 24 steel 6.625 x 0.28\n  shoe 24\n  grout 0 - 24 neat cement',
    },
    {
      text: 'rules wisconsin-nr812\nunits ft in\nhole\n  0 - 24 8\n  - 200 6\ncasing +1.5 - 24 steel 6.625 x 0.28 welded\n  shoe 24\n  grout 0 - 24 neat cement, pressure',
    },
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
    { text: 'hole\n  0 - 42.7 200\ncasing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7' },
  ],
  check: function* (context) {
    const told = new Set<string>();
    for (const placed of placedFills(context.log, context.record.fills).filter(({ fill }) => isSeal(fill)))
      for (const limit of limitsGiven(
        context.limits,
        'oversize-least',
        factsOfFill(placed.fill, placed.string, context.log),
      )) {
        const thin = thinnest(placed, limit);
        const once = `${placed.string.number} ${limit.key}`;
        if (!thin || told.has(once)) continue;
        told.add(once);
        yield reportOf(placed, thin, limit, context);
      }
  },
};
