import assert from 'node:assert/strict';
import path from 'node:path';
import { type Tests, until } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { chooseTheme, openFile, runCommand, takeScreenshot, textLine } from './driver.ts';
import { closeUnsaved, keys, setInWorkspace, startWith, untilShown } from './keyboard.ts';

const listEntry = (workbench: Workbench, words: string) =>
  workbench.page.locator('.quick-input-list .monaco-list-row', { hasText: words }).first();

/** What stands around the text. */
export const furniture = (workbench: Workbench): Tests => ({
  async 'a new log asks for its units and its packs, and begins with question marks that Tab goes to'() {
    const { page } = workbench;
    await runCommand(page, 'Drillhand: New Well Log');
    await listEntry(workbench, 'feet and inches, US gallons').click();
    await listEntry(workbench, 'general').waitFor();
    await listEntry(workbench, 'ontario-903').click();
    await keys(workbench, '<Enter>');
    await textLine(page, /^well\s+\?$/).waitFor();
    await keys(workbench, 'KH-09<Tab><Tab>Kestrel Hollow Co-op');
    await textLine(page, /^well\s+KH-09$/).waitFor();
    await textLine(page, /^units\s+ft.in.gal-us$/).waitFor();
    await textLine(page, /^rules\s+ontario-903$/).waitFor();
    await textLine(page, /^owner\s+Kestrel.Hollow.Co-op$/).waitFor();
    await takeScreenshot(page, 'new-log');
    // An untitled log without text can be closed without being asked about.
    await keys(workbench, '<Escape><Control+a><Delete>');
    await closeUnsaved(workbench);
  },

  async 'the language status says what was found and what the log is checked against'() {
    const { page } = workbench;
    await openFile(page, 'no-shoe.well');
    const status = page.locator('#status\\.languageStatus');
    await status.waitFor();
    await status.hover();
    const shown = page.locator('.hover-language-status', { hasText: /checked against general/ });
    await shown.waitFor();
    assert.match((await shown.textContent()) ?? '', /\d (?:error|warning|remark)|No findings/);
    await takeScreenshot(page, 'language-status');
    await page.mouse.move(400, 400);
    await closeUnsaved(workbench);
  },

  async 'the status of a log tells when its record is due'() {
    const { page } = workbench;
    await startWith(workbench, 'rules montana-36-21\nfinished 2026-05-06\nhole\n  0 - 61 152');
    await page.locator('#status\\.languageStatus').hover();
    // Montana's 60 days (ARM 36.21, as the pack has them) from 6 May end on 5 July.
    await page.locator('.hover-language-status', { hasText: /checked against montana-36-21.*2026-07-05/ }).waitFor();
    await page.mouse.move(400, 400);
    await closeUnsaved(workbench);
  },

  async 'a snippet of the manifest is put in by its name'() {
    const { page } = workbench;
    await startWith(workbench, '\n');
    await runCommand(page, 'Snippets: Insert Snippet');
    await page.locator('.quick-input-widget input.input').waitFor();
    await page.keyboard.type('strata: the first layer');
    await page.keyboard.press('Enter');
    await keys(workbench, '3.8<Tab>clay');
    await untilShown(workbench, ['', 'strata', '  0    - 3.8   clay']);
    await closeUnsaved(workbench);
  },

  async 'a log has its icon among the files, in a light and in a dark theme'() {
    const { page } = workbench;
    const icon = page.locator('.explorer-folders-view .monaco-list-row[aria-label*="sound.well"] .monaco-icon-label');
    const drawn = () => icon.evaluate((label) => getComputedStyle(label, '::before').backgroundImage);
    for (const [theme, file] of [
      ['Light Modern', 'well-light.svg'],
      ['Dark Modern', 'well-dark.svg'],
    ] as const) {
      await chooseTheme(page, theme);
      await until(file, async () => (await drawn()).includes(file));
    }
  },

  async 'every setting tells what it does'() {
    const { page } = workbench;
    const shown = page.locator('.settings-editor .setting-item-contents .setting-item-description');
    const packs = page.locator('.settings-editor .setting-item-label', { hasText: 'Packs' }).first();
    // The box for words takes the focus a while after the page is there.
    for (let ask = 0; ask < 5 && !(await packs.isVisible()); ask += 1) {
      await page.keyboard.press('Control+,');
      await page
        .locator('.settings-editor .search-container .focused')
        .first()
        .waitFor({ timeout: 3000 })
        .catch(() => {});
      await page.keyboard.press('Control+a');
      await page.keyboard.type('@ext:drillhand.drillhand');
      await packs.waitFor({ timeout: 3000 }).catch(() => {});
    }
    await packs.waitFor();
    await takeScreenshot(page, 'settings');
    const texts = await shown.allTextContents();
    assert.ok(texts.length > 5, texts.join('\n'));
    for (const text of texts) assert.ok(text.trim().length > 20, text);
    await closeUnsaved(workbench);
  },

  async 'the log of the checker is shown by its command'() {
    const { page } = workbench;
    await openFile(page, 'sound.well');
    await runCommand(page, "Drillhand: Show the Checker's Log");
    await page.locator('.part.panel .monaco-select-box', { hasText: 'Drillhand' }).first().waitFor();
    await takeScreenshot(page, 'checker-log');
    await page.keyboard.press('Control+j');
    await closeUnsaved(workbench);
  },

  async 'the walkthrough leads to a first record'() {
    const { page } = workbench;
    await runCommand(page, 'Welcome: Open Walkthrough...');
    await listEntry(workbench, 'From a first line to a first record').click();
    await page.getByText('See the record').first().click();
    await page.getByRole('button', { name: 'Open Preview to the Side' }).first().waitFor();
    await takeScreenshot(page, 'walkthrough');
    await closeUnsaved(workbench);
  },

  async 'the task checks every log, and what it finds is listed among the problems'() {
    const { page } = workbench;
    setInWorkspace(workbench, { 'drillhand.commandLine.path': path.resolve('dist', 'cli.mjs') });
    await runCommand(page, 'Tasks: Run Task');
    await keys(workbench, 'drillhand');
    const task = listEntry(workbench, 'check every log');
    if (!(await task.isVisible())) await listEntry(workbench, 'drillhand').click();
    await task.click();
    await page.locator('.terminal-wrapper').first().waitFor();
    await runCommand(page, 'View: Focus Problems');
    const problem = page.locator('.markers-panel .monaco-list-row', { hasText: /no shoe is logged/ }).first();
    await problem.waitFor({ timeout: 45_000 });
    await takeScreenshot(page, 'task-problems');
    await page.keyboard.press('Control+j');
    await closeUnsaved(workbench);
  },
});
