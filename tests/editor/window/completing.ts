import assert from 'node:assert/strict';
import type { Locator } from 'playwright-core';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { takeScreenshot } from './driver.ts';
import {
  breath,
  closeUnsaved,
  firstSuggestion,
  keys,
  startWith,
  suggestions,
  untilShown,
  writeMarked,
} from './keyboard.ts';

const suggestion = (workbench: Workbench, words: string | RegExp): Locator =>
  suggestions(workbench).filter({ hasText: words }).first();

const labelsOf = (workbench: Workbench): Promise<string[]> =>
  suggestions(workbench).locator('.label-name').allTextContents();

/** Writes a text and asks for the list by the keyboard where the cursor is. */
async function askAt(workbench: Workbench, marked: string): Promise<void> {
  await writeMarked(workbench, marked);
  const first = firstSuggestion(workbench);
  for (let ask = 0; ask < 5 && !(await first.isVisible()); ask += 1) {
    await workbench.page.keyboard.press('Control+Space');
    await first.waitFor({ timeout: 2000 }).catch(() => {});
  }
  await first.waitFor();
}

/** Takes the first of the list, once it is the one that is meant. */
async function takeFirst(workbench: Workbench, words: RegExp): Promise<void> {
  await firstSuggestion(workbench).filter({ hasText: words }).waitFor();
  await keys(workbench, '<Tab>');
}

/** Goes down the list to an entry and takes it; the list is asked for again with every letter, and then begins anew. */
async function takeBelow(workbench: Workbench, words: string): Promise<void> {
  const { page } = workbench;
  const chosen = page.locator('.suggest-widget.visible .monaco-list-row.focused', { hasText: words });
  const isSettled = async (): Promise<boolean> => {
    if (!(await chosen.isVisible())) return false;
    await page.waitForTimeout(breath);
    return chosen.isVisible();
  };
  for (let step = 0; step < 20 && !(await isSettled()); step += 1) await page.keyboard.press('ArrowDown');
  await chosen.waitFor();
  await keys(workbench, '<Tab>');
}

const gapped = ['strata', '  0 - 3.8 clay', '  4.1 - 6.1 sand'];

/** What the list offers, asked for and taken by the keyboard. */
export const completing = (workbench: Workbench): Tests => ({
  async 'the list goes by the place: keywords at the margin, ground in strata, what hangs on a casing'() {
    await startWith(workbench, '\n');
    await askAt(workbench, '|');
    assert.deepEqual((await labelsOf(workbench)).slice(0, 3), ['well', 'units', 'rules']);
    await askAt(workbench, 'strata\n  0 - 4 |');
    await suggestion(workbench, /^clay/).waitFor();
    assert.equal(await suggestion(workbench, /^casing/).count(), 0);
    await askAt(workbench, 'casing 0 - 7.2 steel\n  |');
    assert.deepEqual((await labelsOf(workbench)).slice(0, 2), ['shoe', 'centralizers']);
  },

  async 'what the file used comes first, then what the logs beside it used'() {
    await askAt(workbench, 'strata\n  0 - 3 marl\n  - 6 |');
    const labels = await labelsOf(workbench);
    assert.equal(labels[0], 'marl');
    // The logs of the workspace say brown and grey five times each, and nothing else so often.
    assert.deepEqual(labels.slice(1, 3).sort(), ['brown', 'grey']);
  },

  async 'a short form finds its term, and a slip what was meant'() {
    await writeMarked(workbench, 'strata\n  0 - 4 |');
    await keys(workbench, 'lst');
    await takeFirst(workbench, /^limestone/);
    await untilShown(workbench, ['strata', '  0 - 4 limestone']);
    await askAt(workbench, 'strata\n  0 - 4 limstone|');
    await takeFirst(workbench, /^limestone/);
    await untilShown(workbench, ['strata', '  0 - 4 limestone']);
  },

  async 'the docs of a term tell its meaning and its source'() {
    await askAt(workbench, 'strata\n  0 - 4 limes|');
    const docs = workbench.page.locator('.suggest-details', { hasText: /limestone.*Source: \S/s });
    if (!(await docs.isVisible())) await workbench.page.keyboard.press('Control+Space');
    await docs.waitFor();
    await takeScreenshot(workbench.page, 'docs-of-a-term');
  },

  async 'a whole section is put in, and Tab goes through what it asks'() {
    await askAt(workbench, 'units m mm\n\n|');
    await keys(workbench, 'casing');
    await takeBelow(workbench, 'with shoe, centralizers and grout');
    await keys(workbench, '0.45<Tab>7.2<Tab><Tab>168.3 x 7.1<Escape>');
    await untilShown(workbench, [
      'units m mm',
      '',
      'casing  +0.45 - 7.2   steel  168.3 x 7.1  welded',
      '  shoe          7.2',
      '  centralizers  ?',
      '  grout         0 - 7.2   neat cement, ? m3, ? bags, tremie',
      '',
      '',
    ]);
  },

  async 'packs are offered behind rules'() {
    await writeMarked(workbench, '|\nstrata\n  0 - 3 clay');
    await keys(workbench, 'rules ');
    await suggestion(workbench, /^general/).waitFor();
    await keys(workbench, 'ont');
    await takeFirst(workbench, /^ontario-903/);
    await untilShown(workbench, ['rules ontario-903', 'strata', '  0 - 3 clay']);
  },

  async 'behind allow stand the rules that speak of the line'() {
    await writeMarked(workbench, `${gapped.join('\n')}|`);
    await keys(workbench, '  # allow ');
    await firstSuggestion(workbench).waitFor();
    assert.deepEqual(await labelsOf(workbench), ['interval-gap']);
    await keys(workbench, '<Tab>nobody saw it');
    await untilShown(workbench, [...gapped.slice(0, 2), `${gapped[2]}  # allow interval-gap: nobody saw it`]);
    await closeUnsaved(workbench);
  },
});
