import assert from 'node:assert/strict';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, runCommand, takeScreenshot, textLine } from './driver.ts';

const typedLog = ['well KH-09', 'strata', '0-3.8 slty cl brn', '-44.2 limstone gry', '-30 lst dk gry'];

const problemRow = (workbench: Workbench, words: RegExp) =>
  workbench.page.locator('.markers-panel .monaco-list-row', { hasText: words }).first();

async function typeLines(workbench: Workbench, lines: readonly string[]): Promise<void> {
  for (const line of lines) {
    await workbench.page.keyboard.type(line);
    await workbench.page.keyboard.press('Escape');
    await workbench.page.keyboard.press('Enter');
  }
}

/** Types a log with mistakes in it and mends them, as one would. */
export const typing = (workbench: Workbench): Tests => ({
  async 'a mistake is underlined as it is typed, and the panel says what is wrong'() {
    const { page } = workbench;
    await openFile(page, 'empty.well');
    await textLine(page, /^$/).click();
    await typeLines(workbench, typedLog);
    await page.locator('.squiggly-error').first().waitFor({ state: 'attached' });
    await page.keyboard.press('Control+Shift+M');
    await problemRow(workbench, /30.*44\.2|44\.2.*30/).waitFor();
    await takeScreenshot(page, 'mistakes');
    await page.keyboard.press('Control+Shift+M');
  },

  async 'a quick fix from the keyboard mends a misspelt term'() {
    const { page } = workbench;
    await textLine(page, /limstone/).click();
    await page.keyboard.press('End');
    for (let step = 0; step < ' gry'.length + 2; step++) await page.keyboard.press('ArrowLeft');
    const fix = page.locator('.action-widget .monaco-list-row', { hasText: /limestone/ }).first();
    // A person who asks before the editor has the fixes asks again.
    for (let ask = 0; ask < 5 && !(await fix.isVisible()); ask++) {
      await page.keyboard.press('Control+.');
      await fix.waitFor({ timeout: 4000 }).catch(() => page.keyboard.press('Escape'));
    }
    await fix.waitFor();
    await fix.click();
    await textLine(page, /limestone/).waitFor();
  },

  async 'completion offers the terms of the trade'() {
    const { page } = workbench;
    await textLine(page, /limestone/).click();
    await page.keyboard.press('End');
    // At a person's speed: the editor does not ask for words while keys come in one burst.
    await page.keyboard.type(' fract', { delay: 40 });
    await page
      .locator('.suggest-widget.visible .monaco-list-row', { hasText: /fractured/ })
      .first()
      .waitFor();
    await page.waitForTimeout(100);
    await page.keyboard.press('Tab');
    await textLine(page, /fractured/).waitFor();
  },

  async 'hovering over a short form tells the term'() {
    const { page } = workbench;
    await textLine(page, /dk.gry/).click();
    await runCommand(page, 'Show or Focus Hover');
    await page
      .locator('.monaco-hover:not(.hidden) .hover-contents', { hasText: /\w{4,}/ })
      .first()
      .waitFor();
    await page.keyboard.press('Escape');
  },

  async 'Format Document writes the short forms out'() {
    const { page } = workbench;
    await runCommand(page, 'Format Document');
    await textLine(page, /silty.clay,.brown/).waitFor();
    assert.equal(await page.locator('.view-line', { hasText: /slty/ }).count(), 0);
    await takeScreenshot(page, 'formatted');
    await runCommand(page, 'File: Revert File');
  },
});
