import { mendings, metric, us } from '../../lsp/mendings.ts';
import { settingUp, type Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { takeScreenshot } from './driver.ts';
import { closeUnsaved, startWith, untilShown, writeMarked } from './keyboard.ts';

/** Opens the menu of the lamp and goes down it to what holds the words; asks again where the offers are not there yet. */
async function takeOffer(workbench: Workbench, words: string): Promise<void> {
  const { page } = workbench;
  const rows = page.locator('.action-widget .monaco-list-row.action');
  for (let ask = 0; ask < 5 && !(await rows.filter({ hasText: words }).first().isVisible()); ask += 1) {
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+.');
    await rows
      .filter({ hasText: words })
      .first()
      .waitFor({ timeout: 1500 })
      .catch(() => {});
  }
  const chosen = page.locator('.action-widget .monaco-list-row.focused', { hasText: words });
  const most = await rows.count();
  for (let step = 0; step < most && !(await chosen.isVisible()); step += 1) await page.keyboard.press('ArrowDown');
  await chosen.waitFor();
  await page.keyboard.press('Enter');
}

/** What the lamp offers, taken by the keyboard. */
export const mending = (workbench: Workbench): Tests =>
  settingUp(() => startWith(workbench, 'well A\n'), {
    ...Object.fromEntries(
      mendings.map(({ does, before, offer, after }) => [
        does,
        async () => {
          await writeMarked(workbench, before);
          await takeOffer(workbench, offer);
          await untilShown(workbench, after.split('\n'));
        },
      ]),
    ),

    async 'the file is converted to feet and back to the letter'() {
      await writeMarked(workbench, `|${metric}`);
      await takeOffer(workbench, 'Convert the file to feet and inches');
      await untilShown(workbench, us.split('\n'));
      await takeScreenshot(workbench.page, 'converted');
      await takeOffer(workbench, 'Convert the file to metres and millimetres');
      await untilShown(workbench, metric.split('\n'));
      await closeUnsaved(workbench);
    },
  });
