import * as l10n from '@vscode/l10n';
import { type Unit, unitById } from '../../../grammar/units.ts';
import type { PipeSize } from '../../model/log.ts';
import type { Amount } from '../amounts.ts';
import { inBothSystems } from '../display.ts';
import { entryOf } from '../entries.ts';
import { escapeMarkdown } from '../markdown.ts';
import type { HoverPlace } from './source.ts';

const sizeSlots = new Set(['size', 'nominal', 'outside', 'inside', 'schedule', 'sdr']);

const hasSize = (entry: object): entry is { readonly size: PipeSize } => 'size' in entry && entry.size !== null;

const both = (metres: number, unit: Unit): string => inBothSystems(metres, unit).join(' = ');

/** How the outside diameter is known, as the log has it. */
function basisText(basis: string): string {
  const [, nominal] = /^tabled for (.+) nominal$/.exec(basis) ?? [];
  const [, untabled] = /^no tabled size for (.+) nominal$/.exec(basis) ?? [];
  if (nominal !== undefined) return l10n.t('tabled for {0} nominal', nominal);
  if (untabled !== undefined) return l10n.t('no tabled size for {0} nominal', untabled);
  return basis === 'written' ? l10n.t('written') : basis;
}

/** What the size of a string comes to: outside, wall and inside, and how the outside is known. */
export function pipeLine(amount: Amount, { snapshot: { log }, line, at }: HoverPlace): string | null {
  if (amount.slot === null || !sizeSlots.has(amount.slot.slot) || line.row === null) return null;
  const unit = unitById(log.units.diameter);
  const entry = entryOf(log, line.row, at.line);
  if (entry === null || unit === undefined || !hasSize(entry)) return null;
  const { outsideDiameter, wallThickness, insideDiameter, basis } = entry.size;
  const parts = [
    outsideDiameter === null ? null : l10n.t('outside {0}', both(outsideDiameter, unit)),
    wallThickness === null ? null : l10n.t('wall {0}', both(wallThickness, unit)),
    insideDiameter === null ? null : l10n.t('inside {0}', both(insideDiameter, unit)),
  ].filter((each) => each !== null);
  if (parts.length === 0) return null;
  return l10n.t('Pipe: {0} ({1})', parts.join('; '), escapeMarkdown(basisText(basis)));
}
