import * as l10n from '@vscode/l10n';
import type { Line, Quantity } from '../../../grammar/tree.ts';
import { unitById } from '../../../grammar/units.ts';
import { inUnit } from '../display.ts';
import { isBehindEmptyLine } from './keywords.ts';
import { type CompletionPlace, openingLine } from './place.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const takesInterval = (place: CompletionPlace): boolean =>
  place.row !== null && ['interval', 'either'].includes(place.row.depths);

const writtenOf = (text: string, { start, end }: Quantity): string => text.slice(start, end).trim();

const baseOf = (line: Line): Quantity | null => (line.depths?.kind === 'interval' ? line.depths.to : null);

const fills = new Set(['grout', 'seal', 'pack']);

const isSameColumn = (line: Line, row: string): boolean =>
  line.row === row || (fills.has(row) && line.row !== null && fills.has(line.row));

/** The base of the last interval above that the row's own column holds, as written. */
function baseAbove(place: CompletionPlace, row: string): string | null {
  const first = openingLine(place) ?? 0;
  for (let number = place.at.line - 1; number >= first; number -= 1) {
    const line = place.snapshot.tree.lines[number];
    const base = line && isSameColumn(line, row) ? baseOf(line) : null;
    if (line && base) return writtenOf(line.text, base);
  }
  return null;
}

function nextInterval(place: CompletionPlace): readonly Suggestion[] {
  const base = place.row === null ? null : baseAbove(place, place.row.id);
  const detail = base === null ? l10n.t('from the top') : l10n.t('from {0}, the base above', base);
  return [plain('depth', '- ', detail)];
}

function bottom({ snapshot }: CompletionPlace): readonly Suggestion[] {
  const unit = unitById(snapshot.log.units.depth);
  const depth = snapshot.log.totalDepth;
  const detail =
    depth === null || unit === undefined
      ? l10n.t('bottom of the hole')
      : l10n.t('bottom of the hole, {0}', inUnit(depth, unit));
  return [plain('depth', 'td', detail)];
}

const hangsOnString = (place: CompletionPlace): boolean => place.row?.of.includes('casing') ?? false;

function footOfString(place: CompletionPlace): readonly Suggestion[] {
  const opened = hangsOnString(place) ? openingLine(place) : null;
  const opener = opened === null ? undefined : place.snapshot.tree.lines[opened];
  const foot = opener === undefined ? null : baseOf(opener);
  if (opener === undefined || foot === null || foot.td || foot.number === null) return [];
  return [plain('depth', writtenOf(opener.text, foot), l10n.t('foot of the string'))];
}

const afterDash = /^\s*(?:[+~]?\s*[\d.][^\s,]*(?:\s+(?:m|ft|cm|in))?\s*)?(?:-|–|—|\bto\b)\s*$/;

const isDepthLine = ({ line, row }: CompletionPlace): boolean => row?.where === 'depth-line' && line.keyword === null;

/** The next depth: `- ` at the start of a depth line, and after a dash the foot of the string and the bottom of the hole. */
export const suggestDepths: SuggestionSource = (place) => {
  if (!takesInterval(place) && place.row?.depths !== 'depth') return [];
  if (place.where === 'line-start')
    return isDepthLine(place) && place.word === '' && !isBehindEmptyLine(place) ? nextInterval(place) : [];
  if (place.where !== 'body' && place.line.keyword === null) return [];
  const single = place.row?.depths !== 'interval' && place.line.keyword !== null && place.body.trim() === '';
  if (single) return footOfString(place);
  return afterDash.test(place.body) ? [...footOfString(place), ...bottom(place)] : [];
};
