// Bundles what is shipped into dist/ and lays the extension out for an editor. `--minify` for a package; `build()` for the other scripts.
import { chmodSync, copyFileSync, mkdirSync, rmSync } from 'node:fs';
import { writeShippedFiles } from './shipped-files.mjs';
import { stageExtension } from './stage.mjs';
import { inRoot, isMain } from './steps.mjs';

const node = { platform: 'node', target: 'node20' };
// An ES module has no `require`, which CommonJS packages inside the bundle may still call for Node's own modules.
const requireForBundledPackages =
  "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);";

const bundles = [
  { ...node, entryPoints: ['server/lsp/node.ts'], outfile: 'dist/server.cjs', format: 'cjs' },
  { ...node, entryPoints: ['client/extension.ts'], outfile: 'dist/client.cjs', format: 'cjs', external: ['vscode'] },
  {
    ...node,
    entryPoints: ['server/cli/main.ts'],
    outfile: 'dist/cli.mjs',
    format: 'esm',
    banner: { js: `#!/usr/bin/env node\n${requireForBundledPackages}` },
  },
  {
    platform: 'browser',
    target: 'es2022',
    entryPoints: ['client/webview/main.ts'],
    outfile: 'dist/webview.js',
    format: 'iife',
  },
  {
    platform: 'browser',
    target: 'es2022',
    entryPoints: ['client/webview/review.ts'],
    outfile: 'dist/review.js',
    format: 'iife',
  },
];

const bundleOne = async (options, minify) => {
  const esbuild = await import('esbuild');
  return esbuild.build({
    absWorkingDir: inRoot(),
    bundle: true,
    minify,
    sourcemap: minify ? false : 'linked',
    legalComments: 'none',
    mainFields: ['module', 'main'],
    logLevel: 'warning',
    ...options,
  });
};

/** Builds everything; rejects with esbuild's message, which it has also printed. */
export async function build({ minify = false } = {}) {
  rmSync(inRoot('dist'), { recursive: true, force: true });
  mkdirSync(inRoot('dist'), { recursive: true });
  await Promise.all([writeShippedFiles(inRoot('dist')), ...bundles.map((options) => bundleOne(options, minify))]);
  for (const sheet of ['preview.css', 'review.css'])
    copyFileSync(inRoot('client/webview', sheet), inRoot('dist', sheet));
  chmodSync(inRoot('dist/cli.mjs'), 0o755);
  await stageExtension();
}

if (isMain(import.meta.url)) {
  try {
    await build({ minify: process.argv.includes('--minify') });
  } catch {
    process.exitCode = 1;
  }
}
