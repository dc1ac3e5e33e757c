// `npm run package`: builds small and packs the extension.
import { statSync } from 'node:fs';
import { stagedExtension } from './stage.mjs';
import { ensurePackages, inRoot, isMain, run } from './steps.mjs';

const largestPackage = 1.5e6;
const vsix = 'drillhand.vsix';

/** Packs the extension into `out`. @returns {Promise<{file: string, bytes: number}>} rejects with the reason */
export async function packExtension(out = inRoot(vsix)) {
  await (await import('./build.mjs')).build({ minify: true });
  const vsce = inRoot('node_modules', '@vscode', 'vsce', 'vsce');
  const args = ['package', '--no-dependencies', '--readme-path', 'client/README.md', '--out', out];
  const { code, output, errors } = await run(process.execPath, [vsce, ...args], { quiet: true, cwd: stagedExtension });
  if (code !== 0) throw new Error(`The extension could not be packed:\n${output}${errors}`);
  const bytes = statSync(out).size;
  if (bytes >= largestPackage) throw new Error(`The package has ${bytes} bytes; it must stay under ${largestPackage}.`);
  return { file: out, bytes };
}

if (isMain(import.meta.url)) {
  await ensurePackages();
  const { file, bytes } = await packExtension();
  console.log(`${file}: ${(bytes / 1000).toFixed(0)} kB`);
}
