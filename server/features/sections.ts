import { isStringSection, rowById } from '../../grammar/table.ts';
import type { Line, Tree } from '../../grammar/tree.ts';

/** A stretch of lines that belongs together: a section, or one string with what hangs on it. */
export interface Section {
  readonly id: string;
  readonly first: number;
  /** The last line that belongs to it. */
  readonly last: number;
}

const isTelescoped = (line: Line): boolean =>
  line.items.some(({ value }) => value.kind === 'term' && value.term.id === 'telescoped');

/** True for a line that opens a section. A screen opens one where it is telescoped or nothing stands above it to hang on. */
export const opensSection = (line: Line, hasString = true): boolean =>
  line.keyword !== null &&
  line.section !== null &&
  line.section === line.row &&
  (line.row !== 'screen' || !hasString || isTelescoped(line));

const belongs = (line: Line, section: string): boolean =>
  line.row !== null && line.section === section && rowById(line.row).of.includes(section);

/** The section that a line stands in. */
export const sectionAt = (tree: Tree, line: number): Section | undefined =>
  sectionsOf(tree).find(({ first, last }) => first <= line && line <= last);

/** Every section of the file, in order; one that is given again stands again. */
export function sectionsOf(tree: Tree): readonly Section[] {
  const sections: { id: string; first: number; last: number }[] = [];
  let hasString = false;
  tree.lines.forEach((line, number) => {
    const open = sections.at(-1);
    if (line.section !== null && opensSection(line, hasString))
      sections.push({ id: line.section, first: number, last: number });
    else if (open !== undefined && belongs(line, open.id)) open.last = number;
    hasString ||= isStringSection(line.section);
  });
  return sections;
}
