import type { Row } from '../../../grammar/table.ts';
import { bodyRowOf, rowOf } from '../amounts.ts';
import { codeBlock, escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import type { HoverSource } from './source.ts';

const depthsTaken: Readonly<Record<Row['depths'], string | null>> = {
  none: null,
  interval: 'an interval',
  depth: 'a depth',
  either: 'a depth or an interval',
  optional: 'a depth where it has one',
};

const slotLine = (row: Row): string | null => {
  const takes = [depthsTaken[row.depths], ...row.slots.map((slot) => slot.doc)].filter((text) => text !== null);
  return takes.length === 0 ? null : `Takes ${takes.map(escapeMarkdown).join('; ')}.`;
};

const spellings = ({ keywords }: Row): string | null =>
  keywords.length < 2 ? null : `Also written: ${keywords.slice(1).join(', ')}`;

/** A keyword: what it says, what it takes, an example. */
export const describeRow = (row: Row): string =>
  paragraphs([
    `**${row.keywords[0] ?? row.id}**: ${escapeMarkdown(row.doc)}`,
    lines([slotLine(row), spellings(row)]),
    codeBlock(row.example),
  ]);

const labelAt: HoverSource = ({ line, at }) => {
  const item = line.items.find(({ label }) => label !== null && touches(label, at.column));
  const slot = bodyRowOf(line)?.slots.find((each) => each.slot === item?.slot);
  if (!item?.label || slot === undefined) return null;
  const { start, end, written } = item.label;
  return { start, end, markdown: `**${escapeMarkdown(written)}**: ${escapeMarkdown(slot.doc)}` };
};

const flagAt: HoverSource = ({ line, at }) => {
  const item = line.items.find(({ value }) => value.kind === 'flag' && touches(value, at.column));
  const slot = bodyRowOf(line)?.slots.find((each) => each.slot === item?.slot);
  if (item === undefined || slot === undefined) return null;
  return {
    start: item.start,
    end: item.end,
    markdown: `**${escapeMarkdown(slot.slot)}**: ${escapeMarkdown(slot.doc)}`,
  };
};

/** The keyword, the label or the lone word under the cursor. */
export const hoverKeyword: HoverSource = (place) => {
  const { keyword } = place.line;
  const row = rowOf(place.line);
  if (keyword === null || row === null || !touches(keyword, place.at.column)) return labelAt(place) ?? flagAt(place);
  return { start: keyword.start, end: keyword.end, markdown: describeRow(row) };
};
