import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Workbench } from '../workbench.ts';
import { openFile, runCommand } from './driver.ts';

/** Time in which the checker tidies behind Enter, as a person looks up from the keys. */
const breath = 400;

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

export const closeUnsaved = async (workbench: Workbench): Promise<void> => {
  await runCommand(workbench.page, 'File: Revert File');
  await runCommand(workbench.page, 'View: Close All Editors');
  rmSync(settingsFile(workbench), { force: true });
  write(workbench, '');
};
