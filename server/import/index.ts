import { splitLines } from '../../grammar/characters.ts';
import { finish } from './finish.ts';
import { openOptions, type ReadNotes, type ReadOptions } from './notes.ts';
import { readPlain } from './plain.ts';
import { tidy } from './typography.ts';
import { tellsUnits } from './units-told.ts';

export function readNotes(text: string, given: Partial<ReadOptions> = {}): ReadNotes {
  const options = { ...openOptions, ...given };
  const lines = splitLines(text);
  let told = null;
  for (const line of lines) told ??= tellsUnits(tidy(line.slice(0, 200)));
  return finish({ drafts: readPlain(lines, 1, options), told, troubles: [] }, options);
}
