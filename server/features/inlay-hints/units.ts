import * as l10n from '@vscode/l10n';
import { type Unit, unitById } from '../../../grammar/units.ts';
import type { FileUnits } from '../../model/log.ts';
import { type Amount, amountsOf, siOf, unitOf } from '../amounts.ts';
import { inUnit, otherUnits } from '../display.ts';
import type { HintSource } from './hint.ts';

const systemOf = ({ system, id }: Unit, { gallon }: FileUnits): 'metric' | 'us' | 'any' => {
  if (system !== 'imperial') return system;
  return gallon === 'gal-imp' || !/gal|gp/.test(id) ? 'us' : 'any';
};

/** The unit of the file's own system for a value that is written in the other's. */
function homeUnit(amount: Amount, units: FileUnits): Unit | null {
  const written = unitOf(amount, units);
  const home = unitById(units.depth)?.system;
  if (written === null || amount.quantity.unit === null) return null;
  const system = systemOf(written, units);
  if (system === 'any' || system === home) return null;
  return otherUnits(written).find((unit) => unit.system === home) ?? null;
}

/** What a value comes to in the file's own units, where it is written in others. */
export const unitHints: HintSource = ({ log: { units } }, line, number) =>
  amountsOf(line).flatMap((amount) => {
    const unit = homeUnit(amount, units);
    const si = unit === null ? null : siOf(amount, units);
    if (unit === null || si === null || amount.quantity.number === 0) return [];
    const text = inUnit(amount.role === 'depth' ? Math.abs(si) : si, unit);
    return [
      {
        line: number,
        column: amount.quantity.end,
        text: `= ${text}`,
        about: () => l10n.t('{0}, in the units of this file', text),
      },
    ];
  });
