import { type Row, rowById, rowByKeyword } from '../../../grammar/table.ts';
import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { bodyRowOf } from '../amounts.ts';
import { lineAt, type Position } from '../position.ts';
import { opensSection } from '../sections.ts';
import type { UsedWords } from './used-words.ts';

/** The longest line that suggestions are made for. */
const longestLine = 2000;

/** What is known from outside the log. */
export interface Around {
  /** How often terms stand in the logs beside this one. */
  readonly used: UsedWords;
  /** Today as YYYY-MM-DD; null where nobody said. */
  readonly today: string | null;
}

/** A log by itself. */
export const alone: Around = { used: new Map(), today: null };

/** Where suggestions are asked for. */
export interface CompletionPlace {
  readonly snapshot: Snapshot;
  readonly around: Around;
  readonly line: Line;
  readonly at: Position;
  /** The line up to the cursor. */
  readonly before: string;
  /** The word that the cursor stands at the end of; may be empty. */
  readonly word: string;
  /** `before` without the word. */
  readonly lead: string;
  /** What stands between the keyword, if any, and the word. */
  readonly body: string;
  /** The row that reads this line; null at the start of a line and where none does. */
  readonly row: Row | null;
  /** The section that is open above the line: a keyword half typed may have opened another on it. */
  readonly section: string | null;
  readonly where: 'line-start' | 'body' | 'comment' | 'remark';
}

const rowOfSection = (section: string | null): Row | null => {
  const lines = section === null ? null : (rowByKeyword(section)?.lines ?? null);
  return lines === null ? null : rowById(lines);
};

const isBefore = (stretch: { start: number } | null, column: number): boolean =>
  stretch !== null && stretch.start < column;

/** A remark of which nothing is written yet. */
const begunRemark = /;\s*$/;

function whereOf(line: Line, lead: string, column: number): CompletionPlace['where'] {
  if (isBefore(line.comment, column) || isBefore(line.allow, column)) return 'comment';
  if (isBefore(line.remark, column) || begunRemark.test(lead)) return 'remark';
  return lead.trim() === '' ? 'line-start' : 'body';
}

const wordPattern = /[\p{L}][\p{L}\d/&%+-]*$/u;

/** The place under the cursor; null where the text has no such line or the line is too long to be read. */
export function completionPlace(snapshot: Snapshot, position: Position, around: Around): CompletionPlace | null {
  const found = lineAt(snapshot, position);
  const text = found === null ? '' : (snapshot.lines[found.at.line] ?? '');
  if (found === null || text.length > longestLine) return null;
  const { line, at } = found;
  const before = text.slice(0, at.column);
  const word = wordPattern.exec(before)?.[0] ?? '';
  const lead = before.slice(0, before.length - word.length);
  const where = whereOf(line, lead, at.column);
  const afterKeyword = line.keyword !== null && line.keyword.end < at.column ? line.keyword.end : 0;
  const section = snapshot.tree.lines[at.line - 1]?.section ?? null;
  const row = afterKeyword > 0 ? bodyRowOf(line) : rowOfSection(section);
  return { snapshot, around, ...found, before, word, lead, body: lead.slice(afterKeyword), row, section, where };
}

/** How far from the cursor a long log is looked at for what it uses. */
const reach = 400;
const head = 100;

/** The lines above the cursor's, and the head of the log. */
export function linesAbove({ snapshot, at }: CompletionPlace): readonly Line[] {
  const { lines } = snapshot.tree;
  const first = Math.max(0, at.line - reach);
  return [...lines.slice(0, Math.min(head, first)), ...lines.slice(first, at.line)];
}

export const linesBelow = ({ snapshot, at }: CompletionPlace): readonly Line[] =>
  snapshot.tree.lines.slice(at.line + 1, at.line + reach);

/** The lines around the cursor, its own left out, and the head of the log: what they use is what is likely here. */
export const linesAround = (place: CompletionPlace): readonly Line[] => [...linesAbove(place), ...linesBelow(place)];

/** The number of the line that opened the section of a line; null outside sections. */
export function openingLine({ snapshot, at }: CompletionPlace): number | null {
  for (let number = at.line; number >= 0; number -= 1) {
    const line = snapshot.tree.lines[number];
    if (line !== undefined && opensSection(line)) return number;
  }
  return null;
}
