import { parseLines, splitLines } from '../../../grammar/index.ts';
import { readLine, startOfFile } from '../../../grammar/sections.ts';
import type { Line, Tree } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import { type Cells, cellsOf, isWritable } from './cells.ts';
import { layOut, type Widths, widthsOf } from './layout.ts';

/** Where remarks and comments begin, where the line leaves room. */
const remarkColumn = 50;

const tail = (line: Line): string => {
  const remark = line.remark ? `; ${line.remark.text}`.trimEnd() : '';
  const comment = line.comment?.text ?? '';
  return [remark, comment].filter((each) => each !== '').join('  ');
};

const withTail = (text: string, end: string): string => {
  if (end === '') return text;
  return text === '' ? end : `${text.padEnd(Math.max(remarkColumn, text.length + 2))}${end}`;
};

/** A line that is only set in: what cannot be written from its items stays as it was typed. */
function setIn(line: Line): string {
  const body = line.text.trim();
  if (body === '' || line.comment?.start === line.text.length - line.text.trimStart().length)
    return line.text.trimEnd();
  if (line.section === 'unknown' || line.section === null) return line.text.trimEnd();
  return line.keyword === null ? `  ${body}` : line.text.trimEnd();
}

interface Block {
  readonly cells: readonly (Cells | null)[];
  readonly widths: ReadonlyMap<string, Widths>;
}

/* A line stays the same object for as long as nobody edits it. */
const cellsKnown = new WeakMap<Line, Cells | null>();

function cellsIn(line: Line): Cells | null {
  const before = cellsKnown.get(line);
  if (before !== undefined) return before;
  const cells = isWritable(line) ? cellsOf(line) : null;
  cellsKnown.set(line, cells);
  return cells;
}

/** Lines up within a block: the depth lines under one keyword, or the header lines of the whole file. */
function blocksOf(lines: readonly Line[]): { cells: (Cells | null)[]; groups: string[] } {
  let block = 0;
  const groups: string[] = [];
  const cells = lines.map((line) => {
    if (line.keyword && line.keyword.id === line.section) block += 1;
    const each = cellsIn(line);
    groups.push(each?.kind === 'header' ? 'header' : `${block} ${each?.row ?? ''}`);
    return each;
  });
  return { cells, groups };
}

function measure(lines: readonly Line[]): Block & { groups: readonly string[] } {
  const { cells, groups } = blocksOf(lines);
  const members = new Map<string, Cells[]>();
  for (const [at, each] of cells.entries()) {
    const group = groups[at] ?? '';
    if (each === null) continue;
    const same = members.get(group);
    if (same) same.push(each);
    else members.set(group, [each]);
  }
  const widths = new Map([...members].map(([group, each]) => [group, widthsOf(each)] as const));
  return { cells, widths, groups };
}

/** The context that a line was read in: that of the section it stands in. */
const contextOf = (above: Line | undefined, hasString: boolean) =>
  above ? { section: above.section, hasString } : startOfFile;

/** The text of every line, long forms written out and columns lined up. A line whose meaning would change stays as it is. */
export function formatLines(tree: Tree): string[] {
  const { lines } = tree;
  const { cells, widths, groups } = measure(lines);
  let hasString = false;
  return lines.map((line, at) => {
    const context = contextOf(lines[at - 1], hasString);
    hasString ||= line.section === 'casing' || line.section === 'liner' || line.section === 'screen';
    const each = cells[at];
    const shared = widths.get(groups[at] ?? '');
    if (!each || !shared) return setIn(line);
    const text = withTail(layOut(each, shared, line.section), tail(line));
    return text === line.text || keepsMeaning(line, text, context) ? text : setIn(line);
  });
}

interface Kept {
  readonly text: string;
  readonly hasString: boolean;
  readonly keeps: boolean;
}

const keptKnown = new WeakMap<Line, Kept>();

/** True where the text says in its place what the line says; the section of a line is a part of the line. */
function keepsMeaning(line: Line, text: string, context: typeof startOfFile): boolean {
  const before = keptKnown.get(line);
  if (before?.text === text && before.hasString === context.hasString) return before.keeps;
  const keeps = saysTheSame(line, text, context);
  keptKnown.set(line, { text, hasString: context.hasString, keeps });
  return keeps;
}

function saysTheSame(line: Line, text: string, context: typeof startOfFile): boolean {
  const again = readLine(text, context).line;
  const problems = line.problems.filter((each) => each.code !== 'interval-without-dash');
  return meaningOf(again) === meaningOf({ ...line, problems });
}

/** A whole text, formatted; its line ends are those it came with, the first deciding. */
export function formatText(text: string): string {
  const ending = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  return formatLines(parseLines(splitLines(text))).join(ending);
}
