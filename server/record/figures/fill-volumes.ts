import type { Formula } from '../../calculations/formula.ts';
import { about as ofAnnulus } from '../../calculations/geometry/annulus-volume.ts';
import { filledTop, about as ofFilledTop } from '../../calculations/geometry/filled-top.ts';
import { meanDiameterFilled, about as ofMeanDiameter } from '../../calculations/geometry/mean-diameter-filled.ts';
import { about as ofAnnulusShare } from '../../calculations/grout/annulus-share.ts';
import { about as ofRequired, requiredGrout } from '../../calculations/grout/required-grout.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { type FillParts, figureOfFill } from '../fills/figure-of-fill.ts';
import { annulusIngredient, netIngredient, netParts, placedIngredient } from '../fills/fill-ingredients.ts';
import { allowanceOf } from '../fills/fill-record.ts';
import { ofFigure, ofLimit } from '../ingredient.ts';
import type { Figure } from '../record.ts';
import type { Family } from './family.ts';

const ofPlaced: Formula = {
  name: 'volume placed',
  text: 'as written in the log',
  source: 'the log',
  range: null,
  caution: null,
};

/** `casing.N.grout.M.annulus-volume`, `.required-volume`, `.placed-volume`, `.net-volume`, `.height-filled`, `.mean-diameter`; of a pack `.volume`. */
export const fillVolumeFigures: Family = (context) => context.fills.flatMap((placed) => figuresOf(placed, context));

function figuresOf(placed: PlacedFill, context: RecordContext): Figure[] {
  const { fill, string } = placed;
  if (fill.kind === 'pack') return packFigures(placed, context);
  const figures = [placedFigure(placed, context)];
  if (netParts(placed, context).length > 0) figures.push(netFigure(placed, context));
  if (string.driven) return figures;
  const annulus = annulusFigure(placed, context, 'annulus-volume');
  return [annulus, requiredFigure(placed, context, annulus), ...figures, ...filledFigures(placed, context)];
}

function packFigures(placed: PlacedFill, context: RecordContext): Figure[] {
  const figures = placed.string.driven ? [] : [annulusFigure(placed, context, 'volume')];
  return placed.fill.volume ? [...figures, placedFigure(placed, context)] : figures;
}

/** A volume is shown in the unit in which the placed volume was written. */
function volumeOfFill(
  placed: PlacedFill,
  context: RecordContext,
  name: string,
  title: string,
  parts: FillParts,
): Figure {
  const { volume } = placed.fill;
  return figureOfFill(placed, context, name, title, { ...parts, preferred: volume?.unitWritten ? volume.unit : null });
}

const annulusFigure = (placed: PlacedFill, context: RecordContext, name: string): Figure =>
  volumeOfFill(placed, context, name, 'annulus volume', {
    shown: 'volume',
    formula: ofAnnulus,
    ingredients: [annulusIngredient(placed, context)],
    compute: (volume) => volume,
  });

/** `.required-volume` of a fill. */
export const requiredVolumeFigure = (placed: PlacedFill, context: RecordContext): Figure =>
  requiredFigure(placed, context, annulusFigure(placed, context, 'annulus-volume'));

const requiredFigure = (placed: PlacedFill, context: RecordContext, annulus: Figure): Figure =>
  volumeOfFill(placed, context, 'required-volume', 'volume required with the allowance', {
    shown: 'volume',
    formula: ofRequired,
    ingredients: [
      ofFigure('annulus volume', annulus),
      ofLimit('allowance', context.limits['grout-allowance'], allowanceOf(context)),
    ],
    compute: (volume, allowance) => requiredGrout(volume, allowance),
  });

const placedFigure = (placed: PlacedFill, context: RecordContext): Figure =>
  volumeOfFill(placed, context, 'placed-volume', 'volume placed', {
    shown: 'volume',
    formula: ofPlaced,
    ingredients: [placedIngredient(placed.fill)],
    compute: (volume) => volume,
    digits: 'sum',
  });

const netFigure = (placed: PlacedFill, context: RecordContext): Figure =>
  volumeOfFill(placed, context, 'net-volume', 'volume placed that stands in the annulus', {
    shown: 'volume',
    formula: { ...ofAnnulusShare, text: `${ofAnnulusShare.text}; a top-up counts with Vp` },
    ingredients: [netIngredient(placed, context)],
    compute: (volume) => volume,
  });

function filledFigures(placed: PlacedFill, context: RecordContext): Figure[] {
  const ingredients = [netIngredient(placed, context), annulusIngredient(placed, context)];
  const { pieces } = placed.place;
  return [
    figureOfFill(placed, context, 'height-filled', 'height that the placed volume fills', {
      shown: 'length',
      formula: ofFilledTop,
      ingredients,
      compute: (net) => {
        const filled = filledTop(net, pieces);
        return filled.ok ? filled.value.height : filled;
      },
    }),
    figureOfFill(placed, context, 'mean-diameter', 'mean diameter of hole that the placed volume fills', {
      shown: 'diameter',
      formula: ofMeanDiameter,
      ingredients,
      compute: (net) => meanDiameterFilled(net, pieces),
    }),
  ];
}
