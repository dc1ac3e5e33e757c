import * as l10n from '@vscode/l10n';
import type { Row } from '../../../grammar/table.ts';
import type { Item } from '../../../grammar/tree.ts';
import { rowOf } from '../amounts.ts';
import { codeBlock, codeSpan, escapeMarkdown, lines, paragraphs } from '../markdown.ts';
import { touches } from '../position.ts';
import { distancesFrom, limitsOfRow } from './row-limits.ts';
import { docOf, slotOf } from './slots.ts';
import type { HoverPart, HoverPlace, HoverSource } from './source.ts';
import { describeTerm } from './term.ts';

function depthsTaken({ depths }: Row): string | null {
  switch (depths) {
    case 'interval':
      return l10n.t('an interval');
    case 'depth':
      return l10n.t('a depth');
    case 'either':
      return l10n.t('a depth or an interval');
    case 'optional':
      return l10n.t('a depth where it has one');
    default:
      return null;
  }
}

const slotLine = (row: Row): string | null => {
  const takes = [depthsTaken(row), ...row.slots.map(({ doc }) => l10n.t(doc))].filter((text) => text !== null);
  return takes.length === 0 ? null : l10n.t('Takes {0}.', takes.map(escapeMarkdown).join('; '));
};

const spellings = ({ keywords }: Row): string | null =>
  keywords.length < 2 ? null : l10n.t('Also written: {0}', keywords.slice(1).join(', '));

/** A keyword: what it says, what it takes, an example. */
export const describeRow = (row: Row): string =>
  paragraphs([
    `**${row.keywords[0] ?? row.id}**: ${escapeMarkdown(l10n.t(row.doc))}`,
    lines([slotLine(row), spellings(row)]),
    codeBlock(row.example),
  ]);

/** The term that a value stands behind, as `septic 31`. */
function termLabel({ label, slot }: Item, place: HoverPlace): string | null {
  const list = slotOf(place.line, slot)?.labelList ?? null;
  if (!label?.term || list === null) return null;
  return paragraphs([describeTerm(list, label.term), distancesFrom(label.term.id, place)]);
}

function labelAt(place: HoverPlace): HoverPart | null {
  const { line, at } = place;
  const item = line.items.find(({ label }) => label !== null && touches(label, at.column));
  if (!item?.label) return null;
  const { start, end, written } = item.label;
  const doc = `**${escapeMarkdown(written)}**: ${escapeMarkdown(l10n.t(docOf(line, item)))}`;
  return { start, end, markdown: termLabel(item, place) ?? doc };
}

const flagAt: HoverSource = ({ line, at }) => {
  const item = line.items.find(({ value }) => value.kind === 'flag' && touches(value, at.column));
  if (item === undefined) return null;
  const written = line.text.slice(item.value.start, item.value.end);
  const markdown = `**${escapeMarkdown(written)}**: ${escapeMarkdown(l10n.t(docOf(line, item)))}`;
  return { start: item.start, end: item.end, markdown };
};

/** The word `utm` of a place, which is no item of the line. */
const gridAt: HoverSource = ({ line, at }) => {
  const zone = line.row === 'place' ? line.items.find(({ slot }) => slot === 'zone' || slot === 'easting') : undefined;
  const start = line.keyword === null ? -1 : line.text.toLowerCase().indexOf('utm', line.keyword.end);
  if (zone === undefined || start < 0 || start > zone.start) return null;
  const grid = { start, end: start + 'utm'.length };
  const markdown = l10n.t('{0}: universal transverse Mercator, with zone, easting and northing', codeSpan('utm'));
  return touches(grid, at.column) ? { ...grid, markdown } : null;
};

/** The keyword, the label or the lone word under the cursor. */
export const hoverKeyword: HoverSource = (place) => {
  const { keyword } = place.line;
  const row = rowOf(place.line);
  if (keyword === null || row === null || !touches(keyword, place.at.column))
    return labelAt(place) ?? flagAt(place) ?? gridAt(place);
  const { start, end } = keyword;
  return { start, end, markdown: paragraphs([describeRow(row), limitsOfRow(row.id, place)]) };
};
