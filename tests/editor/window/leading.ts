import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Tests, until } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, previewPage, runCommand, takeScreenshot, textLine, untilSelected } from './driver.ts';
import { closeUnsaved, setInWorkspace, startWith, writeMarked } from './keyboard.ts';

const contact = [
  'strata',
  '  0 - 4.1 clay',
  '  - 7.2 sand',
  'casing +0.45 - 4.1 steel 168.3',
  '  shoe 4.|1',
  '  grout 0 - 4.1 neat cement',
].join('\n');

const folder = {
  'test-here.well': 'well LF-31\ntest pump 40 L/min\n  observed LF-30, r 30\n  0 5.2\n',
};

const written = (workbench: Workbench, name: string): string =>
  readFileSync(path.join(workbench.workspace, name), 'utf8');

/** What leads from one place to another, by the keyboard. */
export const leading = (workbench: Workbench): Tests => ({
  async 'a contact is marked wherever a line leans on it'() {
    for (const [name, text] of Object.entries(folder)) writeFileSync(path.join(workbench.workspace, name), text);
    await startWith(workbench, '\n');
    await writeMarked(workbench, contact);
    await until(
      'four marks',
      async () => (await workbench.page.locator('.cdr[class*=" wordHighlight"]').count()) === 4,
    );
    await takeScreenshot(workbench.page, 'contact-marked');
  },

  async 'its references are listed by Shift+F12, and Enter goes to one'() {
    const { page } = workbench;
    await page.keyboard.press('Shift+F12');
    const listed = page.locator('.reference-zone-widget .monaco-list-row');
    // The base, the top below it, the casing, the shoe and the grout.
    await until('five references', async () => (await listed.count()) === 5);
    await takeScreenshot(page, 'references');
    await page.keyboard.press('Escape');
    await page.locator('.reference-zone-widget').waitFor({ state: 'detached' });
    await page.keyboard.press('F12');
    await untilSelected(page, /Ln 2, Col 7/);
  },

  async 'the selection grows with Shift+Alt+Right from the word to the section'() {
    const { page } = workbench;
    await writeMarked(workbench, 'well A\nstrata\n  0 - 3 silty cl|ay, brown\n  - 4 sand');
    for (const chosen of ['clay', 'silty clay', 'silty clay, brown']) {
      await page.keyboard.press('Shift+Alt+ArrowRight');
      await untilSelected(page, new RegExp(`\\(${chosen.length} selected\\)`));
    }
    const section = 'strata\n  0 - 3 silty clay, brown\n  - 4 sand'.length;
    const hasGrown = () =>
      page.locator('#status\\.editor\\.selection', { hasText: `(${section} selected)` }).isVisible();
    for (let step = 0; step < 5 && !(await hasGrown()); step += 1) {
      await page.keyboard.press('Shift+Alt+ArrowRight');
      await page.waitForTimeout(150);
    }
    assert.ok(await hasGrown());
  },

  async 'a section folds by the keyboard, and its total still stands above it'() {
    const { page } = workbench;
    await writeMarked(workbench, 'str|ata\n  0 - 3.8 clay\n  - 61 sand\nnote x');
    setInWorkspace(workbench, {});
    await page.locator('.codelens-decoration', { hasText: '2 layers · down to 61 m' }).first().waitFor();
    await page.keyboard.press('Control+Shift+[');
    await textLine(page, /clay/).waitFor({ state: 'detached' });
    await page.locator('.codelens-decoration', { hasText: '2 layers · down to 61 m' }).first().waitFor();
    await takeScreenshot(page, 'folded');
    await page.keyboard.press('Control+Shift+]');
    await textLine(page, /clay/).waitFor();
  },

  async 'a rule that is allowed leads to what is said of it, laid out'() {
    const { page } = workbench;
    await writeMarked(workbench, 'strata\n  0 - 3 clay # allow interval|-gap: nobody saw it');
    const opened = page.locator('.tab.active', { hasText: 'interval-gap' });
    // The editor looks for links once the text has come to rest.
    for (let ask = 0; ask < 5 && !(await opened.isVisible()); ask += 1) {
      await runCommand(page, 'Open Link');
      await opened.waitFor({ timeout: 1500 }).catch(() => {});
    }
    await previewPage(page).getByRole('heading', { name: 'interval-gap' }).waitFor();
    await takeScreenshot(page, 'page-of-a-rule');
    await openFile(page, 'empty.well');
  },

  async 'the id of a well is renamed through the folder by F2'() {
    const { page } = workbench;
    await writeMarked(workbench, 'well LF-|30\nstrata\n  0 - 3 clay\n');
    const box = page.locator('.rename-box input:focus');
    for (let ask = 0; ask < 5 && !(await box.isVisible()); ask += 1) {
      await page.keyboard.press('F2');
      await box.waitFor({ timeout: 3000 }).catch(() => {});
    }
    assert.equal(await box.inputValue(), 'LF-30');
    await page.keyboard.type('LF-40');
    await page.keyboard.press('Enter');
    await textLine(page, /well.LF-40/).waitFor();
    await until('the other log', () => written(workbench, 'test-here.well').includes('observed LF-40'));
  },

  async 'a well is found from any log by Ctrl+T'() {
    const { page } = workbench;
    await page.keyboard.press('Control+t');
    await page.locator('.quick-input-widget input.input').waitFor();
    await page.keyboard.type('LF-31');
    await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: /LF-31/ }).first().waitFor();
    await takeScreenshot(page, 'wells-by-name');
    await page.keyboard.press('Enter');
    await page.locator('.tab.active', { hasText: 'test-here.well' }).waitFor();
    await textLine(page, /well.LF-31/).waitFor();
    await closeUnsaved(workbench);
  },
});
