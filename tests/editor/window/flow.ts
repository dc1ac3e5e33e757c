import assert from 'node:assert/strict';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { runCommand, takeScreenshot, textLine } from './driver.ts';
import { closeUnsaved, copy, firstSuggestion, keys, startWith, untilShown } from './keyboard.ts';

const layers = [
  'well KH-09',
  'strata',
  '  0    - 3.8    slty cl',
  '       - 12     lst gry',
  '       - 61     lst dk gry',
];

/** The helps that come while one types, all by the keyboard. */
export const flow = (workbench: Workbench): Tests => ({
  async 'Enter goes on at the same base, lines the section up, and twice leaves it'() {
    await startWith(workbench, 'well KH-09\n');
    await keys(
      workbench,
      'strata<Enter>0-3.8 slty cl<Escape><Enter>12 lst gry<Escape><Enter>-61 lst dk gry<Escape><Enter>',
    );
    await untilShown(workbench, [...layers, '       - ']);
    await keys(workbench, '<Enter>');
    await untilShown(workbench, [...layers, '', '']);
  },

  async 'the next section that the log lacks is offered, the likeliest first'() {
    await firstSuggestion(workbench).waitFor();
    await takeScreenshot(workbench.page, 'next-section');
    assert.match((await firstSuggestion(workbench).textContent()) ?? '', /^hole/);
    await keys(workbench, '<Escape>');
    await closeUnsaved(workbench);
  },

  async 'Tab steps through what a line lacks, and elsewhere it sets in'() {
    await startWith(workbench, 'casing +0.45 - 7.2 steel 168.3 x 6.4 welded\n  grout 0 - 7.2 neat cement');
    // Each piece is waited for, as a person looks before typing on.
    for (const [pressed, piece] of [
      ['<Tab>', /cement,.\?.m3$/],
      ['0.29<Tab>', /0\.29.m3,.\?.bags$/],
      ['9<Tab>', /9.bags,.w\/c.\?$/],
      ['<Tab>', /9.bags,\s*$/],
    ] as const) {
      await keys(workbench, pressed);
      await textLine(workbench.page, piece).waitFor();
    }
    await firstSuggestion(workbench).waitFor();
    await keys(workbench, 'trem<Tab>');
    await textLine(workbench.page, /grout.0.-.7\.2.neat.cement,.0\.29.m3,.9.bags,.tremie$/).waitFor();
    await takeScreenshot(workbench.page, 'what-the-line-lacks');
    await keys(workbench, '<Enter><Tab>x');
    await textLine(workbench.page, /^.{4}x$/).waitFor();
    await closeUnsaved(workbench);
  },

  async 'Enter leaves the unit that Tab has put in on its line'() {
    await startWith(workbench, 'water\n  38.5 fresh');
    await keys(workbench, '<Tab>');
    await textLine(workbench.page, /fresh,.\?.L\/min$/).waitFor();
    await keys(workbench, '25<Enter>54');
    await untilShown(workbench, ['water', '  38.5 fresh, 25 L/min', '  54']);
    await closeUnsaved(workbench);
  },

  async 'rows of a sheet that are pasted become lines of the section'() {
    const { page } = workbench;
    await startWith(workbench, 'strata\n  0    - 0.3    topsoil\n       - ');
    await copy(workbench, '0.3\t3.8\tslty cl\tbrn\n3.8\t12\tsand\t\n');
    await keys(workbench, '<Control+v>');
    await untilShown(workbench, [
      'strata',
      '  0    - 0.3    topsoil',
      '  0.3  - 3.8    slty cl, brn',
      '  3.8  - 12     sand',
    ]);
    await takeScreenshot(page, 'pasted');
    await closeUnsaved(workbench);
  },

  async 'rows of a field sheet that are pasted become lines too, in its own words'() {
    await startWith(workbench, 'strata\n       - ');
    await copy(workbench, 'clay 0-3.8\nbrn sand 3.8-12');
    await keys(workbench, '<Control+v>');
    await untilShown(workbench, ['strata', '  0    - 3.8    clay', '  3.8  - 12     sand, brown']);
    await closeUnsaved(workbench);
  },

  async 'what a hand that waits for nothing has outrun is lined up at the Enter behind which it rests'() {
    await startWith(workbench, 'well KH-09\n');
    for (const line of ['strata', '0-3.8 slty cl', '12 lst gry', '-61 lst dk gry']) {
      await workbench.page.keyboard.type(line, { delay: 10 });
      await workbench.page.keyboard.press('Enter');
    }
    await untilShown(workbench, [...layers, '       - ']);
    await keys(workbench, 'x');
    await untilShown(workbench, [...layers, '       - x']);
    await closeUnsaved(workbench);
  },

  async 'two depths without a dash are a hint with a fix, and are formatted to one'() {
    const { page } = workbench;
    await startWith(workbench, 'strata\n');
    await keys(workbench, '0 12 clay');
    await page.locator('.squiggly-hint, .squiggly-info').first().waitFor({ state: 'attached' });
    await runCommand(page, 'Format Document');
    await textLine(page, /0\s+-.12\s+clay/).waitFor();
    await closeUnsaved(workbench);
  },

  async 'completion offers sizes of pipe by the nominal size, with their weight'() {
    const { page } = workbench;
    await startWith(workbench, '');
    await keys(workbench, 'casing +0.45 - 7.2 steel ');
    await firstSuggestion(workbench).waitFor();
    await keys(workbench, '6');
    await page
      .locator('.suggest-widget.visible .monaco-list-row', { hasText: /168\.3 x 7\.1/ })
      .first()
      .waitFor();
    await takeScreenshot(page, 'pipe-sizes');
    await keys(workbench, '<Tab>');
    await textLine(page, /steel.168\.3.x.7\.1/).waitFor();
    await closeUnsaved(workbench);
  },
});
