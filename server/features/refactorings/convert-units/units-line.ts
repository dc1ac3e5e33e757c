import type { Line } from '../../../../grammar/tree.ts';
import type { Snapshot } from '../../../analysis/snapshot.ts';
import { type Change, changeOf, lineDeleted, lineInserted } from '../change.ts';
import type { Conversion } from './conversion.ts';

const addedUnits = '# the file had none when it was converted';

const isUnitsLine = (line: Line): boolean => line.row === 'units' && line.items.length > 0;

/** The units line with the other system's two words; null where they are not spelled so that the way back is plain. */
function unitsText(text: string, { from, to }: Conversion): string | null {
  const words = new Map([
    [from.depth, to.depth],
    [from.diameter, to.diameter],
  ]);
  let changed = 0;
  const written = text.replace(/(?<=\s)(?:m|mm|ft|in|M|MM|FT|IN)(?=\s|$)/g, (word) => {
    const meant = words.get(word.toLowerCase());
    changed += meant === undefined ? 0 : 1;
    return (word === word.toLowerCase() ? meant : meant?.toUpperCase()) ?? word;
  });
  return changed === 2 ? written : null;
}

/** The change of the units line; null where it cannot be written so that the way back is plain. */
export function unitsChange({ tree, lines }: Snapshot, conversion: Conversion): Change | null {
  const number = tree.lines.findIndex(isUnitsLine);
  if (number < 0) {
    const { depth, diameter } = conversion.to;
    const below = tree.lines.findIndex(({ row }) => row === 'well') + 1;
    return lineInserted(lines, below, `units ${depth} ${diameter}  ${addedUnits}`);
  }
  const text = lines[number] ?? '';
  if (text.endsWith(addedUnits) && !conversion.toUs) return lineDeleted(lines, number);
  const code = text.split('#')[0] ?? '';
  const written = unitsText(code, conversion);
  return written === null ? null : changeOf(number, text, written + text.slice(code.length));
}
