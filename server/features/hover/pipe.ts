import { type Unit, unitById } from '../../../grammar/units.ts';
import type { PipeSize } from '../../model/log.ts';
import type { Amount } from '../amounts.ts';
import { inBothSystems } from '../display.ts';
import { entryOf } from '../entries.ts';
import { escapeMarkdown } from '../markdown.ts';
import type { HoverPlace } from './source.ts';

const sizeSlots = new Set(['size', 'nominal', 'outside', 'inside', 'schedule', 'sdr']);

const hasSize = (entry: object): entry is { readonly size: PipeSize } => 'size' in entry && entry.size !== null;

const part = (name: string, metres: number | null, unit: Unit): string | null =>
  metres === null ? null : `${name} ${inBothSystems(metres, unit).join(' = ')}`;

/** What the size of a string comes to: outside, wall and inside, and how the outside is known. */
export function pipeLine(amount: Amount, { snapshot: { log }, line, at }: HoverPlace): string | null {
  const unit = unitById(log.units.diameter);
  if (!sizeSlots.has(amount.slot?.slot ?? '') || line.row === null || unit === undefined) return null;
  const entry = entryOf(log, line.row, at.line);
  if (entry === null || !hasSize(entry)) return null;
  const { outsideDiameter, wallThickness, insideDiameter, basis } = entry.size;
  const parts = [
    part('outside', outsideDiameter, unit),
    part('wall', wallThickness, unit),
    part('inside', insideDiameter, unit),
  ].filter((each) => each !== null);
  return parts.length === 0 ? null : `Pipe: ${parts.join('; ')}${basis === '' ? '' : ` (${escapeMarkdown(basis)})`}`;
}
