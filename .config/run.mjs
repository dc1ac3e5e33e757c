// node .config/run.mjs FILE.ts [ARGUMENT…]: bundles one TypeScript program of this project and runs it.
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { inRoot, isMain, run } from './steps.mjs';

/** Bundles a TypeScript file as an ES module; packages stay outside and are found in node_modules. */
export async function bundleForNode(file, outfile) {
  const esbuild = await import('esbuild');
  await esbuild.build({
    absWorkingDir: inRoot(),
    entryPoints: [file],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    sourcemap: 'inline',
    logLevel: 'warning',
  });
}

const bundleName = (file) => `${path.basename(file, '.ts')}-${process.pid}-${Date.now().toString(36)}.mjs`;

const withBundle = async (file, use) => {
  const outfile = inRoot('node_modules', '.cache', 'drillhand', bundleName(file));
  mkdirSync(path.dirname(outfile), { recursive: true });
  try {
    await bundleForNode(file, outfile);
    return await use(outfile);
  } finally {
    rmSync(outfile, { force: true });
  }
};

/** The exports of a TypeScript module of this project. */
export const importTypeScript = (file) => withBundle(file, (outfile) => import(pathToFileURL(outfile).href));

/** Runs a TypeScript program in a process of its own. */
export const runTypeScript = (file, args = [], options = {}) =>
  withBundle(file, (outfile) => run(process.execPath, ['--enable-source-maps', outfile, ...args], options));

if (isMain(import.meta.url)) {
  const [file, ...args] = process.argv.slice(2);
  if (file === undefined) {
    console.error('Name the TypeScript file to run.');
    process.exitCode = 2;
  } else process.exitCode = (await runTypeScript(file, args)).code;
}
