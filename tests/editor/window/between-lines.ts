import assert from 'node:assert/strict';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, takeScreenshot, textLine, untilSelected } from './driver.ts';
import { closeUnsaved } from './keyboard.ts';

/** A log that the window knows from its start. */
const file = 'empty.well';

const log = [
  'units m mm',
  'strata',
  '  0 - 4.1 clay',
  '  3.8 - 7.2 sand',
  'casing +0.45 - 7.2 steel 168.3',
  '  shoe 7.2',
  '',
];

async function openLog({ page, workspace }: Workbench): Promise<void> {
  writeFileSync(path.join(workspace, file), log.join('\n'));
  await openFile(page, file);
  await page.locator('.monaco-editor .view-lines').first().click();
  await page.keyboard.press('Control+Home');
}

async function down(workbench: Workbench, lines: number): Promise<void> {
  for (let line = 0; line < lines; line += 1) await workbench.page.keyboard.press('ArrowDown');
  await workbench.page.keyboard.press('End');
}

/** What leads between lines and changes them together, by the keyboard. */
export const betweenLines = (workbench: Workbench): Tests => ({
  async 'totals stand above the sections'() {
    await openLog(workbench);
    await workbench.page.locator('.codelens-decoration', { hasText: '2 layers' }).first().waitFor();
    await takeScreenshot(workbench.page, 'totals-and-hints');
  },

  async 'F12 on the shoe goes to the contact that it stands at'() {
    const { page } = workbench;
    await down(workbench, 5);
    await page.keyboard.press('F12');
    await untilSelected(page, /Ln 4, Col/);
  },

  async 'the lamp lets the next line begin at a base that was changed'() {
    const { page } = workbench;
    await page.keyboard.press('Control+Home');
    await down(workbench, 2);
    await page.keyboard.press('Control+.');
    const offer = page
      .locator('.action-widget .monaco-list-row', { hasText: 'Let the next line begin at 4.1' })
      .first();
    await offer.waitFor();
    await takeScreenshot(page, 'linked-contact');
    await offer.click();
    await textLine(page, /4\.1.-.7\.2/).waitFor();
  },

  async 'what a line takes is shown while it is typed'() {
    const { page } = workbench;
    await page.keyboard.press('Control+End');
    await page.keyboard.type('  grout 0 - 7.2 ', { delay: 25 });
    const help = page.locator('.parameter-hints-widget.visible .signature .active');
    await help.waitFor();
    assert.equal(await help.textContent(), 'material');
    await takeScreenshot(page, 'what-a-line-takes');
    await page.keyboard.press('Escape');
    await closeUnsaved(workbench);
  },
});
