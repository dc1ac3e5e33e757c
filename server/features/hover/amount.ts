import type { Quantity } from '../../../grammar/tree.ts';
import { siUnits, type Unit } from '../../../grammar/units.ts';
import { type Amount, amountsOf, siOf, unitOf } from '../amounts.ts';
import { inBothSystems, numberText, unitText } from '../display.ts';
import { escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import { depthLines } from './depth.ts';
import { nominalLine } from './nominal.ts';
import { pipeLine } from './pipe.ts';
import type { HoverPlace, HoverSource } from './source.ts';

const doubts = (quantity: Quantity): string | null => {
  const words = [
    quantity.approximate ? 'approximate' : null,
    quantity.doubtful ? 'to be confirmed' : null,
    quantity.bound === '<' ? 'less than this' : null,
    quantity.bound === '>' ? 'more than this' : null,
  ].filter((word) => word !== null);
  return words.length === 0 ? null : `Written as ${words.join(', ')}.`;
};

const aboutUnknown = (what: string): string => `**unknown** ${what}: a question for the crew`;

const siText = (si: number, unit: Unit): string => {
  const id = siUnits[unit.dimension];
  return id === '1' ? numberText(si) : `${numberText(si)} ${unitText(id)}`;
};

function valueLine(amount: Amount, place: HoverPlace): string | null {
  const { units } = place.snapshot.log;
  const unit = unitOf(amount, units);
  const si = siOf(amount, units);
  if (unit === null || si === null) return null;
  const shown = inBothSystems(amount.role === 'depth' ? Math.abs(si) : si, unit);
  return `**${shown.join('** = **')}** (SI: ${siText(si, unit)})`;
}

const gallonLine = (amount: Amount, place: HoverPlace): string | null =>
  unitOf(amount, place.snapshot.log.units)?.gallon
    ? 'A gallon of which kind? Name it on the units line: gal-us or gal-imp.'
    : null;

const countLine = ({ role, quantity }: Amount): string | null => (role === 'count' ? `count ${quantity.figure}` : null);

const isUnknown = ({ number, td }: Quantity): boolean => number === null && !td;

const factsOf = (amount: Amount, place: HoverPlace): string => {
  const what = amount.slot === null ? 'depth' : amount.slot.doc;
  if (isUnknown(amount.quantity)) return aboutUnknown(escapeMarkdown(what));
  return paragraphs([
    lines([escapeMarkdown(what), valueLine(amount, place), gallonLine(amount, place), countLine(amount)]),
    lines([...depthLines(amount, place), nominalLine(amount, place), pipeLine(amount, place), doubts(amount.quantity)]),
  ]);
};

/** The value under the cursor: in both systems and in SI, and what its kind has besides. */
export const hoverAmount: HoverSource = (place) => {
  const amount = amountsOf(place.line).find(({ quantity }) => touches(quantity, place.at.column));
  if (amount === undefined) return null;
  const { start, end } = amount.quantity;
  return { start, end, markdown: factsOf(amount, place) };
};
