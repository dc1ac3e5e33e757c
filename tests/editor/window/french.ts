import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, previewPage, runCommand, takeScreenshot, textLine } from './driver.ts';
import { closeUnsaved, keys } from './keyboard.ts';

/** What an editor that speaks French shows of the extension. */
export const inFrench = (workbench: Workbench): Tests => ({
  async 'a command and the boxes that it opens speak French'() {
    const { page } = workbench;
    await runCommand(page, 'Nouveau journal de puits');
    const box = page.locator('.quick-input-widget');
    await box.getByText('Nouveau journal de puits (1 de 2)').waitFor();
    await box.locator('.monaco-list-row', { hasText: 'm mm' }).waitFor();
    await takeScreenshot(page, 'french-new-log');
    await keys(workbench, '<Escape>');
  },

  async 'totals, findings and their fixes speak French'() {
    const { page } = workbench;
    await openFile(page, 'no-shoe.well');
    await page.locator('.codelens-decoration', { hasText: '2 couches · jusqu’à 40 m' }).first().waitFor();
    await page.keyboard.press('Control+Shift+M');
    await page.locator('.markers-panel .monaco-list-row', { hasText: 'aucun sabot' }).first().waitFor();
    await page.keyboard.press('Control+Shift+M');
    await textLine(page, /^casing/).click();
    await page.keyboard.press('Home');
    const fix = page.locator('.action-widget .monaco-list-row', { hasText: 'Ajouter une ligne shoe avec ?' }).first();
    // A person who asks before the editor has the fixes asks again.
    for (let ask = 0; ask < 5 && !(await fix.isVisible()); ask += 1) {
      await page.keyboard.press('Control+.');
      await fix.waitFor({ timeout: 4000 }).catch(() => page.keyboard.press('Escape'));
    }
    await fix.waitFor();
    await takeScreenshot(page, 'french-fixes');
    await page.keyboard.press('Escape');
    await closeUnsaved(workbench);
  },

  async 'the walkthrough and its pages speak French'() {
    const { page } = workbench;
    await runCommand(page, 'Welcome: Open Walkthrough...');
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'D’une première ligne' }).first().click();
    await page.getByText('Noter le terrain à la hâte').first().click();
    await previewPage(page).getByText('commence la couche suivante').waitFor();
    await takeScreenshot(page, 'french-walkthrough');
    await closeUnsaved(workbench);
  },
});
