import assert from 'node:assert/strict';
import { rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, runCommand, takeScreenshot, textLine } from './driver.ts';

const pane = ({ page }: Workbench) =>
  page.locator('.pane', { has: page.locator('.pane-header', { hasText: /^Wells/i }) });

/** A well, or a fact below one, by what a reader of the screen is told. */
const row = (workbench: Workbench, name: RegExp) => pane(workbench).getByRole('treeitem', { name });

const pick = (workbench: Workbench, words: string) =>
  workbench.page.locator('.quick-input-list .monaco-list-row', { hasText: words }).first();

const wells = (workbench: Workbench) => pane(workbench).getByRole('treeitem', { name: /^Well / });

/** The labels of the wells, from the top down, once there are so many. */
async function labels(workbench: Workbench, count: number): Promise<string[]> {
  await wells(workbench)
    .nth(count - 1)
    .waitFor();
  await wells(workbench).nth(count).waitFor({ state: 'detached' });
  return wells(workbench).locator('.label-name').allTextContents();
}

/** The wells of the folder, in a view of their own. */
export const viewingWells = (workbench: Workbench): Tests => ({
  async 'the explorer shows every well of the folder with its state'() {
    await openFile(workbench.page, 'sound.well');
    await pane(workbench).locator('.pane-header').click();
    await row(workbench, /^Well KH-04: 61 m · /).waitFor();
    assert.deepEqual((await labels(workbench, 4)).sort(), ['FM-11', 'KH-04', 'KH-05', 'empty.well']);
    await row(workbench, /^Well FM-11: .*\b1 error/).waitFor();
    await takeScreenshot(workbench.page, 'wells');
  },

  async 'a well unfolds to its figures, and a click opens its log'() {
    await row(workbench, /^Well KH-04/).click();
    await textLine(workbench.page, /Kestrel.Hollow/).waitFor();
    await row(workbench, /^Well KH-04/).press('ArrowRight');
    await row(workbench, /^Depth: 61 m$/).waitFor();
    await row(workbench, /^Static level: /).waitFor();
    await takeScreenshot(workbench.page, 'well-unfolded');
  },

  async 'the wells are sorted and filtered by the commands of the view'() {
    await runCommand(workbench.page, 'Drillhand: Sort Wells…');
    await pick(workbench, 'Findings, gravest first').click();
    await wells(workbench).first().and(row(workbench, /error/)).waitFor();
    await runCommand(workbench.page, 'Drillhand: Filter Wells…');
    await pick(workbench, 'Wells that hold certain words').click();
    await workbench.page.locator('.quick-input-message', { hasText: 'Words of the id' }).waitFor();
    await workbench.page.keyboard.type('kh-0');
    await workbench.page.keyboard.press('Enter');
    assert.deepEqual((await labels(workbench, 2)).sort(), ['KH-04', 'KH-05']);
    await pane(workbench).getByText('2 of 4 wells').waitFor();
    await runCommand(workbench.page, 'Drillhand: Show All Wells');
    await labels(workbench, 4);
  },

  async 'the view follows the files, and the same id twice is told'() {
    const file = path.join(workbench.workspace, 'second.well');
    writeFileSync(file, 'well KH-04\nhole\n  0 - 12 152\n');
    await row(workbench, /^Well KH-04: 12 m · 1 warning/).waitFor();
    rmSync(file);
    await labels(workbench, 4);
    await runCommand(workbench.page, 'View: Close All Editors');
  },
});
