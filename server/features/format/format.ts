import { parseLines, splitLines } from '../../../grammar/index.ts';
import { remembered } from '../../../grammar/remembered.ts';
import { type Context, readLine, startOfFile } from '../../../grammar/sections.ts';
import type { Line, Tree } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import { type Cells, cellsOf, isWritable } from './cells.ts';
import { areSameWidths, layOut, ownWidths, type Widths, widened } from './layout.ts';

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

/** A line that can be written from its items, and the width that it takes. */
interface Written {
  readonly cells: Cells;
  readonly own: Widths;
}

const writtenOf = remembered((line: Line): Written | null => {
  if (!isWritable(line)) return null;
  const cells = cellsOf(line);
  return { cells, own: ownWidths(cells) };
});

/** The lines that line up with each other, as far as they were looked at. */
interface Group {
  widths: Widths;
}

/**
 * The group of each line; null for one that is only set in. Lines of the same row line up within a block, which is what
 * stands under one keyword; the lines of the head do in the whole file.
 */
function groupsOf(lines: readonly Line[]): readonly (Group | null)[] {
  const head = new Map<string, Group>();
  let block = new Map<string, Group>();
  return lines.map((line) => {
    if (line.keyword !== null && line.keyword.id === line.section) block = new Map();
    const written = writtenOf(line);
    if (written === null) return null;
    const { cells, own } = written;
    const [groups, name] = cells.kind === 'header' ? [head, ''] : [block, cells.row];
    const group = groups.get(name);
    if (group === undefined) {
      const begun = { widths: own };
      groups.set(name, begun);
      return begun;
    }
    if (!areSameWidths(group.widths, own)) group.widths = widened(group.widths, own);
    return group;
  });
}

/** The context that a line was read in: that of the section it stands in. */
const contextOf = (above: Line | undefined, hasString: boolean): Context =>
  above ? { section: above.section, hasString } : startOfFile;

/** The text of every line, long forms written out and columns lined up. A line whose meaning would change stays as it is. */
export function formatLines(tree: Tree): string[] {
  const { lines } = tree;
  const groups = groupsOf(lines);
  let hasString = false;
  return lines.map((line, at) => {
    const context = contextOf(lines[at - 1], hasString);
    hasString ||= line.section === 'casing' || line.section === 'liner' || line.section === 'screen';
    const group = groups[at] ?? null;
    return group === null ? setIn(line) : textOf(line, group.widths, context);
  });
}

interface Laid {
  readonly widths: Widths;
  readonly hasString: boolean;
  readonly text: string;
}

const laid = new WeakMap<Line, Laid>();

/** The text of a line in columns of those widths; the section that it is read in is a part of the line. */
function textOf(line: Line, widths: Widths, context: Context): string {
  const before = laid.get(line);
  if (before !== undefined && before.hasString === context.hasString && areSameWidths(before.widths, widths))
    return before.text;
  const text = layLine(line, widths, context);
  laid.set(line, { widths, hasString: context.hasString, text });
  return text;
}

function layLine(line: Line, widths: Widths, context: Context): string {
  const written = writtenOf(line);
  if (written === null) return setIn(line);
  const text = withTail(layOut(written.cells, widths, line.section), tail(line));
  return text === line.text || saysTheSame(line, text, context) ? text : setIn(line);
}

function saysTheSame(line: Line, text: string, context: Context): boolean {
  const again = readLine(text, context).line;
  const problems = line.problems.filter((each) => each.code !== 'interval-without-dash');
  return meaningOf(again) === meaningOf({ ...line, problems });
}

/** A whole text, formatted; its line ends are those it came with, the first deciding. */
export function formatText(text: string): string {
  const ending = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  return formatLines(parseLines(splitLines(text))).join(ending);
}
