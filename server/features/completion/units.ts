import * as l10n from '@vscode/l10n';
import type { Accepts, Slot } from '../../../grammar/table.ts';
import type { Dimension, Unit } from '../../../grammar/units.ts';
import { amountsOf } from '../amounts.ts';
import { homeUnits } from '../home-units.ts';
import type { CompletionPlace } from './place.ts';
import { depthsWritten, openSlots, touchesNumber, waitsForUnit } from './slots.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const dimensionsOf = (accepts: Accepts): readonly Dimension[] => {
  if (accepts.kind === 'quantity') return [accepts.dimension];
  if (accepts.kind === 'size' || accepts.kind === 'list' || accepts.kind === 'interval') return ['length'];
  if (accepts.kind === 'bags') return ['count', 'mass'];
  return accepts.kind === 'elapsed' ? ['time'] : [];
};

const numberAtEnd = /\s*[<>~+]?[\d.,/]+\s*$/;

const labelBefore = (lead: string, slot: Slot): boolean => {
  const words = ` ${lead
    .replace(numberAtEnd, '')
    .replace(/[,\s]+/g, ' ')
    .toLowerCase()}`;
  return slot.labels.some((label) => words.endsWith(` ${label.toLowerCase()}`));
};

function slotsForNumber(place: CompletionPlace): readonly Slot[] {
  const all = place.row?.slots ?? [];
  const labelled = all.find((slot) => labelBefore(place.lead, slot));
  if (labelled !== undefined) return [labelled];
  return openSlots(place).filter((slot) => slot.labelled !== 'must' || slot.labelList !== null);
}

const isDepth = ({ line, at, lead, ...place }: CompletionPlace): boolean =>
  amountsOf(line).some(
    ({ slot, quantity }) => slot === null && quantity.start < at.column && quantity.end >= lead.length,
  ) || !depthsWritten({ line, at, lead, ...place });

const suggestionOf = (unit: Unit): Suggestion =>
  plain('unit', unit.id, l10n.t(unit.name), { filter: [unit.id, ...unit.spellings].join(' ') });

/** The units that make the number before the cursor one of the items that the line still lacks. */
export const suggestUnits: SuggestionSource = (place) => {
  if (place.row?.body !== 'items' || place.where === 'comment' || place.where === 'remark') return [];
  if (!touchesNumber(place) && !waitsForUnit(place)) return [];
  const ofDepth = isDepth(place);
  // A depth has the unit of the file: a list that opens by itself behind its digits would take the Tab that goes on.
  if (ofDepth && place.word === '') return [];
  const dimensions: readonly Dimension[] = ofDepth
    ? ['length']
    : slotsForNumber(place).flatMap((slot) => slot.accepts.flatMap(dimensionsOf));
  return [...new Set(dimensions)]
    .flatMap((dimension) => homeUnits(dimension, place.snapshot.log.units))
    .map(suggestionOf);
};
