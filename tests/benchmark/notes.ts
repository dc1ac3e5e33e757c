/**
 * Reads a CSV of drillers' descriptions (`description,class`, a heading line first), puts each behind made-up depths in several
 * ways of writing, reads them back as field notes, and prints how much is understood and that nothing is lost.
 * `node .config/run.mjs tests/benchmark/notes.ts FILE.csv [--all]`: with `--all` every description not understood in full.
 */
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { parse } from 'csv-parse/sync';
import { parseText } from '../../grammar/index.ts';
import { type Entry, type ReadNotes, readNotes } from '../../server/import/index.ts';

const [path, flag] = process.argv.slice(2);
if (path === undefined) throw new Error('Name the CSV file of descriptions.');

const descriptions = (
  parse(readFileSync(path), { columns: true, skip_empty_lines: true, bom: true }) as { description: string }[]
)
  .map(({ description }) => description.replace(/\s+/g, ' ').trim())
  .filter((each) => each !== '');

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** Ways in which the same layers are written down, each 3 units thick. */
const styles: Readonly<Record<string, (texts: readonly string[]) => string>> = {
  'depths before': (texts) => texts.map((text, at) => `${3 * at}-${3 * at + 3} ${text}`).join('\n'),
  'depths behind': (texts) => texts.map((text, at) => `${text} ${3 * at} to ${3 * at + 3}`).join('\n'),
  CSV: (texts) =>
    ['From,To,Description', ...texts.map((text, at) => `${3 * at},${3 * at + 3},${quoted(text)}`)].join('\n'),
};

const layerOf = ({ lines }: Entry): string | null => lines.find(({ part }) => part === 'strata')?.text ?? null;

const share = (count: number): string => `${count} (${((100 * count) / descriptions.length).toFixed(1)} %)`;

function lost(read: ReadNotes, notes: string): number {
  const comments = new Set(read.text.split('\n').filter((line) => line.startsWith('#')));
  return notes.split('\n').filter((line) => !comments.has(`# ${line.trim()}`) && !comments.has(`# : ${line.trim()}`))
    .length;
}

for (const [style, write] of Object.entries(styles)) {
  const notes = write(descriptions);
  const began = performance.now();
  const read = readNotes(notes, { units: 'ft' });
  const took = performance.now() - began;
  const rows = read.entries.slice(-descriptions.length);
  const layers = rows.map(layerOf);
  const right = layers.filter((text, at) => text?.startsWith(`${3 * at} - ${3 * at + 3} `)).length;
  const described = layers.filter((text) => text !== null && !/^\S+ - \S+ \?/.test(text)).length;
  const faults = parseText(read.text).lines.flatMap(({ problems }) =>
    problems.filter(({ code }) => code !== 'unknown-term'),
  );
  console.log(`${style}: ${descriptions.length} rows in ${took.toFixed(0)} ms`);
  console.log(`  depths as made up        ${share(right)}`);
  console.log(`  ground described         ${share(described)}`);
  console.log(`  understood in full       ${share(rows.filter(({ status }) => status === 'understood').length)}`);
  console.log(`  in part                  ${share(rows.filter(({ status }) => status === 'partly').length)}`);
  console.log(`  not                      ${share(rows.filter(({ status }) => status === 'not').length)}`);
  console.log(`  lines lost               ${lost(read, notes)}`);
  console.log(`  faults of the notation   ${faults.length}`);
  if (flag === '--all')
    for (const { source, lines, why, status } of rows)
      if (status !== 'understood')
        console.log([source[0], lines.map(({ text }) => text).join(' / '), why.join('; ')].join('\t'));
}
