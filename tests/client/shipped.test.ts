import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';
import { expect, test } from 'vitest';

const root = path.join(import.meta.dirname, '../..');
const read = (file: string): string => readFileSync(path.join(root, file), 'utf8');

/** What .vscodeignore lets through. */
const shipped = globSync(
  read('.vscodeignore')
    .split('\n')
    .filter((line) => line.startsWith('!'))
    .map((line) => line.slice(1).trim()),
  { cwd: root, expandDirectories: false },
);

/** The manifest, and its words, some of which are names of files. */
const manifest = ['package.json', 'client/l10n/package.nls.json', 'client/l10n/package.nls.fr.json'].map(read).join();

/** The files that the manifest names, without those that a build makes. */
const named = [...manifest.matchAll(/"(?:\.\/)?((?:client|grammar|server)\/[\w./-]+\.\w+)"/g)]
  .map(([, file]) => file ?? '')
  .filter((file) => !file.startsWith('dist/'));

test('every file that the manifest names is there and is shipped', () => {
  expect(named.length).toBeGreaterThan(5);
  expect(named.filter((file) => !existsSync(path.join(root, file)))).toEqual([]);
  expect(named.filter((file) => !shipped.includes(file))).toEqual([]);
});

test('the words of every language are shipped', () => {
  const words = ['package.nls.json', 'package.nls.fr.json', 'bundle.l10n.fr.json'];
  expect(words.filter((file) => !shipped.includes(`client/l10n/${file}`))).toEqual([]);
});
