import assert from 'node:assert/strict';
import { existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';
import { until } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { runCommand } from './driver.ts';

interface Wanted {
  readonly title: string;
  readonly ending: string;
  /** The first characters of such a file. */
  readonly begins: string;
}

/** Exports sound.well, whose text has the focus, and sees that the file is of its kind. */
export async function exportAs({ page, workspace }: Workbench, { title, ending, begins }: Wanted): Promise<void> {
  const file = path.join(workspace, `sound.${ending}`);
  rmSync(file, { force: true });
  await runCommand(page, 'Drillhand: Export');
  await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().click();
  await page.locator('.quick-input-widget input.input').waitFor();
  await page.locator('.quick-input-widget a.monaco-button', { hasText: 'OK' }).click();
  await until(`the file sound.${ending}`, () => existsSync(file) && statSync(file).size > 0);
  assert.equal(readFileSync(file).toString('latin1').slice(0, begins.length), begins);
}
