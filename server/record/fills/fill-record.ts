import { annulusShare } from '../../calculations/grout/annulus-share.ts';
import { requiredGrout } from '../../calculations/grout/required-grout.ts';
import { waterCementRatio } from '../../calculations/grout/water-cement-ratio.ts';
import type { Fill } from '../../model/log.ts';
import type { PlacedFill, RecordContext } from '../context.ts';
import { bottomOf, topOf } from '../intervals.ts';
import type { FillRecord } from '../record.ts';
import { stretchText } from '../words.ts';
import { bagsMass, dryVolume, goesInDry, holdsSand, isMixed, mixedVolume, waterOf } from './mix.ts';
import { holeBelowFoot, plugInside, returned, toppedUp } from './net-volume.ts';

/** What the annulus of a fill waits for, in words; empty where its volume is known or it has none to reckon. */
export function annulusWaitsFor({ fill, place }: PlacedFill, context: RecordContext): string[] {
  if (topOf(fill.interval) === null || bottomOf(fill.interval) === null) return [`the depths of the ${fill.kind}`];
  const facts = place.unknown.flatMap(({ top, bottom, fact, local }) => {
    if (fact === null) return [];
    return [local ? `${fact}, ${stretchText({ top, bottom }, context.log.units)}` : fact];
  });
  return [...new Set(facts)];
}

/** Bare annulus in m3; null where part of it is unknown or where there is none. */
export function annulusOf(placed: PlacedFill): number | null {
  const { pieces, unknown } = placed.place;
  if (pieces.length === 0 || unknown.some((stretch) => stretch.fact !== null)) return null;
  return pieces.reduce((sum, piece) => sum + piece.volume, 0);
}

/**
 * Placed volume (that of the bags, where only they are written) and top-up less the plug inside, the hole below the foot
 * and what came back, m3.
 */
export function netOf({ fill, string, place }: PlacedFill, context: RecordContext): number | null {
  const placed = fill.volume === null ? fromBagsOf(fill) : fill.volume.value;
  const inside = plugInside(fill, string).value;
  const below = holeBelowFoot(fill, string, place, context.hole).value;
  const back = returned(fill).value;
  const added = toppedUp(fill).value;
  if (placed === null || inside === null || below === null || back === null || added === null) return null;
  const share = annulusShare(placed + added, inside, below, back);
  return share.ok ? share.value : null;
}

/** Volume that the bags make, m3. */
export function fromBagsOf(fill: Fill): number | null {
  const mass = bagsMass(fill);
  if (mass === null || holdsSand(fill)) return null;
  const water = waterOf(fill, mass);
  const volume = goesInDry(fill) ? dryVolume(fill, mass) : water === null ? null : mixedVolume(fill, mass, water);
  return volume?.ok ? volume.value : null;
}

/** Water to cement by mass: from the mixing water and the bags, else as written. */
export function waterCementOf(fill: Fill): number | null {
  const mass = bagsMass(fill);
  if (isMixed(fill) && mass !== null && fill.water?.value != null) {
    const ratio = waterCementRatio(fill.water.value, mass);
    if (ratio.ok) return ratio.value;
  }
  return fill.waterCement?.value ?? null;
}

export const allowanceOf = (context: RecordContext): number => context.limits['grout-allowance']?.value ?? 0;

export function fillRecordOf(placed: PlacedFill, context: RecordContext): FillRecord {
  const { fill, string, place } = placed;
  const annulus = annulusOf(placed);
  const allowance = allowanceOf(context);
  const required = annulus === null ? null : requiredGrout(annulus, allowance);
  return {
    string: string.number,
    kind: fill.kind,
    number: fill.number,
    line: fill.line,
    top: topOf(fill.interval),
    bottom: bottomOf(fill.interval),
    pieces: [...place.pieces],
    unknown: place.unknown.map(({ top, bottom, why }) => ({ top, bottom, why })),
    annulus,
    required: required?.ok ? required.value : null,
    placed: fill.volume?.value ?? null,
    net: netOf(placed, context),
    fromBags: fromBagsOf(fill),
    waterCement: waterCementOf(fill),
    allowance,
  };
}
