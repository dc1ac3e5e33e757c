import assert from 'node:assert/strict';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { openFile, runCommand, takeScreenshot, textLine } from './driver.ts';

/** Time in which the checker tidies behind Enter, as a person looks up from the keys. */
const breath = 400;

/** Keys at a person's speed: words are typed, `<Name>` is pressed. */
async function keys(workbench: Workbench, text: string): Promise<void> {
  const { keyboard } = workbench.page;
  for (const part of text.split(/(<[A-Za-z+]+>)/)) {
    if (/^<.+>$/.test(part)) {
      await keyboard.press(part.slice(1, -1));
      await workbench.page.waitForTimeout(breath);
    } else await keyboard.type(part, { delay: 25 });
  }
}

async function startWith(workbench: Workbench, file: string, text: string): Promise<void> {
  const { page } = workbench;
  writeFileSync(path.join(workbench.workspace, file), text);
  await openFile(page, file);
  await page.locator('.monaco-editor .view-lines').first().click();
  await page.keyboard.press('Control+End');
  await page.waitForTimeout(breath);
}

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

async function untilShown(workbench: Workbench, wanted: readonly string[]): Promise<void> {
  let shown: string[] = [];
  for (let tries = 0; tries < 40; tries += 1) {
    shown = await shownLines(workbench);
    if (JSON.stringify(shown) === JSON.stringify(wanted)) return;
    await workbench.page.waitForTimeout(100);
  }
  assert.deepEqual(shown, wanted);
}

const closeUnsaved = async (workbench: Workbench): Promise<void> => {
  await runCommand(workbench.page, 'File: Revert File');
  await runCommand(workbench.page, 'View: Close All Editors');
};

const firstSuggestion = (workbench: Workbench) =>
  workbench.page.locator('.suggest-widget.visible .monaco-list-row').first();

/** The helps that come while one types, all by the keyboard. */
export const flow = (workbench: Workbench): Tests => ({
  async 'Enter goes on at the same base, lines the section up, and twice leaves it'() {
    await startWith(workbench, 'base.well', 'well KH-09\n');
    await keys(
      workbench,
      'strata<Enter>0-3.8 slty cl<Escape><Enter>12 lst gry<Escape><Enter>-61 lst dk gry<Escape><Enter>',
    );
    await untilShown(workbench, [
      'well KH-09',
      'strata',
      '  0    - 3.8    slty cl',
      '       - 12     lst gry',
      '       - 61     lst dk gry',
      '       - ',
    ]);
    await keys(workbench, '<Enter>');
    await untilShown(workbench, [
      'well KH-09',
      'strata',
      '  0    - 3.8    slty cl',
      '       - 12     lst gry',
      '       - 61     lst dk gry',
      '',
      '',
    ]);
  },

  async 'the next section that the log lacks is offered, the likeliest first'() {
    await firstSuggestion(workbench).waitFor();
    await takeScreenshot(workbench.page, 'next-section');
    assert.match((await firstSuggestion(workbench).textContent()) ?? '', /^hole/);
    await keys(workbench, '<Escape>');
    await closeUnsaved(workbench);
  },

  async 'Tab steps through what a line lacks, and elsewhere it sets in'() {
    await startWith(workbench, 'lacking.well', 'casing +0.45 - 7.2 steel 168.3 x 6.4 welded\n  grout 0 - 7.2 neat cement');
    await keys(workbench, '<Tab>0.29<Tab>9<Tab><Tab>');
    await firstSuggestion(workbench).waitFor();
    await keys(workbench, 'trem<Tab>');
    await textLine(workbench.page, /grout.0.-.7\.2.neat.cement,.0\.29.m3,.9.bags,.tremie$/).waitFor();
    await takeScreenshot(workbench.page, 'what-the-line-lacks');
    await keys(workbench, '<Enter><Tab>x');
    await textLine(workbench.page, /^.{4}x$/).waitFor();
    await closeUnsaved(workbench);
  },
});
