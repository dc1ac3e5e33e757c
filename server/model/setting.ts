import type { BareUnit } from '../../grammar/table.ts';
import { type Gallon, type Unit, unitById } from '../../grammar/units.ts';
import type { FileUnits } from './log.ts';

/**
 * What the reading of one line depends on beside its text: the units of bare numbers and the datum of bare levels.
 * Settings that say the same are the same object, so that what was read of a line can be kept by it.
 */
export interface Setting {
  readonly depth: Unit;
  readonly diameter: Unit;
  readonly gallon: Gallon | null;
  /** The datum of a level that names none. */
  readonly datum: 'bgs' | 'toc';
}

const settings = new Map<string, Setting>();

function lengthUnit(id: string): Unit {
  const unit = unitById(id);
  if (!unit) throw new Error(`no unit ${id}`);
  return unit;
}

/** The one setting of these units and this datum. */
export function settingOf({ depth, diameter, gallon }: FileUnits, datum: Setting['datum']): Setting {
  const key = `${depth} ${diameter} ${gallon} ${datum}`;
  const known = settings.get(key);
  if (known) return known;
  const setting = { depth: lengthUnit(depth), diameter: lengthUnit(diameter), gallon, datum };
  settings.set(key, setting);
  return setting;
}

/** The unit that a bare number takes in its place; null where it has none. */
export function bareUnit(setting: Setting, bare: BareUnit): Unit | null {
  if (bare === 'depth') return setting.depth;
  return bare === 'diameter' ? setting.diameter : null;
}
