// Lays what an editor takes in beside each other, as it must lie there: the manifest's words stand next to the manifest.
import { copyFileSync, cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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

/** The texts of a bundle that the client itself asks for, its files given as text; the server is handed all of them. */
export const textsOfClient = (bundle, files) =>
  Object.fromEntries(
    Object.entries(bundle).filter(([english]) =>
      files.some((file) => file.includes(`'${english}'`) || file.includes(`"${english}"`)),
    ),
  );

/** An editor may ask for Canadian French by its own name; French is written in the Canadian way. */
function nameCanadianFrench(clientFiles) {
  copyFileSync(targetOf('client/l10n/package.nls.fr.json'), path.join(stagedExtension, 'package.nls.fr-ca.json'));
  const bundles = path.join(stagedExtension, 'client', 'l10n');
  const french = JSON.parse(readFileSync(path.join(bundles, 'bundle.l10n.fr.json'), 'utf8'));
  const ofClient = textsOfClient(
    french,
    clientFiles.map((file) => readFileSync(inRoot(file), 'utf8')),
  );
  writeFileSync(path.join(bundles, 'bundle.l10n.fr-ca.json'), JSON.stringify(ofClient));
}

/** Makes the folder anew from what has been built. */
export async function stageExtension() {
  const { glob } = await import('tinyglobby');
  rmSync(stagedExtension, { recursive: true, force: true });
  const files = await glob(shippedPatterns(), { cwd: inRoot(), expandDirectories: false });
  for (const file of files) stageFile(file);
  nameCanadianFrench(await glob(['client/**/*.ts'], { cwd: inRoot() }));
}
