import { splitLines } from '../../grammar/characters.ts';
import { type Drafted, finish } from './finish.ts';
import { openOptions, type Question, type ReadNotes, type ReadOptions } from './notes.ts';
import { readPlain } from './plain.ts';
import { readTable, tableIn, tableSaid } from './table.ts';
import { tidy } from './typography.ts';
import { tellsLayers, tellsUnits } from './units-told.ts';

export { assemble } from './assemble.ts';
export { faultIn } from './check.ts';
export type {
  DepthUnit,
  Entry,
  LayerValues,
  NotationLine,
  Part,
  Question,
  ReadNotes,
  ReadOptions,
  Status,
  Trouble,
} from './notes.ts';
export { isPart, openOptions, parts } from './notes.ts';

const drafted = (lines: readonly string[], options: ReadOptions): Drafted | Question => {
  const table = options.columns === null ? tableIn(lines) : tableSaid(lines);
  if (table !== null) return readTable(table, lines, options);
  let told = null;
  let layers = null;
  for (const line of lines) {
    const text = tidy(line.slice(0, 200));
    told ??= tellsUnits(text);
    layers ??= tellsLayers(text);
  }
  return { drafts: readPlain(lines, 1, options), told, layers, troubles: [] };
};

/**
 * Reads field notes: plain text as crews write it, or a table of intervals. Never throws. Every line of the notes is in
 * one entry, and in the text as a comment; what was not understood is told there.
 */
export function readNotes(text: string, given: Partial<ReadOptions> = {}): ReadNotes {
  const options = { ...openOptions, ...given };
  const found = drafted(splitLines(text.replace(/^\ufeff/, '')), options);
  if ('drafts' in found) return finish(found, options);
  return { entries: [], units: null, questions: [found], troubles: [], bottomUp: false, text: '' };
}
