import { readInside } from '../../grammar/sections.ts';
import { spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Edit } from '../rules/rule.ts';
import { linedUp } from './format/line-up.ts';
import { type Position, placeInside } from './position.ts';

/** How far up a section is looked at behind each Enter, and how many of its lines are moved at most. */
const mostLines = 300;
const mostMoved = 25;

const bareDash = /^\s*[-–—]\s*$/;

const isBlank = (text: string | undefined): boolean => text !== undefined && text.trim() === '';

/** The first line of the section that a line stands in, and the lines from there to it. */
function blockAbove({ tree }: Snapshot, last: number): readonly (readonly [number, Line])[] {
  const block: (readonly [number, Line])[] = [];
  for (let number = last; number >= 0 && block.length < mostLines; number -= 1) {
    const line = tree.lines[number];
    if (line === undefined || line.section === null || (line.keyword !== null && line.keyword.id === line.section))
      break;
    block.push([number, line]);
  }
  return block;
}

/** `- 3.8 - 6.1` behind the dash that the editor has put there: the top says again what the dash says. */
function topSaidAgain(line: Line, base: string | null): string | null {
  const written = /^\s*[-–—]\s+([\d.]+)\s*[-–—]\s*(?=[\d.])/.exec(line.text);
  if (written === null || base === null || Number(written[1]) !== Number(base)) return null;
  return `- ${line.text.slice(written[0].length)}`;
}

/** The base of the line above, where it is in the unit of the file as a bare top is. */
const baseOf = (line: Line | undefined): string | null =>
  line?.depths?.kind === 'interval' && line.depths.to.unit === null ? line.depths.to.figure : null;

function replaced(number: number, before: string, text: string): readonly Edit[] {
  return before === text ? [] : [{ span: spanAt(number, { start: 0, end: before.length }), text }];
}

/** The lines of the section as they are meant, and how they stand in the text. */
const meantLines = (snapshot: Snapshot, last: number): readonly (readonly [number, Line, string])[] =>
  blockAbove(snapshot, last).map(([number, line]) => {
    const text = topSaidAgain(line, baseOf(snapshot.tree.lines[number - 1]));
    const meant = text === null ? line : readInside(line.section, text);
    return [number, meant, line.text] as const;
  });

function lineUpBlock(snapshot: Snapshot, at: Position): readonly Edit[] {
  const block = meantLines(snapshot, at.line - 1);
  const { texts, dashColumn } = linedUp(
    block.map(([, line]) => line),
    mostMoved,
  );
  const edits = block.flatMap(([number, , before], index) => replaced(number, before, texts[index] ?? before));
  return [...edits, ...setDash(snapshot, at.line, dashColumn)];
}

/** Moves the dash that waits for its depth under those above. */
function setDash({ lines }: Snapshot, number: number, column: number | null): readonly Edit[] {
  const text = lines[number] ?? '';
  if (column === null || !bareDash.test(text)) return [];
  const indent = text.length - text.trimStart().length;
  return indent === column ? [] : [{ span: spanAt(number, { start: 0, end: indent }), text: ' '.repeat(column) }];
}

const emptied = ({ lines }: Snapshot, number: number): readonly Edit[] => replaced(number, lines[number] ?? '', '');

/** True where Enter was pressed on a line that said nothing: the section is left. */
function leavesSection({ lines, tree }: Snapshot, { line }: Position): boolean {
  const above = lines[line - 1];
  if (above === undefined || !isBlank(lines[line])) return false;
  return bareDash.test(above) || (isBlank(above) && tree.lines[line - 1]?.section !== null);
}

/**
 * What Enter brings with it, the cursor being on the new line: the depths of the section above stand in their columns;
 * behind a line that said nothing, the next line begins at the margin. Words stay as they were typed.
 */
export function onEnter(snapshot: Snapshot, position: Position): readonly Edit[] {
  const at = placeInside(snapshot.lines, position);
  if (at === null || at.line === 0) return [];
  if (leavesSection(snapshot, at)) return [...emptied(snapshot, at.line - 1), ...emptied(snapshot, at.line)];
  return lineUpBlock(snapshot, at);
}
