import { parseLines } from '../../../../grammar/index.ts';
import type { Line, Tree } from '../../../../grammar/tree.ts';
import { fileUnits } from '../../../model/units.ts';
import { type Change, changeOf, lineDeleted, lineInserted } from '../change.ts';
import { type Conversion, sameUnits, type UnitWords } from './conversion.ts';

/** A text as it was read. */
export interface ReadText {
  readonly tree: Tree;
  readonly lines: readonly string[];
}

const addedUnits = '# the file had none when it was converted';

/** What a units line says at its end of the units that it was converted from. */
const cameFrom = / {2}# was (m|ft) (mm|cm|in)$/;

const isUnitsLine = (line: Line): boolean => line.row === 'units' && line.items.length > 0;

/** The number of the line that says the file's units; -1 for none. */
export const unitsLineOf = ({ tree }: ReadText): number => tree.lines.findIndex(isUnitsLine);

/** The units that a file was converted from, where its units line says them. */
export function unitsBefore(text: ReadText): UnitWords | null {
  const [, depth, diameter] = cameFrom.exec(text.lines[unitsLineOf(text)] ?? '') ?? [];
  return depth === undefined || diameter === undefined ? null : { depth, diameter };
}

const unitsOf = (text: string): UnitWords => fileUnits(parseLines([text]));

/** The words of the line turned to others; null where it does not say so. */
function turned(text: string, from: UnitWords, to: UnitWords): string | null {
  const words = new Map([
    [from.depth, to.depth],
    [from.diameter, to.diameter],
  ]);
  const written = text.replace(/(?<=\s)(?:m|mm|cm|ft|in)(?=\s|$)/gi, (word) => {
    const meant = words.get(word.toLowerCase()) ?? word;
    return word === word.toLowerCase() ? meant : meant.toUpperCase();
  });
  return sameUnits(unitsOf(written), to) ? written : null;
}

/** The words of the line turned so that they can be turned back. */
function turnedForBoth(text: string, { from, to }: Conversion): string | null {
  const written = turned(text, from, to);
  return written !== null && turned(written, to, from) === text ? written : null;
}

/** The line with what it was converted from noted behind it, or that note taken off. */
function noted(text: string, { note, isBack }: Conversion): string {
  if (isBack) return text.replace(cameFrom, '');
  return note === null ? text : `${text}  # was ${note.depth} ${note.diameter}`;
}

/** The change of the units line; null where it cannot be written so that the way back is plain. */
export function unitsChange(read: ReadText, conversion: Conversion): Change | null {
  const { tree, lines } = read;
  const number = unitsLineOf(read);
  if (number < 0) {
    const { depth, diameter } = conversion.to;
    const below = tree.lines.findIndex(({ row }) => row === 'well') + 1;
    return lineInserted(lines, below, `units ${depth} ${diameter}  ${addedUnits}`);
  }
  const text = lines[number] ?? '';
  if (text.endsWith(addedUnits) && !conversion.toUs) return lineDeleted(lines, number);
  const code = text.split('#')[0] ?? '';
  const written = turnedForBoth(code, conversion);
  return written === null ? null : changeOf(number, text, noted(written + text.slice(code.length), conversion));
}
