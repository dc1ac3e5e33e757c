import { splitLines } from './characters.ts';
import { type Context, readLine, sameContext, startOfFile } from './sections.ts';
import type { Line, Tree } from './tree.ts';

export { splitLines } from './characters.ts';

/** The context below each line, kept beside the tree so that a line can be read again without those above it. */
const contexts = new WeakMap<Tree, readonly Context[]>();

function treeOf(lines: readonly Line[], below: readonly Context[]): Tree {
  const tree = { lines };
  contexts.set(tree, below);
  return tree;
}

/** Reads a whole log. Never throws: what cannot be read is a problem of its line. */
export function parseLines(texts: readonly string[]): Tree {
  const lines: Line[] = [];
  const below: Context[] = [];
  let context = startOfFile;
  for (const text of texts) {
    const { line, next } = readLine(text, context);
    if (!sameContext(context, next)) context = next;
    lines.push(line);
    below.push(context);
  }
  return treeOf(lines, below);
}

/** Reads a whole text. */
export const parseText = (text: string): Tree => parseLines(splitLines(text));

/**
 * The tree after the lines from `first` on, `removed` of them, gave way to `inserted`. Only these are read again,
 * and those below whose section changed; all others are the same objects.
 */
export function reparse(tree: Tree, first: number, removed: number, inserted: readonly string[]): Tree {
  const old = contexts.get(tree);
  if (!old)
    return parseLines([
      ...tree.lines.slice(0, first).map((l) => l.text),
      ...inserted,
      ...tree.lines.slice(first + removed).map((l) => l.text),
    ]);
  let context = first > 0 ? (old[first - 1] ?? startOfFile) : startOfFile;
  const lines: Line[] = [];
  const below: Context[] = [];
  for (const text of inserted) {
    const { line, next } = readLine(text, context);
    if (!sameContext(context, next)) context = next;
    lines.push(line);
    below.push(context);
  }
  let at = first + removed;
  let above = at > 0 ? (old[at - 1] ?? startOfFile) : startOfFile;
  while (at < tree.lines.length && !sameContext(above, context)) {
    const { line, next } = readLine(tree.lines[at]?.text ?? '', context);
    if (!sameContext(context, next)) context = next;
    lines.push(line);
    below.push(context);
    above = old[at] ?? startOfFile;
    at++;
  }
  return treeOf(
    [...tree.lines.slice(0, first), ...lines, ...tree.lines.slice(at)],
    [...old.slice(0, first), ...below, ...old.slice(at)],
  );
}
