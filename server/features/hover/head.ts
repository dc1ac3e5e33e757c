import * as l10n from '@vscode/l10n';
import { unitById } from '../../../grammar/units.ts';
import { STANDARD_GRAVITY, WATER_DENSITY } from '../../calculations/index.ts';
import { type Amount, siOf, unitOf } from '../amounts.ts';
import { inBothSystems } from '../display.ts';
import type { HoverPlace } from './source.ts';

/** A pressure at the head of a flowing well as the height to which its water would stand. Source: hydrostatics, p = ρ g h. */
export function headOfWater(amount: Amount, { snapshot: { log } }: HoverPlace): string | null {
  if (amount.slot?.slot !== 'shut-in') return null;
  const unit = unitById(log.units.depth);
  const pressure = siOf(amount, log.units);
  if (unit === undefined || pressure === null) return null;
  const isPressure = unitOf(amount, log.units)?.dimension === 'pressure';
  const head = pressure / (WATER_DENSITY * STANDARD_GRAVITY);
  return [
    isPressure ? l10n.t('{0} of fresh water above the gauge', inBothSystems(head, unit).join(' = ')) : null,
    l10n.t(
      'Caution: water under pressure. Control of a flowing well is work for licensed hands, under the local code.',
    ),
  ]
    .filter((text) => text !== null)
    .join('  \n');
}
