import { splitLines } from '../../../grammar/index.ts';
import { analyse } from '../../../server/analysis/index.ts';
import { nextItem } from '../../../server/features/next-item.ts';
import type { PieceAt } from './typist.ts';

/** What the extension puts in on Tab: known to the typist by heart, so that it need not be tried. */
export const pieceAt: PieceAt = (text, line, character) => {
  const snapshot = analyse(splitLines(text), { packs: [], severities: {}, today: null }, 1);
  const next = nextItem(snapshot, { line, start: character, end: character }, null);
  const [edit] = next?.edits ?? [];
  if (!next || !edit) return null;
  if (next.suggest) return { before: '', after: '' };
  const at = next.select.start - edit.span.start;
  return { before: edit.text.slice(0, at).replace(/^[\s,]+/, ''), after: edit.text.slice(at + 1).trimEnd() };
};
