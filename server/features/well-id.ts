import * as l10n from '@vscode/l10n';
import { parseLines } from '../../grammar/index.ts';
import { readLine } from '../../grammar/sections.ts';
import { type Span, spanAt } from '../../grammar/span.ts';
import type { Line, Text } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { lineAt, type Position, touches } from './position.ts';

/** A well's id as it stands on a line: its own, or where another log speaks of it. */
export interface WrittenId {
  readonly span: Span;
  readonly text: string;
  readonly isOwn: boolean;
}

const slotOf = (line: Line): string | null => (line.row === 'observed' ? 'name' : null);

/** Rows that name a well: its own, one that it stands with or takes the place of, one in which levels were read. */
const namingRows: ReadonlySet<string | null> = new Set(['well', 'observed', 'replaces', 'nested']);

function idText(line: Line): Text | null {
  if (!namingRows.has(line.row)) return null;
  const slot = slotOf(line);
  const item = line.items.find((each) => slot === null || each.slot === slot);
  return item?.value.kind === 'text' && !/^[\s?]*$/.test(item.value.text) ? item.value : null;
}

function idsOn(line: Line, number: number): readonly WrittenId[] {
  const value = idText(line);
  if (value === null) return [];
  return [{ span: spanAt(number, value), text: value.text, isOwn: line.row === 'well' }];
}

/** Two ids are one whatever their letter case and blanks. */
export const sameId = (a: string, b: string): boolean => plain(a) === plain(b);

const plain = (id: string): string => id.trim().replace(/\s+/g, ' ').toLowerCase();

/** The well's id under the cursor, on its `well` line or where a line names another well. */
export function wellIdAt(snapshot: Snapshot, position: Position): WrittenId | null {
  const found = lineAt(snapshot, position);
  if (found === null) return null;
  return idsOn(found.line, found.at.line).find(({ span }) => touches(span, found.at.column)) ?? null;
}

/** Every place in a log that names a well. */
export const placesOfId = (lines: readonly string[], id: string): readonly WrittenId[] =>
  parseLines(lines).lines.flatMap((line, number) => idsOn(line, number).filter(({ text }) => sameId(text, id)));

const readsAs = (text: string, section: string | null, id: string): boolean => {
  const { line } = readLine(text, { section, hasString: false });
  return line.allow === null && line.problems.length === 0 && idText(line)?.text === id;
};

/** Why a well cannot be called so; null where it can. `taken` are the ids of the other wells of the folder. */
export function whyNoId(id: string, taken: readonly string[]): string | null {
  if (/^[\s?]*$/.test(id)) return l10n.t('A well needs an id: write letters or digits.');
  if (/\p{Cc}/u.test(id)) return l10n.t('An id stands on one line: leave out line ends and tabs.');
  if (id.trim() !== id) return l10n.t('An id begins and ends with a letter, a digit or a mark, not with a blank.');
  if (!readsAs(`well ${id}`, null, id))
    return l10n.t('"{0}" would not be read again as the id of a well: leave out "# allow".', id);
  if (!readsAs(`observed ${id}, r 1`, 'test', id))
    return l10n.t(
      '"{0}" could not stand behind "observed" in the test of another well: leave out commas, semicolons, quotes, number signs, and words such as "dd" or "r".',
      id,
    );
  const other = taken.find((each) => sameId(each, id));
  return other === undefined ? null : l10n.t('Another well of this folder is called "{0}" already.', other);
}
