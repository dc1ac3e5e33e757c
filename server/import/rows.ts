import { splitLines } from '../../grammar/characters.ts';
import { faultsOf, readIn } from './check.ts';
import { readNotes } from './index.ts';
import { type DepthUnit, isPart, type NotationLine, type Part } from './notes.ts';
import { tidy } from './typography.ts';

/** Pasted rows as lines of one section, each without indentation. */
export interface PastedLines {
  readonly lines: readonly string[];
  /** True where depths have no unit and none was given. */
  readonly open: boolean;
  /** The rows that were not understood; each stands in `lines` as a comment. */
  readonly notUnderstood: readonly string[];
}

const partOf: Readonly<Record<string, Part>> = { liner: 'casing', screen: 'casing' };

/** `0	20	10` as `0 - 20, 10`: cells of a row whose first two are numbers begin with an interval. */
function joinedCells(row: string, part: Part): string {
  const cells = row
    .split(/\t|\s*\|\s*|;/)
    .map((cell) => tidy(cell))
    .filter((cell) => cell !== '');
  const [first = '', second = '', ...rest] = cells;
  const isFigure = (text: string) => /^[~+]?\d*\.?\d+ ?(?:m|ft|'|"|in)?$/.test(text);
  const hasInterval = part !== 'test' && part !== 'water' && isFigure(first) && isFigure(second);
  return hasInterval
    ? [`${first} - ${second}`, rest.join(', ')].join(' ').trim()
    : [first, [second, ...rest].filter((cell) => cell !== '').join(', ')].join(' ').trim();
}

const asIs = (row: string, part: Part): NotationLine[] => {
  const text = joinedCells(row, part);
  const line = readIn(part, text);
  return line.row !== null && line.items.length > 0 && faultsOf(line).length === 0 ? [{ part, text }] : [];
};

const comment = (row: string): string => (/^\s*allow\b/i.test(row) ? `# : ${row.trim()}` : `# ${row.trim()}`);

function ofStrata(text: string, units: DepthUnit | null): PastedLines {
  const read = readNotes(text, { units });
  if (read.questions.some(({ blocking }) => blocking)) {
    const rows = splitLines(text).filter((row) => row.trim() !== '');
    return {
      lines: rows.map(comment),
      open: read.questions.some(({ about }) => about === 'units'),
      notUnderstood: rows,
    };
  }
  const ordered = read.bottomUp ? [...read.entries].reverse() : read.entries;
  const made = ordered.map((entry) => ({
    entry,
    own: entry.lines.filter(({ part }) => part === 'strata').map((line) => line.text),
  }));
  return {
    lines: made.flatMap(({ entry, own }) =>
      own.length > 0 && entry.status === 'understood' ? own : [...entry.source.map(comment), ...own],
    ),
    open: false,
    notUnderstood: made.flatMap(({ entry, own }) =>
      own.length === 0 && entry.status !== 'understood' ? entry.source : [],
    ),
  };
}

/**
 * Rows of a table or a list, pasted into a section of a log, as lines of that section. `units` is the unit of the file's
 * bare depths. A row that is not understood stays in its place as a comment. Never throws.
 */
export function rowsToLines(text: string, section: string, units: DepthUnit | null): PastedLines {
  const part = partOf[section] ?? section;
  if (!isPart(part) || part === 'strata') return ofStrata(text, units);
  const lines: string[] = [];
  const notUnderstood: string[] = [];
  for (const row of splitLines(text)) {
    if (row.trim() === '') continue;
    const plain = readNotes(row, { units }).entries[0];
    const own = plain?.status === 'understood' ? plain.lines.filter((line) => line.part === part) : [];
    const found = own.length > 0 ? own : asIs(row, part);
    if (found.length === 0) notUnderstood.push(row);
    lines.push(...(found.length === 0 ? [comment(row)] : found.map((line) => line.text)));
  }
  return { lines, open: false, notUnderstood };
}
