import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { takeScreenshot } from './driver.ts';
import { closeUnsaved, startWith, untilShown, writeMarked } from './keyboard.ts';

/** A text with the cursor in it, what the lamp offers there, and the text after it is taken. */
interface Mending {
  readonly does: string;
  readonly before: string;
  readonly offer: string;
  readonly after: string;
}

const gap = 'strata\n  0 - 3.8 clay\n  |4.1 - 6.1 sand';
const overlap = 'strata\n  0 - 4.1 clay\n  |3.8 - 6.1 sand';

const mendings: readonly Mending[] = [
  {
    does: 'a gap is closed by the base above',
    before: gap,
    offer: 'Begin this line at the base',
    after: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
  },
  {
    does: 'a gap is closed by the top below',
    before: gap,
    offer: 'End the line above',
    after: 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
  },
  {
    does: 'a gap is logged as unknown',
    before: gap,
    offer: 'Log the gap as unknown',
    after: 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand',
  },
  {
    does: 'an overlap is closed by the base above',
    before: overlap,
    offer: 'Begin this line at the base',
    after: 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
  },
  {
    does: 'an overlap is closed by the top below',
    before: overlap,
    offer: 'End the line above',
    after: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
  },
  {
    does: 'an overlap is logged as unknown',
    before: overlap,
    offer: 'given twice as unknown',
    after: 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand',
  },
  {
    does: 'lines are sorted by depth',
    before: 'strata\n  9 - 12 sand\n  0 - 3| silt\n  - 9 clay',
    offer: 'Sort the lines of strata',
    after: 'strata\n  0 - 3 silt\n  - 9 clay\n  9 - 12 sand',
  },
  {
    does: 'a section that is missing is put in as questions',
    before: 'well A\nhole\n  0 - 9 200|',
    offer: 'missing: strata',
    after: 'well A\nhole\n  0 - 9 200\n\nstrata\n  - ?  ?',
  },
  {
    does: 'a remark becomes a line of its section',
    before: 'strata\n  0 - 30| sand ; water at 26.4',
    offer: 'Make the remark a line',
    after: 'strata\n  0 - 30 sand\n\nwater\n  26.4  ?',
  },
  {
    does: 'terms are written in full',
    before: 'strata\n  0 - 3 slty cl| brn',
    offer: 'terms of these lines in full',
    after: 'strata\n  0 - 3 silty clay, brown',
  },
  {
    does: 'terms are written short',
    before: 'strata\n  0 - 3 silty cl|ay, brown',
    offer: 'terms of these lines short',
    after: 'strata\n  0 - 3 slty cl, brn',
  },
  {
    does: 'a rule is silenced on its line, the reason left open',
    before: 'strata\n  0 - 4 limst|one',
    offer: 'Allow unknown-term',
    after: 'strata\n  0 - 4 limstone  # allow unknown-term: ?',
  },
];

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

const units = 'units m mm\nstrata\n  0-3.8 slty cl brn\n  - 38 ft sand\nwater\n  6.10 fresh, 25 L/min';

/** What the lamp offers, taken by the keyboard. */
export const mending = (workbench: Workbench): Tests => ({
  async 'the lamp of the keyboard: a log is opened'() {
    await startWith(workbench, 'well A\n');
  },

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
    await writeMarked(workbench, `|${units}`);
    await takeOffer(workbench, 'Convert the file to feet and inches');
    await untilShown(workbench, [
      'units ft in',
      'strata',
      '  0-12.46719 slty cl brn',
      '  - 38   ft sand',
      'water',
      '  20.013123 fresh, 6.60430 gpm-us',
    ]);
    await takeScreenshot(workbench.page, 'converted');
    await takeOffer(workbench, 'Convert the file to metres and millimetres');
    await untilShown(workbench, units.split('\n'));
    await closeUnsaved(workbench);
  },
});
