import assert from 'node:assert/strict';
import { hinted, hintKinds, hovers, withHints } from '../../lsp/tellings.ts';
import { settingUp, type Tests, until } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { chooseTheme, runCommand, takeScreenshot } from './driver.ts';
import { closeUnsaved, setInWorkspace, startWith, untilShown, writeMarked } from './keyboard.ts';

async function told(workbench: Workbench, marked: string, said: RegExp): Promise<void> {
  const { page } = workbench;
  await writeMarked(workbench, marked);
  const box = page.locator('.monaco-hover:not(.hidden) .hover-contents', { hasText: said }).first();
  // A person who asks before the checker has read the text asks again.
  for (let ask = 0; ask < 4 && !(await box.isVisible()); ask += 1) {
    await page.keyboard.press('Control+k');
    await page.keyboard.press('Control+i');
    await box.waitFor({ timeout: 3000 }).catch(() => page.keyboard.press('Escape'));
  }
  await box.waitFor();
  await page.keyboard.press('Escape');
}

const settingsOfHints = (off: string | null): object => ({
  'editor.codeLens': false,
  ...(off === null ? {} : { [`drillhand.inlayHints.${off}`]: false }),
});

/** The words of a line, each with its colour. */
const colours = (workbench: Workbench, words: RegExp): Promise<Record<string, string>> =>
  workbench.page
    .locator('.view-line', { hasText: words })
    .first()
    .locator('span > span')
    .evaluateAll((spans) =>
      Object.fromEntries(
        spans.map((span) => [(span.textContent ?? '').replaceAll('\u00a0', ' ').trim(), getComputedStyle(span).color]),
      ),
    );

/** What the editor tells of the text: boxes, hints, totals, colours. */
export const telling = (workbench: Workbench): Tests =>
  settingUp(() => startWith(workbench, '\n'), {
    ...Object.fromEntries(
      hovers.map(([what, marked, said]) => [
        `a box tells of ${what}`,
        async () => {
          await told(workbench, marked.replace(/\[\[|\]\]/g, ''), said);
        },
      ]),
    ),

    async 'what a line takes is shown on being asked, the next thing marked'() {
      const { page } = workbench;
      const help = page.locator('.parameter-hints-widget.visible .signature .active');
      for (const [marked, next] of [
        ['hole\n  0 - 7 |', 'diameter'],
        ['casing 0 - 7 steel\n  grout 0 - 7 neat cement, |', 'volume'],
      ] as const) {
        await writeMarked(workbench, marked);
        await page.keyboard.press('Control+Shift+Space');
        await help.filter({ hasText: next }).waitFor();
        await page.keyboard.press('Escape');
      }
    },

    async 'words of a kind have one colour, in a theme that names no such kinds too'() {
      await writeMarked(workbench, '|strata\n  0 - 3 sand, brown, wet\n  - 9 limstone');
      for (const theme of ['Light High Contrast', 'Dark Modern']) {
        await chooseTheme(workbench.page, theme);
        await until(`one colour in ${theme}`, async () => {
          const { sand, brown, wet } = await colours(workbench, /brown/);
          return sand !== undefined && sand === brown && sand === wet;
        });
        const { sand } = await colours(workbench, /brown/);
        const { limstone } = await colours(workbench, /limstone/);
        assert.notEqual(sand, limstone, theme);
      }
    },

    async 'hints stand in the text, and each kind can be switched off'() {
      await writeMarked(workbench, `|${hinted.join('\n')}`);
      setInWorkspace(workbench, settingsOfHints(null));
      await untilShown(workbench, withHints(hintKinds));
      await takeScreenshot(workbench.page, 'hints');
      for (const off of hintKinds) {
        setInWorkspace(workbench, settingsOfHints(off));
        await untilShown(workbench, withHints(hintKinds.filter((kind) => kind !== off)));
      }
    },

    async 'totals stand above the sections, are reached by the keyboard, and can be switched off'() {
      const { page } = workbench;
      const total = page.locator('.codelens-decoration', { hasText: 'down to 11.58 m' }).first();
      setInWorkspace(workbench, { 'editor.inlayHints.enabled': 'off' });
      await total.waitFor();
      await writeMarked(workbench, `|${hinted.join('\n')}`);
      await runCommand(page, 'Show CodeLens Commands for Current Line');
      await page.locator('.quick-input-list .monaco-list-row', { hasText: 'down to 11.58 m' }).first().waitFor();
      await page.keyboard.press('Escape');
      setInWorkspace(workbench, { 'editor.inlayHints.enabled': 'off', 'drillhand.codeLens.totals': false });
      await total.waitFor({ state: 'detached' });
      await closeUnsaved(workbench);
    },
  });
