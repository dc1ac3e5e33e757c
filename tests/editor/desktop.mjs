// node tests/editor/desktop.mjs: runs the extension-host suite in a desktop VS Code, by hand, where there is one.
// Set VSCODE_EXECUTABLE to the path of an installed VS Code; without it one is downloaded, which needs the internet.
import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { runTests } from '@vscode/test-electron';
import { build } from '../../.config/build.mjs';
import { importTypeScript } from '../../.config/run.mjs';
import { stagedExtension } from '../../.config/stage.mjs';
import { inRoot } from '../../.config/steps.mjs';

const workspace = mkdtempSync(path.join(tmpdir(), 'drillhand-desktop-'));
cpSync(inRoot('tests/editor/workspace'), workspace, { recursive: true });
await build();
const { bundleSuite } = await importTypeScript('tests/editor/suite-in-host.ts');
const installed = process.env.VSCODE_EXECUTABLE;

await runTests({
  ...(installed ? { vscodeExecutablePath: installed } : {}),
  extensionDevelopmentPath: stagedExtension,
  extensionTestsPath: await bundleSuite(),
  launchArgs: [workspace, '--disable-extensions', '--disable-workspace-trust'],
});
