import assert from 'node:assert/strict';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Locator } from 'playwright-core';
import type { Workbench } from '../workbench.ts';
import { openFile, runCommand, untilSelected } from './driver.ts';

/** Time in which the checker tidies behind Enter, as a person looks up from the keys. */
export const breath = 400;

/** Keys at a person's speed: words are typed, `<Name>` is pressed. */
export async function keys(workbench: Workbench, text: string): Promise<void> {
  const { keyboard } = workbench.page;
  for (const part of text.split(/(<[A-Za-z+]+>)/)) {
    if (/^<.+>$/.test(part)) {
      await keyboard.press(part.slice(1, -1));
      await workbench.page.waitForTimeout(breath);
    } else await keyboard.type(part, { delay: 25 });
  }
}

const settingsFile = (workbench: Workbench): string => path.join(workbench.workspace, '.vscode', 'settings.json');

/** Settings of the workspace, until its editors are closed. */
export function setInWorkspace(workbench: Workbench, settings: object): void {
  mkdirSync(path.dirname(settingsFile(workbench)), { recursive: true });
  writeFileSync(settingsFile(workbench), JSON.stringify(settings));
}

/** What the editor shows within the text that is not in it would be read as typed. */
const nothingBeside = { 'editor.inlayHints.enabled': 'off', 'editor.codeLens': false };

/** A log that the window knows from its start: a new file is found only after a while. */
const file = 'empty.well';

const write = (workbench: Workbench, text: string): void => writeFileSync(path.join(workbench.workspace, file), text);

/** Opens a log with that text, the cursor at its end. */
export async function startWith(workbench: Workbench, text: string): Promise<void> {
  const { page } = workbench;
  setInWorkspace(workbench, nothingBeside);
  write(workbench, text);
  await openFile(page, file);
  await page.locator('.monaco-editor .view-lines').first().click();
  await page.keyboard.press('Control+End');
  await page.waitForTimeout(breath);
}

/** Lets the clipboard of the window hold a text. */
export async function copy({ page }: Workbench, text: string): Promise<void> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
}

/** Where a text ends, as the editor counts lines and columns. */
const endOf = (text: string): { readonly line: number; readonly column: number } => {
  const lines = text.split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
};

const untilAt = ({ page }: Workbench, { line, column }: ReturnType<typeof endOf>): Promise<void> =>
  untilSelected(page, new RegExp(`^Ln ${line}, Col ${column}$`));

/** Puts the cursor at a place of the text by the keyboard. */
async function goTo(workbench: Workbench, place: ReturnType<typeof endOf>): Promise<void> {
  const { keyboard } = workbench.page;
  await keyboard.press('Control+g');
  await workbench.page.locator('.quick-input-widget input.input').waitFor();
  await keyboard.type(`${place.line}:${place.column}`);
  await keyboard.press('Enter');
  await untilAt(workbench, place);
}

/** Writes a text in the place of the one that the open log has, the cursor where it has its `|`. */
export async function writeMarked(workbench: Workbench, marked: string): Promise<void> {
  const { keyboard } = workbench.page;
  const text = marked.replace('|', '');
  await copy(workbench, text);
  await keyboard.press('Escape');
  await keyboard.press('Control+a');
  await keyboard.press('Control+v');
  await untilAt(workbench, endOf(text));
  await goTo(workbench, endOf(marked.slice(0, marked.indexOf('|'))));
}

/** The entries of the list that is open. */
export const suggestions = ({ page }: Workbench): Locator => page.locator('.suggest-widget.visible .monaco-list-row');

export const firstSuggestion = (workbench: Workbench): Locator => suggestions(workbench).first();

/** The lines that the editor shows, trailing blanks and all. */
const shownLines = (workbench: Workbench): Promise<string[]> =>
  workbench.page.locator('.editor-instance .view-line').evaluateAll((lines) =>
    lines
      .map((line) => ({
        top: line.getBoundingClientRect().top,
        text: (line.textContent ?? '').replace(/\u00a0/g, ' '),
      }))
      .sort((a, b) => a.top - b.top)
      .map(({ text }) => text),
  );

/** Waits until the editor shows those lines and no other. */
export async function untilShown(workbench: Workbench, wanted: readonly string[]): Promise<void> {
  let shown: string[] = [];
  for (let tries = 0; tries < 40; tries += 1) {
    shown = await shownLines(workbench);
    if (JSON.stringify(shown) === JSON.stringify(wanted)) return;
    await workbench.page.waitForTimeout(100);
  }
  assert.deepEqual(shown, wanted);
}

export const closeUnsaved = async (workbench: Workbench): Promise<void> => {
  await runCommand(workbench.page, 'File: Revert File');
  await runCommand(workbench.page, 'View: Close All Editors');
  rmSync(settingsFile(workbench), { force: true });
  write(workbench, '');
};
