import * as l10n from '@vscode/l10n';
import { exact, fromSi, unitById } from '../../../grammar/units.ts';
import { metricNameOf, nominalOfOutside, type PipeMaterial } from '../../calculations/index.ts';
import { type Amount, siOf } from '../amounts.ts';
import { numberText } from '../display.ts';
import type { HoverPlace } from './source.ts';

const pipeSlots = new Set(['size', 'outside', 'pipe']);
const plastics = new Set(['pvc', 'cpvc', 'abs', 'hdpe', 'fibreglass', 'ptfe']);
/** Sizes written in millimetres are rounded. */
const tolerance = 0.0006;

const materialOf = (place: HoverPlace): PipeMaterial => {
  const named = place.line.items.find(({ slot, value }) => slot === 'material' && value.kind === 'term');
  return named?.value.kind === 'term' && plastics.has(named.value.term.id) ? 'plastic' : 'steel';
};

/** The nominal size of pipe that has the outside diameter under the cursor. */
export function nominalLine(amount: Amount, place: HoverPlace): string | null {
  if (amount.slot === null || !pipeSlots.has(amount.slot.slot)) return null;
  const inch = unitById('in');
  const outside = siOf(amount, place.snapshot.log.units);
  if (outside === null || inch === undefined || outside < exact.inch) return null;
  const material = materialOf(place);
  const nominal = nominalOfOutside(outside, material, tolerance);
  if (!nominal.ok) return null;
  const inches = numberText(fromSi(nominal.value, inch));
  const name = metricNameOf(nominal.value, material);
  return name === null
    ? l10n.t('Outside diameter of {0} in nominal pipe', inches)
    : l10n.t('Outside diameter of {0} in nominal pipe (DN {1})', inches, name);
}
