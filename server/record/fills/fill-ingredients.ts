import { BENTONITE_RELATIVE_DENSITY } from '../../calculations/constants.ts';
import type { FileUnits, Fill } from '../../model/log.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { plainText, show } from '../display.ts';
import { significant } from '../format-number.ts';
import { within } from '../geometry/layers.ts';
import { type Ingredient, measured, together, worked } from '../ingredient.ts';
import { intervalInDoubt } from '../intervals.ts';
import type { AnnulusPiece, FigureInput } from '../record.ts';
import { stretchText } from '../words.ts';
import { annulusOf, annulusWaitsFor, fromBagsOf, netOf } from './fill-record.ts';
import { cementDensity, goesInDry, holdsSand } from './mix.ts';
import { holeBelowFoot, type Part, plugInside, returned, toppedUp } from './net-volume.ts';

/** Count of the bags, and the mass of one; or the mass of all. Their product is the mass. */
export function bagIngredients(fill: Fill): Ingredient[] {
  const { line, bags, mass } = fill;
  if (bags === null && mass) return [measured('mass placed', mass, 'kg', line, 'the mass placed')];
  return [
    measured('bags', bags?.count ?? null, '1', line, 'the number of bags'),
    measured('mass of a bag', bags?.massEach ?? null, 'kg', line, 'the mass of a bag'),
  ];
}

/** Relative densities of the solids of a mix; of a mix with sand, the sand that nobody weighed. */
export function solidIngredients(fill: Fill, units: FileUnits): Ingredient[] {
  const slurry = fill.fillClass === 'bentonite-slurry';
  const bentonite = worked('relative density of bentonite', BENTONITE_RELATIVE_DENSITY, 'ratio', units);
  const cement = worked('relative density of cement', cementDensity(fill), 'ratio', units);
  const sand = holdsSand(fill) ? [measured('sand', null, 'kg', fill.line, 'the sand of the mix')] : [];
  if (slurry) return [bentonite, ...sand];
  return fill.bentonite ? [bentoniteIngredient(fill), cement, bentonite, ...sand] : [cement, ...sand];
}

/** Share of bentonite in cement. */
export const bentoniteIngredient = (fill: Fill): Ingredient =>
  measured('bentonite', fill.bentonite, '1', fill.line, 'the share of bentonite');

/** What tells the water of a mix: its volume, else the ratio to the cement, or the solids of a slurry. */
export function waterIngredient(fill: Fill): Ingredient {
  const { line } = fill;
  if (fill.water?.value != null) return measured('mixing water', fill.water, 'm3', line, 'the mixing water');
  if (fill.fillClass === 'bentonite-slurry') {
    return measured('solids', fill.solids, '1', line, 'the mixing water or the solids of the slurry');
  }
  const ratio = fill.waterCement;
  return measured('water to cement', ratio, '1', line, 'the mixing water or the water-cement ratio');
}

const mostPiecesShown = 12;

/** The bare annulus of a fill, m3, with the diameters and depths of its pieces. */
export function annulusIngredient(placed: PlacedFill, context: RecordContext): Ingredient {
  const { fill, place } = placed;
  const value = annulusOf(placed);
  const waitsFor = annulusWaitsFor(placed, context);
  return {
    value,
    inputs: [
      ...place.pieces.slice(0, mostPiecesShown).flatMap((piece) => pieceInputs(piece, placed, context)),
      ...restInput(place.pieces.slice(mostPiecesShown), placed, context),
    ],
    waitsFor: value === null && waitsFor.length === 0 ? ['an annulus in the ground'] : waitsFor,
    doubtful: place.doubtful || intervalInDoubt(fill.interval),
    significant: digitsShown,
    decimals: null,
    unit: null,
  };
}

const digitsShown = 3;

function pieceInputs(piece: AnnulusPiece, { fill, string }: PlacedFill, { log, hole }: RecordContext): FigureInput[] {
  const { units } = log;
  const where = stretchText(piece, units);
  const diameter = (name: string, value: number, line: number | null): FigureInput => ({
    name: `${name}, ${where}`,
    value,
    unit: 'm',
    text: plainText(value, 'diameter', units),
    line,
  });
  const bounds = piece.bounds === 'hole' ? 'hole' : `inside of string ${piece.bounds}`;
  const length = piece.bottom - piece.top;
  return [
    diameter(bounds, piece.outer, lineOfWall(piece, log.strings, hole)),
    diameter('string', piece.inner, string.line),
    {
      name: `length, ${where}`,
      value: length,
      unit: 'm',
      text: plainText(length, 'length', units),
      line: fill.line,
    },
  ];
}

/** The pieces that are not shown one by one, together. */
function restInput(pieces: readonly AnnulusPiece[], { fill }: PlacedFill, { log }: RecordContext): FigureInput[] {
  if (pieces.length === 0) return [];
  const value = pieces.reduce((sum, { volume }) => sum + volume, 0);
  const { text } = show(value, 'volume', log.units);
  return [{ name: `${pieces.length} more pieces, together`, value, unit: 'm3', text, line: fill.line }];
}

function lineOfWall(
  piece: AnnulusPiece,
  strings: RecordContext['log']['strings'],
  hole: RecordContext['hole'],
): number | null {
  if (piece.bounds !== 'hole') return strings[Number(piece.bounds) - 1]?.line ?? null;
  return within(hole, piece)[0]?.of.line ?? null;
}

/** The volume that the log says was placed, m3. */
export const placedIngredient = (fill: Fill): Ingredient =>
  measured('placed volume', fill.volume, 'm3', fill.line, 'the volume placed');

const ofPart = (name: string, part: Part, { fill }: PlacedFill, context: RecordContext): Ingredient => ({
  value: part.value,
  inputs: [
    {
      name,
      value: part.value,
      unit: 'm3',
      text: part.value === null ? '?' : show(part.value, 'volume', context.log.units, significant(3)).text,
      line: fill.line,
    },
  ],
  waitsFor: part.waitsFor,
  doubtful: part.doubtful,
  significant: null,
  decimals: null,
  unit: null,
});

/** Top-up, plug inside, hole below the foot, returns: each that the log tells of, m3. */
export function netParts(placed: PlacedFill, context: RecordContext): Ingredient[] {
  const { fill, string, place } = placed;
  const parts: [string, Part][] = [
    ['top-up', toppedUp(fill)],
    ['plug left inside', plugInside(fill, string)],
    ['hole below the foot', holeBelowFoot(fill, string, place, context.hole)],
    ['returned at surface', returned(fill)],
  ];
  return parts.filter(([, part]) => part.value !== 0).map(([name, part]) => ofPart(name, part, placed, context));
}

/** The volume placed, m3; that of the bags or of the mass, where only they are written. */
function amountIngredient(fill: Fill): Ingredient {
  const made = fromBagsOf(fill);
  if (fill.volume !== null || made === null) return placedIngredient(fill);
  const water = goesInDry(fill) ? [] : [waterIngredient(fill)];
  return together([...bagIngredients(fill), ...water], () => made);
}

/** What stands in the annulus of what was placed, m3. */
export function netIngredient(placed: PlacedFill, context: RecordContext): Ingredient {
  const parts = [amountIngredient(placed.fill), ...netParts(placed, context)];
  const value = netOf(placed, context);
  const waitsFor = parts.flatMap((part) => part.waitsFor);
  return {
    value,
    inputs: parts.flatMap((part) => part.inputs),
    waitsFor: value === null && waitsFor.length === 0 ? ['parts that are not more than what was placed'] : waitsFor,
    doubtful: parts.some((part) => part.doubtful),
    significant: digitsShown,
    decimals: null,
    unit: null,
  };
}
