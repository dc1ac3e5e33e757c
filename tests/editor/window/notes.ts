import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { Frame, Locator } from 'playwright-core';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, previewPage, runCommand, takeScreenshot, textLine } from './driver.ts';
import { closeUnsaved, copy, startWith, untilShown } from './keyboard.ts';

const crewNotes = `0 to 12' brn clay w/ stones
12-45 grey lime, wtr @ 38 5gpm
set 20 ft 6 in csg, drv shoe, 14 bags
<img src=x onerror=alert(1)> broke a cable
SWL 17
`;

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
}

/** What the accessibility checker finds wrong with a page. */
async function accessibilityFaults(part: Locator): Promise<string[]> {
  const frame = (await (await part.elementHandle())?.ownerFrame()) as Frame;
  await frame.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
  const result = (await frame.evaluate('axe.run(document)')) as AxeResult;
  return result.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
}

/** Reads a crew's notes, reviews them by keyboard, and makes a log of them. */
export const readingNotes = (workbench: Workbench): Tests => {
  const review = () => previewPage(workbench.page).locator('#review');
  const entry = (at: number) => review().locator('.entry').nth(at);
  const line = (at: number) => entry(at).locator('.line input').first();
  /** Narrows the open list down to an entry, and takes it. */
  const choose = async (words: string): Promise<void> => {
    const { page } = workbench;
    await page.locator('.quick-input-list .monaco-list-row', { hasText: words }).first().waitFor();
    await page.keyboard.type(words);
    await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: words }).waitFor();
    await page.keyboard.press('Enter');
  };
  return {
    async 'selected notes open as a review, and what they leave open is asked'() {
      const { page } = workbench;
      writeFileSync(path.join(workbench.workspace, 'crew-notes.txt'), crewNotes);
      await openFile(page, 'crew-notes.txt');
      await textLine(page, /brn/).click();
      await page.keyboard.press('Control+A');
      await runCommand(page, 'Drillhand: Read Field Notes');
      await choose('The selected text');
      await choose('US gallons');
      await entry(0).waitFor({ timeout: 30_000 });
      assert.equal(await review().locator('.entry').count(), 5);
      assert.match(await line(0).inputValue(), /^0 - 12' clay, brown, with stones$/);
      await takeScreenshot(page, 'notes-review');
    },

    async 'the review is accessible, and a script in the notes stays text'() {
      assert.deepEqual(await accessibilityFaults(review()), []);
      assert.equal(await review().locator('img').count(), 0);
      await entry(3).getByText('<img src=x').waitFor();
    },

    async 'the keyboard goes from entry to entry, accepts, refuses and edits'() {
      const { page } = workbench;
      await entry(0).focus();
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('a');
      assert.equal(await entry(2).getAttribute('data-decision'), 'accepted');
      await page.keyboard.press('r');
      assert.equal(await entry(2).getAttribute('data-decision'), 'refused');
      await page.keyboard.press('a');
      await page.keyboard.press('e');
      assert.ok(await line(2).evaluate((element) => element === document.activeElement));
      await line(2).fill('casing ? - 20 ft 40 L/min');
      await entry(2).locator('.fault').filter({ hasText: '40 L/min' }).waitFor();
      await line(2).fill('casing 0 - 20 ft steel 6 in driven');
      await entry(2).locator('.fault').filter({ hasText: '40 L/min' }).waitFor({ state: 'detached' });
      await page.keyboard.press('Escape');
      assert.ok(await entry(2).evaluate((element) => element === document.activeElement));
    },

    async 'all understood entries are accepted at once, and the log has them'() {
      const { page } = workbench;
      await review().getByRole('button', { name: 'Accept All Understood' }).click();
      await review().getByText('4 accepted, 0 refused, 1 open').waitFor();
      await review().getByRole('button', { name: 'Make a New Log' }).click();
      await textLine(page, /units.*ft.in.gal-us/).waitFor();
      await textLine(page, /clay,.brown,.with.stones/).waitFor();
      await textLine(page, /casing.*steel.*6.in.*driven/).waitFor();
      await textLine(page, /#.<img.src=x/).waitFor();
      await takeScreenshot(page, 'notes-log');
      await runCommand(page, 'View: Revert and Close Editor');
      await runCommand(page, 'View: Close All Editors');
    },

    async 'notes of the clipboard are put in at the cursor, where the log has their units'() {
      const { page } = workbench;
      await startWith(workbench, 'well KH-09\nunits ft in gal-us\n');
      await copy(workbench, "0 to 12' brn clay");
      await runCommand(page, 'Drillhand: Read Field Notes');
      await choose('The clipboard');
      await entry(0).waitFor({ timeout: 30_000 });
      await entry(0).press('a');
      await review().getByText('1 accepted').waitFor();
      await review().getByRole('button', { name: 'Insert at the Cursor' }).press('Enter');
      await untilShown(workbench, [
        'well KH-09',
        'units ft in gal-us',
        'strata',
        "# 0 to 12' brn clay",
        "  0    - 12'    clay, brown",
        '',
      ]);
      await takeScreenshot(page, 'notes-at-the-cursor');
      await closeUnsaved(workbench);
    },

    async 'notes of a file are found by its path and read'() {
      const { page } = workbench;
      writeFileSync(path.join(workbench.workspace, 'sheet.csv'), 'from,to,description\n0,12,clay brn\n12,40,lst gry\n');
      await runCommand(page, 'Drillhand: Read Field Notes');
      await choose('A file: text or CSV');
      // The editor's own box for files begins in the folder of the window.
      await choose('sheet.csv');
      await choose('Metres');
      // The heading is an entry of its own, which stays a comment.
      await entry(2).waitFor({ timeout: 30_000 });
      assert.equal(await line(1).inputValue(), '0 - 12 clay, brown');
      assert.equal(await line(2).inputValue(), '12 - 40 limestone, grey');
      await takeScreenshot(page, 'notes-of-a-file');
      await runCommand(page, 'View: Close All Editors');
    },
  };
};
