import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { FrameLocator, Locator, Page } from 'playwright-core';

/** What a person does in the window, by keyboard and mouse, and what they see there. */

const screenshots = path.resolve('.cache', 'screenshots');

export async function takeScreenshot(page: Page, name: string): Promise<void> {
  mkdirSync(screenshots, { recursive: true });
  await page.screenshot({ path: path.join(screenshots, `${name}.png`) });
}

const pick = (page: Page, words: string): Locator =>
  page.locator('.quick-input-list .monaco-list-row', { hasText: words }).first();

const patience = 7000;
const attempts = 3;

async function typeAndPick(page: Page, words: string): Promise<void> {
  await page.locator('.quick-input-widget input.input').waitFor({ timeout: patience });
  await page.keyboard.type(words);
  await pick(page, words).click({ timeout: patience });
}

/**
 * Opens a list, types into it and takes the entry that says the same. The list closes where the focus goes elsewhere
 * meanwhile, as it may while a page loads: then it is opened again, as a person would.
 */
async function pickFrom(page: Page, open: () => Promise<void>, words: string): Promise<void> {
  for (let attempt = 1; ; attempt++) {
    await open();
    try {
      return await typeAndPick(page, words);
    } catch (error) {
      if (attempt === attempts) throw error;
      await page.keyboard.press('Escape');
    }
  }
}

export const runCommand = (page: Page, title: string): Promise<void> =>
  pickFrom(page, () => page.keyboard.press('F1'), title);

export async function openFile(page: Page, name: string): Promise<void> {
  await pickFrom(page, () => page.keyboard.press('Control+P'), name);
  await page.locator('.tab.active', { hasText: name }).waitFor();
}

export const chooseTheme = (page: Page, theme: string): Promise<void> =>
  pickFrom(
    page,
    async () => {
      await page.keyboard.press('Control+K');
      await page.keyboard.press('Control+T');
    },
    theme,
  );

/** A line of the text editor, found by what it says. The editor writes blanks as non-breaking ones. */
export const textLine = (page: Page, words: RegExp): Locator => page.locator('.view-line', { hasText: words }).first();

export const untilSelected = (page: Page, status: string | RegExp): Promise<void> =>
  page.locator('#status\\.editor\\.selection', { hasText: status }).waitFor();

/** The page inside the preview's two frames. The first one takes a while: it sets up a service worker. */
export const previewPage = (page: Page): FrameLocator =>
  page.frameLocator('iframe.webview.ready').last().frameLocator('#active-frame');

export const previewPart = (page: Page, line: number): Locator =>
  previewPage(page).locator(`[data-line="${line}"]`).first();

/** Reloads as the command does, which also saves which editors stood where; the browser's own reload may not. */
export async function reloadWindow(page: Page): Promise<void> {
  const loaded = page.waitForEvent('load');
  await runCommand(page, 'Developer: Reload Window');
  await loaded;
}
