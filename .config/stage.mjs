// Lays what an editor takes in beside each other, as it must lie there: the manifest's words stand next to the manifest.
import { copyFileSync, cpSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { inRoot } from './steps.mjs';

/** The extension as an editor loads it, from the folder or packed. */
export const stagedExtension = inRoot('.cache', 'extension');

const manifestWords = /^client\/l10n\/package\.nls(\.[\w-]+)?\.json$/;

/** The patterns of .vscodeignore that let something through. */
const shippedPatterns = () =>
  readFileSync(inRoot('.vscodeignore'), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('!'))
    .map((line) => line.slice(1).trim());

const targetOf = (file) => path.join(stagedExtension, manifestWords.test(file) ? path.basename(file) : file);

function stageFile(file) {
  mkdirSync(path.dirname(targetOf(file)), { recursive: true });
  cpSync(inRoot(file), targetOf(file));
}

/** An editor may ask for Canadian French by its own name; French is written in the Canadian way. */
function nameCanadianFrench() {
  copyFileSync(targetOf('client/l10n/package.nls.fr.json'), path.join(stagedExtension, 'package.nls.fr-ca.json'));
  const bundles = path.join(stagedExtension, 'client', 'l10n');
  copyFileSync(path.join(bundles, 'bundle.l10n.fr.json'), path.join(bundles, 'bundle.l10n.fr-ca.json'));
}

/** Makes the folder anew from what has been built. */
export async function stageExtension() {
  const { glob } = await import('tinyglobby');
  rmSync(stagedExtension, { recursive: true, force: true });
  const files = await glob(shippedPatterns(), { cwd: inRoot(), expandDirectories: false });
  for (const file of files) stageFile(file);
  nameCanadianFrench();
}
