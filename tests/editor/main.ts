import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Editor, ensureEditor, installExtension } from './editor.ts';
import type { Tests } from './suite/harness.ts';
import { runSuiteInHost, stagedExtension, type Totals } from './suite-in-host.ts';
import { accessible } from './window/accessibility.ts';
import { betweenLines } from './window/between-lines.ts';
import { completing } from './window/completing.ts';
import { runCommand, takeScreenshot } from './window/driver.ts';
import { flow } from './window/flow.ts';
import { inFrench } from './window/french.ts';
import { furniture } from './window/furniture.ts';
import { leading } from './window/leading.ts';
import { mending } from './window/mending.ts';
import { readingNotes } from './window/notes.ts';
import { keepingItsPlace } from './window/preview-places.ts';
import { usingThePreview } from './window/preview-tools.ts';
import { previewing } from './window/previewing.ts';
import { telling } from './window/telling.ts';
import { followingThemes } from './window/themes.ts';
import { typing } from './window/typing.ts';
import { viewingWells } from './window/wells.ts';
import { startWorkbench, type Workbench } from './workbench.ts';

const workspace = path.resolve('tests', 'editor', 'workspace');
/** The message and where in the test it happened, without the way there. */
const reasonOf = (error: unknown): string =>
  error instanceof Error
    ? (error.stack ?? error.message).split('\n    at ').slice(0, 2).join('\n    at ')
    : String(error);

const fileNameOf = (title: string): string => title.toLowerCase().replace(/[^a-z]+/g, '-');

/** A text that a failed test has left changed would fail those behind it. */
async function revertWhatIsLeft({ page }: Workbench): Promise<void> {
  await page.keyboard.press('Escape');
  if (await page.locator('.tab.active.dirty').isVisible()) await runCommand(page, 'File: Revert File');
}

async function runTest(workbench: Workbench, name: string, test: () => Promise<void>): Promise<Totals> {
  try {
    await test();
    console.log(`ok - ${name}`);
    return { passed: 1, failed: 0 };
  } catch (error) {
    console.log(`not ok - ${name}\n  ${reasonOf(error)}`);
    await takeScreenshot(workbench.page, `failed-${fileNameOf(name)}`);
    await revertWhatIsLeft(workbench).catch((failure) => console.log(`  ${reasonOf(failure)}`));
    return { passed: 0, failed: 1 };
  }
}

/** A whole part that cannot even begin is one failed test. */
async function orOneFailure(part: string, work: () => Promise<Totals[]>): Promise<Totals[]> {
  console.log(`\n# ${part}`);
  try {
    return await work();
  } catch (error) {
    console.log(`not ok - ${part}\n  ${reasonOf(error)}`);
    return [{ passed: 0, failed: 1 }];
  }
}

async function inWindow(
  workbench: Workbench,
  payload: ReadonlyArray<readonly [string, string]>,
  tests: Tests,
): Promise<Totals[]> {
  const totals: Totals[] = [];
  try {
    // No file is named here: a window that is told which files to open does not restore its editors after a reload.
    await workbench.open(payload);
    await workbench.page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: 60_000 });
    for (const [name, test] of Object.entries(tests)) totals.push(await runTest(workbench, name, test));
  } finally {
    await workbench.stop();
  }
  return totals;
}

async function developedExtension(editor: Editor): Promise<Totals[]> {
  const workbench = await startWorkbench({ editor, workspace, extensionsFolder: null });
  const tests = {
    ...viewingWells(workbench),
    ...typing(workbench),
    ...flow(workbench),
    ...completing(workbench),
    ...telling(workbench),
    ...betweenLines(workbench),
    ...leading(workbench),
    ...mending(workbench),
    ...furniture(workbench),
    ...previewing(workbench),
    ...usingThePreview(workbench),
    ...accessible(workbench),
    ...followingThemes(workbench),
    ...keepingItsPlace(workbench),
    ...readingNotes(workbench),
  };
  return inWindow(workbench, [['extensionDevelopmentPath', workbench.uri(stagedExtension)]], tests);
}

async function frenchWindow(editor: Editor): Promise<Totals[]> {
  const workbench = await startWorkbench({ editor, workspace, extensionsFolder: null, language: 'fr-ca' });
  return inWindow(workbench, [['extensionDevelopmentPath', workbench.uri(stagedExtension)]], inFrench(workbench));
}

async function packedExtension(editor: Editor, vsix: string): Promise<Totals[]> {
  const folder = mkdtempSync(path.join(tmpdir(), 'drillhand-packed-'));
  try {
    const extensionsFolder = path.join(folder, 'extensions');
    await installExtension(editor, vsix, extensionsFolder, folder);
    const workbench = await startWorkbench({ editor, workspace, extensionsFolder });
    return await inWindow(workbench, [], { ...typing(workbench), ...previewing(workbench) });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const parts: ReadonlyArray<readonly [string, (editor: Editor, vsix: string) => Promise<Totals[]>]> = [
  ['host', async (editor) => [await runSuiteInHost(editor)]],
  ['window', developedExtension],
  ['french', frenchWindow],
  ['package', packedExtension],
];

async function runParts(vsix: string, names: readonly string[]): Promise<Totals[]> {
  const editor = await ensureEditor();
  const totals: Totals[] = [];
  for (const [name, part] of parts) {
    if (names.length === 0 || names.includes(name))
      totals.push(...(await orOneFailure(name, () => part(editor, vsix))));
  }
  return totals;
}

const [vsix, ...names] = process.argv.slice(2);
if (vsix === undefined) throw new Error('Name the packed extension to install, and then the parts to run if not all.');
const totals = await orOneFailure('the editor', () => runParts(path.resolve(vsix), names));
const sum = (count: (part: Totals) => number): number => totals.reduce((total, part) => total + count(part), 0);
const failed = sum((part) => part.failed);
console.log(`${sum((part) => part.passed)} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
