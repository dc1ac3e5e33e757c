import { analyse } from '../../server/analysis/index.ts';
import type { Settings, Snapshot } from '../../server/analysis/snapshot.ts';
import type { Position } from '../../server/features/position.ts';
import type { Edit } from '../../server/rules/rule.ts';

export const settings: Settings = { packs: [], severities: {}, today: '2026-06-01' };

/** A log with the cursor where its text has `|`. */
export interface Fixture {
  readonly snapshot: Snapshot;
  readonly at: Position;
  readonly lines: readonly string[];
}

const withoutMargin = (text: string): string => {
  const lines = text
    .replace(/^\n/, '')
    .replace(/\n[ ]*$/, '')
    .split('\n');
  const indents = lines.filter((line) => line.trim() !== '').map((line) => line.length - line.trimStart().length);
  return lines.map((line) => line.slice(Math.min(...indents))).join('\n');
};

/** The snapshot of a text. */
export const snapshotOf = (text: string): Snapshot => analyse(withoutMargin(text).split('\n'), settings, 1);

/** Reads a text with one `|` in it, which is where the cursor stands; a margin of blanks is taken off. */
export function marked(text: string): Fixture {
  const lines = withoutMargin(text).split('\n');
  const line = lines.findIndex((each) => each.includes('|'));
  const column = lines[line]?.indexOf('|') ?? -1;
  if (column < 0) throw new Error(`no | in: ${text}`);
  const plain = lines.map((each, number) => (number === line ? each.replace('|', '') : each));
  return { snapshot: analyse(plain, settings, 1), at: { line, column }, lines: plain };
}

/** The text after edits of single lines; a text put in may hold line ends. */
export function edited(lines: readonly string[], edits: readonly Edit[]): string {
  const result = [...lines];
  for (const { span, text } of [...edits].sort((a, b) => b.span.line - a.span.line || b.span.start - a.span.start)) {
    const line = result[span.line] ?? '';
    result[span.line] = line.slice(0, span.start) + text + line.slice(span.end);
  }
  return result.join('\n');
}
