import assert from 'node:assert/strict';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import {
  openFile,
  previewPage,
  previewPart,
  reloadWindow,
  runCommand,
  takeScreenshot,
  textLine,
  untilSelected,
} from './driver.ts';

/** Lines of sound.well, counted from 0. */
const limestoneLine = 14;
const casingLine = 17;

const stratumRow = (workbench: Workbench) =>
  previewPage(workbench.page).locator(`[data-section="strata"] tr[data-line="${limestoneLine}"]`);

const isAtCursor = (workbench: Workbench, line: number) =>
  previewPage(workbench.page).locator(`[data-line="${line}"].at-cursor`).first().waitFor();

/** Draws a log beside its text and goes to and fro between the two. */
export const previewing = (workbench: Workbench): Tests => ({
  async 'the preview opens beside the log with the keyboard and shows a drawing and the record'() {
    const { page } = workbench;
    await openFile(page, 'sound.well');
    await textLine(page, /Kestrel/).click();
    await page.keyboard.press('Control+K');
    await page.keyboard.press('v');
    await previewPage(page).locator('svg').first().waitFor({ timeout: 30_000 });
    await previewPage(page).locator('table').first().waitFor();
    await takeScreenshot(page, 'preview');
  },

  async 'a click on a part of the drawing selects its line'() {
    await previewPart(workbench.page, limestoneLine).click();
    await untilSelected(workbench.page, /Ln 15, .*selected/);
  },

  async 'Enter on a part that has the focus selects its line'() {
    const { page } = workbench;
    await previewPart(page, casingLine).focus();
    await page.keyboard.press('Enter');
    await untilSelected(page, /Ln 18, .*selected/);
  },

  async "the cursor's line is marked in the drawing, and only that line"() {
    const { page } = workbench;
    await textLine(page, /soft.seam/).click();
    await isAtCursor(workbench, limestoneLine);
    await page.keyboard.press('ArrowDown');
    await isAtCursor(workbench, limestoneLine + 1);
    const marked = await previewPage(page)
      .locator('.at-cursor')
      .evaluateAll((parts) => parts.map((part) => part.getAttribute('data-line')));
    assert.deepEqual([...new Set(marked)], [String(limestoneLine + 1)]);
  },

  async 'an edit redraws what it changes and leaves the rest and the scroll as they were'() {
    const { page } = workbench;
    const water = previewPage(page).locator('[data-section="water"]');
    const scrollTop = () => water.evaluate(() => window.scrollY);
    await water.evaluate((section) => section.setAttribute('data-seen', 'before the edit'));
    await textLine(page, /soft.seam/).click();
    await page.keyboard.press('End');
    const before = await scrollTop();
    await page.keyboard.type(' and at 31');
    await stratumRow(workbench).getByText('soft seam at 22 and at 31').waitFor();
    assert.equal(await water.getAttribute('data-seen'), 'before the edit');
    assert.equal(await scrollTop(), before);
    await runCommand(page, 'File: Revert File');
    await stratumRow(workbench).getByText('soft seam at 22 and at 31').waitFor({ state: 'detached' });
  },

  async 'a row that has the focus keeps it when it is redrawn'() {
    const name = stratumRow(workbench).locator('.to-line');
    await name.evaluate((focused: HTMLElement) => {
      focused.focus();
      const sections = [...(document.getElementById('body')?.children ?? [])].map((section) => {
        const id = section.getAttribute('data-section');
        return {
          id,
          html: id === 'strata' ? section.outerHTML.replaceAll('soft seam at 22', 'soft seam at 23') : null,
        };
      });
      window.postMessage({ type: 'show', sections, columns: [] });
    });
    await stratumRow(workbench).getByText('soft seam at 23').waitFor();
    assert.ok(await name.evaluate((redrawn) => redrawn === document.activeElement));
  },

  async 'what is typed is drawn, and a script in it stays text'() {
    const { page } = workbench;
    await textLine(page, /soft.seam/).click();
    await page.keyboard.press('End');
    await page.keyboard.type(' <script>x</script><img src=x onerror=alert(1)>');
    await previewPage(page).getByText('<script>x</script>').first().waitFor();
    assert.equal(await previewPage(page).locator('#body script, #body img').count(), 0);
    await runCommand(page, 'File: Revert File');
  },

  async 'the preview is there again after the window is reloaded'() {
    const { page } = workbench;
    await reloadWindow(page);
    await previewPage(page).locator('svg').first().waitFor({ timeout: 40_000 });
    const selected = page.locator('#status\\.editor\\.selection', { hasText: /Ln 15, .*selected/ });
    // The page may take the focus back from the text while the window is still loading.
    for (let click = 0; click < 5 && !(await selected.isVisible()); click += 1) {
      await previewPart(page, limestoneLine).click();
      await selected.waitFor({ timeout: 3000 }).catch(() => {});
    }
    await selected.waitFor();
  },
});
