/**
 * `node .config/run.mjs tests/benchmark/vocabulary.ts FILE.csv [--all]` reads drillers' descriptions (`description,class`, a
 * heading line first) as strata lines do, and prints how much of them is understood and what is left.
 *
 * A principal is the material that a description is about, or the name of a rock unit, which is kept as a name and taken for
 * rock. "Same as above" and "no sample" say nothing of the ground by themselves, and are counted apart: of the descriptions
 * without them, the second line tells how many have a principal. The third counts only those that name a material.
 * Agreement: the family of the principal is one that the class names; `CLAY AND SAND` names two. For `BOULDER` any material
 * of the description may be the boulders. A description without a principal disagrees; the class `UNKNOWN` is left out.
 * The lists have been grown on such a file, so that figures taken from it say what is covered, not how an unseen one fares.
 */
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import type { Description } from '../../grammar/terms/description.ts';
import { readDescription, writeDescription } from '../../grammar/terms/description.ts';
import { piecesOf } from '../../grammar/terms/pieces.ts';
import type { Term } from '../../grammar/terms/term.ts';

interface Row {
  readonly text: string;
  readonly coarse: string;
}

const rowOf = (line: string): Row => {
  const comma = line.lastIndexOf(',');
  const quoted = line.slice(0, comma);
  const text = quoted.startsWith('"') ? quoted.slice(1, -1).replaceAll('""', '"') : quoted;
  return { text, coarse: line.slice(comma + 1).trim() };
};

const familyWords = new Map<string, readonly string[]>([
  ['CLAY', ['clay']],
  ['SILT', ['silt']],
  ['SAND', ['sand']],
  ['GRAVEL', ['gravel']],
  ['BOULDER', ['boulder']],
  ['BEDROCK', ['rock']],
  ['SOIL', ['soil']],
  ['DIRT', ['soil', 'clay', 'silt', 'sand', 'gravel', 'drift']],
  ['DRIFT', ['drift']],
  ['MUD', ['clay']],
  ['ORGANIC', ['organic']],
  ['FILL', ['fill']],
  ['VOID', ['void']],
]);

const familiesOfClass = (coarse: string): ReadonlySet<string> =>
  new Set(coarse.split(/\s+/).flatMap((word) => familyWords.get(word) ?? []));

const byId = new Map<string, readonly string[]>([
  ['silt', ['silt']],
  ['elastic-silt', ['silt']],
  ['loess', ['silt']],
  ['silt-loam', ['silt', 'clay']],
  ['loam', ['clay', 'silt', 'sand']],
  ['sandy-loam', ['sand', 'clay']],
  ['gravel', ['gravel']],
  ['pea-gravel', ['gravel']],
  ['granules', ['gravel']],
  ['pebbles', ['gravel']],
  ['stones', ['gravel', 'boulder']],
  ['cobbles', ['boulder', 'gravel']],
  ['boulders', ['boulder']],
  ['broken-rock', ['rock', 'gravel']],
  ['cavings', ['rock']],
]);

const familiesOfTerm = (term: Term): readonly string[] => {
  const own = byId.get(term.id);
  if (own !== undefined) return own;
  const ground = term.ground;
  if (ground?.rock && ground.class !== 'void') return ['rock'];
  if (ground?.class === 'fine') return ['clay'];
  if (ground?.class === 'coarse') return ['sand'];
  if (ground?.class === 'mixed') return ['drift', 'clay', 'soil'];
  return ground === undefined ? [] : [ground.class];
};

const agrees = (description: Description, coarse: string): boolean => {
  const wanted = familiesOfClass(coarse);
  const principal = description.principal;
  const named = [...(principal === null ? [] : [principal]), ...description.materials.map(({ term }) => term)];
  return (coarse === 'BOULDER' ? named : named.slice(0, 1))
    .flatMap(familiesOfTerm)
    .some((family) => wanted.has(family));
};

const share = (part: number, whole: number): string => `${part} of ${whole} (${((100 * part) / whole).toFixed(1)} %)`;

const tally = (words: readonly string[]): string => {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  const sorted = [...counts].sort((a, b) => b[1] - a[1] || a[0].localeCompare(b[0], 'en'));
  return sorted.map(([word, count]) => (count === 1 ? word : `${word} (${count})`)).join(', ');
};

const hasLetter = (text: string): boolean => /\p{L}/u.test(text);

const timeOf = (rows: readonly Row[]): number => {
  const lines = Array.from({ length: 10_000 }, (_, at) => piecesOf(rows[at % rows.length]?.text ?? ''));
  for (let warm = 0; warm < 3; warm += 1) for (const pieces of lines) readDescription(pieces);
  const began = performance.now();
  for (const pieces of lines) readDescription(pieces);
  return performance.now() - began;
};

const report = (rows: readonly Row[], all: boolean): void => {
  const read = rows.map((row) => ({ ...row, description: readDescription(piecesOf(row.text)) }));
  const classOf = (description: Description): string => description.principal?.ground?.class ?? 'unknown';
  const named = read.filter(({ description }) => description.principal !== null);
  const telling = read.filter(
    ({ description }) => description.principal === null || classOf(description) !== 'unknown',
  );
  const ground = telling.filter(({ description }) => description.principal !== null);
  const material = ground.filter(({ description }) => description.materials.length > 0);
  const classed = read.filter(({ coarse }) => coarse !== '' && coarse !== 'UNKNOWN');
  const agreeing = classed.filter(({ description, coarse }) => agrees(description, coarse));
  const words = rows.flatMap(({ text }) =>
    piecesOf(text).filter(({ kind, text: word }) => kind === 'word' && hasLetter(word)),
  );
  const unknown = read.flatMap(({ description }) => description.unknown.map(({ text }) => text).filter(hasLetter));
  console.log(`with a principal:                 ${share(named.length, rows.length)} (aim 97 %)`);
  console.log(`  of those that say what is there:  ${share(ground.length, telling.length)}`);
  console.log(`  that name a material:             ${share(material.length, telling.length)}`);
  console.log(`agreeing with the coarse class:   ${share(agreeing.length, classed.length)} (aim 92 %)`);
  console.log(`unknown words:                    ${share(unknown.length, words.length)} (aim at most 3 %)`);
  console.log(`10,000 lines read in              ${timeOf(rows).toFixed(0)} ms`);
  console.log(`\nunknown: ${tally(unknown.map((word) => word.toLowerCase()))}`);
  console.log(
    `\nno principal: ${read
      .filter(({ description }) => description.principal === null)
      .map(({ text }) => text)
      .join(' | ')}`,
  );
  if (!all) return;
  const disagreeing = classed.filter((row) => !agreeing.includes(row));
  for (const { text, coarse, description } of disagreeing) {
    console.log(
      `${coarse.padEnd(18)} ${(description.principal?.name ?? '-').padEnd(14)} ${text}  →  ${writeDescription(description, piecesOf(text))}`,
    );
  }
};

const path = process.argv[2];
if (path === undefined)
  console.error('Name the CSV file: node .config/run.mjs tests/benchmark/vocabulary.ts FILE.csv [--all]');
else {
  const lines = readFileSync(path, 'utf8').split(/\r?\n/).slice(1);
  report(lines.filter((line) => line.includes(',')).map(rowOf), process.argv.includes('--all'));
}
