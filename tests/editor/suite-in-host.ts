import path from 'node:path';
import { build } from 'esbuild';
import type { Editor } from './editor.ts';
import { startWorkbench, type Workbench } from './workbench.ts';

export interface Totals {
  readonly passed: number;
  readonly failed: number;
}

const patience = 180_000;
/** The extension as `.config/stage.mjs` lays it out. */
export const stagedExtension = path.resolve('.cache', 'extension');
const suiteBundle = path.resolve('.cache', 'editor', 'suite.cjs');

/** Bundles the suite into the one CommonJS file that an extension host takes. Returns its path. */
export async function bundleSuite(): Promise<string> {
  await build({
    entryPoints: ['tests/editor/suite/index.ts'],
    outfile: suiteBundle,
    bundle: true,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    external: ['vscode'],
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return suiteBundle;
}

const totalsIn = (line: string): Totals | null => {
  const match = /^(\d+) passed, (\d+) failed$/.exec(line);
  return match ? { passed: Number(match[1]), failed: Number(match[2]) } : null;
};

/** Prints what the suite prints, and answers with its totals when the extension host ends. */
async function followSuite(workbench: Workbench): Promise<() => Promise<Totals>> {
  let totals: Totals | null = null;
  let end: (code: number) => void = () => {};
  const ended = new Promise<number>((resolve) => {
    end = resolve;
  });
  await workbench.page.exposeFunction('codeAutomationLog', (_type: string, args: readonly unknown[]) => {
    const line = args.join(' ');
    totals = totalsIn(line) ?? totals;
    if (/^(not )?ok - /.test(line)) console.log(line);
  });
  await workbench.page.exposeFunction('codeAutomationExit', (code: number) => end(code));
  return async () => {
    const timeout = new Promise<number>((resolve) => setTimeout(resolve, patience, -1).unref());
    const code = await Promise.race([ended, timeout]);
    // A killed extension host reports 0 too: only its own closing line says that the tests were run.
    if (totals === null) throw new Error(`The extension host ended with ${code} and no totals.`);
    return totals;
  };
}

/** Runs the extension-host suite on the extension in this folder. */
export async function runSuiteInHost(editor: Editor): Promise<Totals> {
  const suite = await bundleSuite();
  const workspace = path.resolve('tests/editor/workspace');
  const workbench = await startWorkbench({ editor, workspace, extensionsFolder: null });
  try {
    const end = await followSuite(workbench);
    await workbench.open([
      ['extensionDevelopmentPath', workbench.uri(stagedExtension)],
      ['extensionTestsPath', workbench.uri(suite)],
    ]);
    return await end();
  } finally {
    await workbench.stop();
  }
}
