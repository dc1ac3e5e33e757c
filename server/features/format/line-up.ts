import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import { readInside } from '../../../grammar/sections.ts';
import type { Line } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import { depthCells, isWritable } from './cells.ts';
import { dashColumnOf, depthWidths, inOneBlank, layDepths } from './layout.ts';

/** Lines of one section with their depths in columns. */
export interface LinedUp {
  readonly texts: readonly string[];
  /** The column of the dashes; null where no line has one. */
  readonly dashColumn: number | null;
}

const isInterval = (line: Line): boolean => line.keyword === null && line.depths?.kind === 'interval';

/** The line with its depths in their columns and everything behind them as it was typed; as it was where that would change what it says. */
function withDepths(line: Line, text: string): string {
  if (text === line.text || inOneBlank(text) === inOneBlank(line.text)) return text;
  const again = readInside(line.section, text);
  const said = line.problems.filter(({ code }) => code !== 'interval-without-dash');
  return meaningOf(again) === meaningOf({ ...line, problems: said }) ? text : line.text;
}

const behindDepths = ({ text, depths }: Line): string => text.slice(depths?.end ?? 0).trim();

/** The depths of a line as they are laid out; null where they are not. */
const cellsOf = rememberedOfLine((line: Line) => (isInterval(line) && isWritable(line) ? depthCells(line) : null));

/** Puts the depths of a section's lines into columns; words stay as they were typed. Only the first `most` lines are moved, by the width of all. */
export function linedUp(lines: readonly Line[], most = Number.POSITIVE_INFINITY): LinedUp {
  const cells = lines.map(cellsOf);
  const held = cells.filter((each) => each !== null);
  if (held.length === 0) return { texts: lines.map(({ text }) => text), dashColumn: null };
  const widths = depthWidths(held);
  const texts = lines.map((line, at) => {
    const own = cells[at];
    return own && at < most ? withDepths(line, layDepths(own, widths, behindDepths(line))) : line.text;
  });
  return { texts, dashColumn: dashColumnOf(widths) };
}
