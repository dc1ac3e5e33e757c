import { parseLines, splitLines } from '../../../grammar/index.ts';
import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import { type Context, readLine, startOfFile } from '../../../grammar/sections.ts';
import { isStringSection } from '../../../grammar/table.ts';
import type { Line, Tree } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import { type Cells, cellsOf, isWritable } from './cells.ts';
import { keepsFigures } from './kept.ts';
import { fitsIn, inOneBlank, layOut, ownWidths, type Widths, widened } from './layout.ts';

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

/** A line that can be written from its items, with the widths that it takes by itself, and how it was written last. */
interface Written extends Widths {
  readonly cells: Cells;
  /** Lines of the same group line up with each other within a block; those of the head in the whole file. */
  readonly group: string;
  /** The widths and the context of `text`; the section that a line is read in is a part of the line. */
  writtenAs: string;
  text: string;
}

const headGroup = 'head';

function readToWrite(line: Line): Written | null {
  if (!isWritable(line)) return null;
  const cells = cellsOf(line);
  return {
    ...ownWidths(cells),
    cells,
    group: cells.kind === 'header' ? headGroup : cells.row,
    writtenAs: '',
    text: '',
  };
}

const writtenOf = rememberedOfLine(readToWrite);

/** The widths of the lines that line up with each other, as far as they were looked at. */
interface Group {
  widths: Widths;
  /** The widths as a text; written once all are known. */
  name: string;
}

function joined(groups: Map<string, Group>, written: Written): Group {
  const group = groups.get(written.group);
  if (group === undefined) {
    const begun = { widths: written, name: '' };
    groups.set(written.group, begun);
    return begun;
  }
  if (!fitsIn(written, group.widths)) group.widths = widened(group.widths, written);
  return group;
}

/** The group of each line, a block being what stands under one keyword; null for a line that is only set in. */
function groupsOf(lines: readonly Line[], written: readonly (Written | null)[]): readonly (Group | null)[] {
  const head = new Map<string, Group>();
  let block = new Map<string, Group>();
  return lines.map((line, at) => {
    if (line.keyword !== null && line.keyword.id === line.section) block = new Map();
    const each = written[at] ?? null;
    return each === null ? null : joined(each.group === headGroup ? head : block, each);
  });
}

/** The context that a line was read in: that of the section it stands in. */
const contextOf = (above: Line | undefined, hasString: boolean): Context =>
  above ? { section: above.section, hasString } : startOfFile;

const nameOf = ({ top, bottom, first, whole, keyword }: Widths): string =>
  [top, bottom, first, whole, keyword].join(' ');

/** The text of every line, long forms written out and columns lined up. A line whose meaning would change stays as it is. */
export function formatLines(tree: Tree): string[] {
  const { lines } = tree;
  const written = lines.map(writtenOf);
  const groups = groupsOf(lines, written);
  let hasString = false;
  return lines.map((line, at) => {
    const [each, group, string] = [written[at] ?? null, groups[at] ?? null, hasString];
    hasString ||= isStringSection(line.section);
    if (each === null || group === null) return setIn(line);
    if (group.name === '') group.name = nameOf(group.widths);
    const as = string ? `${group.name} s` : group.name;
    if (each.writtenAs !== as) {
      each.text = layLine(line, each.cells, group.widths, contextOf(lines[at - 1], string));
      each.writtenAs = as;
    }
    return each.text;
  });
}

function layLine(line: Line, cells: Cells, widths: Widths, context: Context): string {
  const text = withTail(layOut(cells, widths, line.section), tail(line));
  return text === line.text || saysTheSame(line, text, context) ? text : setIn(line);
}

function saysTheSame(line: Line, text: string, context: Context): boolean {
  if (inOneBlank(text) === inOneBlank(line.text)) return true;
  if (!keepsFigures(line.text, text)) return false;
  const again = readLine(text, context).line;
  const problems = line.problems.filter((each) => each.code !== 'interval-without-dash');
  return meaningOf(again) === meaningOf({ ...line, problems });
}

/** A whole text, formatted; its line ends are those it came with, the first deciding. */
export function formatText(text: string): string {
  const ending = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  return formatLines(parseLines(splitLines(text))).join(ending);
}
