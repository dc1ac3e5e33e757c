import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { FrameLocator, Locator, Page } from 'playwright-core';

/** What a person does in the window, by keyboard and mouse, and what they see there. */

const screenshots = path.resolve('.cache', 'screenshots');

export async function takeScreenshot(page: Page, name: string): Promise<void> {
  mkdirSync(screenshots, { recursive: true });
  await page.screenshot({ path: path.join(screenshots, `${name}.png`) });
}

/** The entry of the list that the keyboard stands on. The list is drawn anew while it fills, so it is not clicked. */
const focused = (page: Page, words: string): Locator =>
  page.locator('.quick-input-list .monaco-list-row.focused', { hasText: words });

/** Types into the list that has just opened, and takes the entry that says the same. */
async function typeAndPick(page: Page, words: string): Promise<void> {
  await page.locator('.quick-input-widget input.input').waitFor();
  await page.keyboard.type(words);
  await focused(page, words).waitFor();
  await page.keyboard.press('Enter');
}

export async function runCommand(page: Page, title: string): Promise<void> {
  await page.keyboard.press('F1');
  await typeAndPick(page, title);
}

export async function openFile(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+P');
  await typeAndPick(page, name);
  await page.locator('.tab.active', { hasText: name }).waitFor();
}

export async function chooseTheme(page: Page, theme: string): Promise<void> {
  await page.keyboard.press('Control+K');
  await page.keyboard.press('Control+T');
  await typeAndPick(page, theme);
}

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
