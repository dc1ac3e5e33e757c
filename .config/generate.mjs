// Writes the files that are made from the tables; with `--check`, only says which of them are stale.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { importTypeScript } from './run.mjs';
import { ensurePackages, inRoot, isMain } from './steps.mjs';

/** Each module exports `generated(): { path: string; text: string }[]`, its paths counted from the project's folder. */
const generators = [
  'grammar/generate.ts',
  'server/packs/generate.ts',
  'server/rules/generate.ts',
  'server/folder/generate.ts',
];

const made = async () => {
  const files = [];
  for (const generator of generators) files.push(...(await (await importTypeScript(generator)).generated()));
  return files;
};

const isFresh = (file) => existsSync(inRoot(file.path)) && readFileSync(inRoot(file.path), 'utf8') === file.text;

const write = (file) => {
  mkdirSync(path.dirname(inRoot(file.path)), { recursive: true });
  writeFileSync(inRoot(file.path), file.text);
};

/** Paths of the generated files whose text is not what the tables say. */
export const staleFiles = async () => (await made()).filter((file) => !isFresh(file)).map((file) => file.path);

async function check() {
  const stale = await staleFiles();
  for (const name of stale) console.error(`${name} is not what its tables say; run "npm run generate" and commit it.`);
  if (stale.length === 0) console.log('Every generated file is fresh.');
  process.exitCode = stale.length === 0 ? 0 : 1;
}

async function generate() {
  const stale = (await made()).filter((file) => !isFresh(file));
  stale.forEach(write);
  console.log(
    stale.length === 0 ? 'Every generated file was fresh.' : `Wrote ${stale.map((file) => file.path).join(', ')}.`,
  );
}

if (isMain(import.meta.url)) {
  await ensurePackages();
  try {
    await (process.argv.includes('--check') ? check() : generate());
  } catch (error) {
    console.error(`The generated files could not be made: ${error.message}`);
    process.exitCode = 1;
  }
}
