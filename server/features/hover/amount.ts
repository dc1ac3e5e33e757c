import * as l10n from '@vscode/l10n';
import type { Item, Product, Quantity } from '../../../grammar/tree.ts';
import { fromSi, siUnits, toSi, type Unit } from '../../../grammar/units.ts';
import type { Depth } from '../../model/log.ts';
import { type Amount, amountsOf, siOf, unitOf } from '../amounts.ts';
import { inUnit, numberText, otherUnits, unitText } from '../display.ts';
import { escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import { durationText } from './dates.ts';
import { countedFrom, depthLines, depthOf, isDrawdown } from './depth.ts';
import { headOfWater } from './head.ts';
import { nominalLine } from './nominal.ts';
import { pipeLine } from './pipe.ts';
import { angleText, plainNumberNote } from './plain-number.ts';
import { slotWidthLine } from './slot-width.ts';
import { docOf, itemHolding } from './slots.ts';
import type { HoverPlace, HoverSource } from './source.ts';

/** A number on the line, the item that it stands in, and what the log makes of it. */
interface Told {
  readonly amount: Amount;
  readonly item: Item | null;
  readonly place: HoverPlace;
  readonly isDrawdown: boolean;
  /** The depth of the log that it stands for; null for any other number. */
  readonly depth: Depth | null;
}

const doubts = (quantity: Quantity): string | null => {
  const words = [
    quantity.bound === '<' ? l10n.t('less than this') : null,
    quantity.bound === '>' ? l10n.t('more than this') : null,
    quantity.approximate ? l10n.t('approximate') : null,
    quantity.doubtful ? l10n.t('to be confirmed') : null,
  ].filter((word) => word !== null);
  return words.length === 0 ? null : l10n.t('Written as {0}.', words.join(', '));
};

/** The value in SI, where none of the units that it is shown in is. */
const siText = (ends: readonly number[], unit: Unit, shown: readonly Unit[]): string | null => {
  const id = siUnits[unit.dimension];
  if (shown.some((each) => each.id === id) || unit.dimension === 'count') return null;
  const numbers = ends.map(numberText).join(' – ');
  return id === '1' ? numbers : `${numbers} ${unitText(id)}`;
};

const inOne = (ends: readonly number[], unit: Unit): string => {
  const [last = 0] = ends.slice(-1);
  return [...ends.slice(0, -1).map((si) => numberText(fromSi(si, unit))), inUnit(last, unit)].join(' – ');
};

/** Both ends of a range, or the one value, in SI. */
function endsOf(amount: Amount, { snapshot }: HoverPlace): readonly number[] {
  const { units } = snapshot.log;
  const unit = unitOf(amount, units);
  const si = siOf(amount, units);
  if (unit === null || si === null) return [];
  const { high } = amount.quantity;
  const first = amount.role === 'depth' ? Math.abs(si) : si;
  return high === null ? [first] : [first, toSi(high, unit)];
}

/** An easting is given in metres alone: that is what a grid counts in. */
const isOfGrid = (item: Item | null): boolean => item?.slot === 'easting' || item?.slot === 'northing';

function valueLine({ amount, item, place }: Told): string | null {
  if (amount.slot?.slot === 'slot') return slotWidthLine(place);
  const unit = unitOf(amount, place.snapshot.log.units);
  const ends = endsOf(amount, place);
  if (unit === null || ends.length === 0) return null;
  const units = [unit, ...(isOfGrid(item) ? [] : otherUnits(unit))];
  const shown = units.map((each) => inOne(ends, each));
  const [minutes = 0] = unit.id === 'min' ? ends.map((si) => si / 60) : [];
  if (minutes > 60) shown.push(durationText(minutes));
  const si = siText(ends, unit, units);
  return `**${shown.join('** = **')}**${si === null ? '' : ` (SI: ${si})`}`;
}

const gallonLine = (amount: Amount, place: HoverPlace): string | null =>
  unitOf(amount, place.snapshot.log.units)?.gallon
    ? l10n.t('A gallon of which kind? Name it on the units line: gal-us or gal-imp.')
    : null;

/** A number that has no unit: as it stands, and what it comes to. */
function plainLine({ amount, item, place }: Told): string | null {
  const { figure, number, minus } = amount.quantity;
  if (number === null || item === null || unitOf(amount, place.snapshot.log.units) !== null) return null;
  const note = angleText(item.slot, number, minus) ?? plainNumberNote(item.slot, number);
  return [`**${minus ? '-' : ''}${escapeMarkdown(figure)}**`, note === null ? null : escapeMarkdown(note)]
    .filter((text) => text !== null)
    .join(': ');
}

const isProduct = (item: Item | null): item is Item & { readonly value: Product } => item?.value.kind === 'product';

/** What so many of one size come to together. */
function totalLine({ amount, item, place }: Told): string | null {
  if (!isProduct(item) || amount.slot?.slot === 'size') return null;
  const [count, each] = item.value.factors;
  const one: Amount = { ...amount, quantity: each, role: amount.role === 'count' ? 'other' : amount.role };
  const unit = unitOf(one, place.snapshot.log.units);
  const si = siOf(one, place.snapshot.log.units);
  if (unit === null || si === null || count.number === null) return null;
  const total = count.number * si;
  const all = [unit, ...otherUnits(unit)].map((other) => inUnit(total, other)).join(' = ');
  return l10n.t('{0} times {1}: {2} in all', numberText(count.number), inUnit(si, unit), all);
}

const isUnknown = ({ number, td }: Quantity): boolean => number === null && !td;

/** What the number says: of a depth, from where it is counted; of a labelled one, its label. */
function whatOf({ item, place, depth, isDrawdown }: Told): string {
  if (isDrawdown) return l10n.t('drawdown');
  if (item === null) return depth === null ? l10n.t('depth') : countedFrom(depth);
  if (item.label?.term) return item.label.term.name;
  const doc = l10n.t(docOf(place.line, item));
  return item.slot === 'level' && depth !== null ? `${doc}: ${countedFrom(depth)}` : doc;
}

function factsOf(told: Told): string {
  const { amount, place, depth } = told;
  const what = escapeMarkdown(whatOf(told));
  if (isUnknown(amount.quantity)) return l10n.t('**unknown** {0}: a question for the crew', what);
  return paragraphs([
    lines([what, valueLine(told), gallonLine(amount, place), plainLine(told)]),
    lines([
      ...(depth === null ? [] : depthLines(depth, place)),
      totalLine(told),
      nominalLine(amount, place),
      pipeLine(amount, place),
      headOfWater(amount, place),
      doubts(amount.quantity),
    ]),
  ]);
}

/** The second number of `9 x 40 kg bags`, where the cursor stands on the sign or the word of the whole. */
function factorAt({ line, at }: HoverPlace): Amount | undefined {
  const item = line.items.find(({ value }) => value.kind === 'product' && touches(value, at.column)) ?? null;
  return isProduct(item) ? amountsOf(line).find(({ quantity }) => quantity === item.value.factors[1]) : undefined;
}

/** The value under the cursor: in both systems and in SI, and what its kind has besides. */
export const hoverAmount: HoverSource = (place) => {
  const amount = amountsOf(place.line).find(({ quantity }) => touches(quantity, place.at.column)) ?? factorAt(place);
  if (amount === undefined) return null;
  const { quantity } = amount;
  const item = itemHolding(place.line, quantity);
  const drawn = isDrawdown(amount, place);
  const told = { amount, item, place, isDrawdown: drawn, depth: drawn ? null : depthOf(amount, place) };
  return { start: quantity.start, end: quantity.end, markdown: factsOf(told) };
};
