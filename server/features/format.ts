import type { Snapshot } from '../analysis/snapshot.ts';
import type { Edit } from '../rules/rule.ts';
import { formatLines } from './format/format.ts';

export { formatText } from './format/format.ts';

/** The edits that format a document, or its lines from `first` to `last`; unchanged lines have none. */
export function formatEdits(snapshot: Snapshot, first = 0, last = snapshot.lines.length - 1): Edit[] {
  return formatLines(snapshot.tree).flatMap((text, line) => {
    const before = snapshot.lines[line] ?? '';
    if (text === before || line < first || line > last) return [];
    return [{ span: { line, start: 0, end: before.length }, text }];
  });
}
