import * as l10n from '@vscode/l10n';
import type { Columns } from '../../grammar/span.ts';
import type { Accepts, Row, Slot } from '../../grammar/table.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { orList } from '../rules/messages.ts';
import { bodyRowOf, rowOf } from './amounts.ts';
import { unitText } from './display.ts';
import { homeUnits } from './home-units.ts';
import { escapeMarkdown, lines } from './markdown.ts';
import { lackedBy } from './next-item.ts';
import { lineAt, type Position, touches } from './position.ts';
import { termsOf } from './words.ts';

/** One thing that a line takes: its columns in the label, and what it means, in Markdown. */
export interface Parameter extends Columns {
  readonly markdown: string;
}

/** What a line takes, in order; what it may also do without stands in brackets. */
export interface Signature {
  readonly label: string;
  readonly markdown: string;
  readonly parameters: readonly Parameter[];
  /** Index of the parameter that the cursor is in, or that comes next. */
  readonly active: number;
  /** True where it may be shown to one who did not ask: a line that a keyword begins, still lacking something. */
  readonly unasked: boolean;
}

/** A line that takes fewer things needs no help. */
const fewestSlots = 3;
const mostTerms = 8;
const mostUnits = 4;

const depthWords: Readonly<Record<Row['depths'], () => string | null>> = {
  none: () => null,
  interval: () => l10n.t('top - bottom'),
  depth: () => l10n.t('depth'),
  either: () => l10n.t('depth or top - bottom'),
  optional: () => `[${l10n.t('depth')}]`,
};

function slotName({ slot, labels, labelled, accepts }: Slot): string {
  const name = slot.replaceAll('-', ' ');
  const [label] = labels;
  if (accepts.every(({ kind }) => kind === 'flag')) return name;
  if (labelled !== 'must' || label === undefined) return l10n.t(name);
  return label.replaceAll('-', ' ') === name ? `${label} …` : `${label} ${l10n.t(name)}`;
}

const slotWords = (slot: Slot): string => (slot.expected ? slotName(slot) : `[${slotName(slot)}]`);

function acceptsText(accepts: Accepts, { log }: Snapshot): string | null {
  if (accepts.kind === 'quantity') {
    const units = homeUnits(accepts.dimension, log.units).slice(0, mostUnits);
    return l10n.t('in {0} …', units.map(({ id }) => unitText(id)).join(', '));
  }
  if (accepts.kind !== 'terms') return null;
  const names = accepts.lists.flatMap((list) => termsOf(list).map(({ name }) => name));
  return `${names.slice(0, mostTerms).join(', ')}${names.length > mostTerms ? ' …' : ''}`;
}

function bareText({ bare }: Slot, { log: { units } }: Snapshot): string | null {
  if (bare !== 'depth' && bare !== 'diameter') return null;
  return l10n.t('a number without a unit is in {0}', unitText(units[bare]));
}

function slotMarkdown(slot: Slot, snapshot: Snapshot): string {
  const parts = [
    l10n.t(slot.doc),
    slot.labels.length === 0 ? null : l10n.t('written behind {0}', orList(slot.labels)),
    ...slot.accepts.map((accepts) => acceptsText(accepts, snapshot)),
    bareText(slot, snapshot),
    slot.many ? l10n.t('may be given more than once') : null,
  ];
  return lines(parts.filter((part) => part !== null).map(escapeMarkdown));
}

interface Piece {
  readonly words: string;
  readonly markdown: string;
  readonly slot: string | null;
}

const piecesOf = (row: Row, snapshot: Snapshot): readonly Piece[] => {
  const depths = depthWords[row.depths]();
  return [
    ...(depths === null
      ? []
      : [{ words: depths, markdown: l10n.t('below ground; above it with a plus sign'), slot: null }]),
    ...row.slots.map((slot) => ({ words: slotWords(slot), markdown: slotMarkdown(slot, snapshot), slot: slot.slot })),
  ];
};

function laidOut(lead: string, pieces: readonly Piece[]): { label: string; parameters: readonly Parameter[] } {
  let label = lead;
  const parameters = pieces.map(({ words, markdown }, at) => {
    const start = label.length + (at === 0 ? 1 : 2);
    label += `${at === 0 ? ' ' : ', '}${words}`;
    return { start, end: label.length, markdown };
  });
  return { label, parameters };
}

const hasDepths = (line: Line, column: number): boolean => line.depths !== null && column > line.depths.end;

function activeSlot(line: Line, row: Row, column: number): string | null | undefined {
  if (row.depths !== 'none' && row.depths !== 'optional' && !hasDepths(line, column)) return null;
  const under = line.items.find((item) => touches(item, column));
  if (under !== undefined) return under.slot;
  const given = new Set(line.items.map(({ slot }) => slot));
  return lackedBy(line, row, null)[0]?.slot ?? row.slots.find(({ slot }) => !given.has(slot))?.slot;
}

const endOfItems = (line: Line): number => Math.max(line.items.at(-1)?.end ?? 0, line.depths?.end ?? 0);

const isInTail = ({ remark, comment, allow }: Line, column: number): boolean =>
  [remark, comment, allow].some((part) => part !== null && column > part.start);

/** What the line under the cursor takes; null in remarks and comments, and where a line takes little or any text. */
export function signatureHelp(snapshot: Snapshot, position: Position): Signature | null {
  const found = lineAt(snapshot, position);
  const row = found === null ? null : bodyRowOf(found.line);
  if (found === null || row === null || row.body !== 'items' || row.slots.length < fewestSlots) return null;
  const { line, at } = found;
  if (isInTail(line, at.column) || (line.keyword !== null && at.column <= line.keyword.end)) return null;
  const pieces = piecesOf(row, snapshot);
  const slot = activeSlot(line, row, at.column);
  const lead = rowOf(line)?.keywords[0] ?? '';
  const active = pieces.findIndex((piece) => piece.slot === slot);
  return {
    ...laidOut(lead, pieces),
    markdown: escapeMarkdown(l10n.t(row.doc)),
    active: active < 0 ? pieces.length - 1 : active,
    unasked: line.keyword !== null && at.column >= endOfItems(line) && lackedBy(line, row, null).length > 0,
  };
}
