import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { previewPage, runCommand, takeScreenshot } from './driver.ts';
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
