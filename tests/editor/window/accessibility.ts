import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Frame, Page } from 'playwright-core';
import { analyseText } from '../../../server/cli/engine.ts';
import { recordHtml } from '../../../server/export/record-html.ts';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { chooseTheme } from './driver.ts';
import { previewFrame } from './preview-frame.ts';
import { themes } from './themes.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe-core finds wrong, by rule, with the elements. It is put in by the debugger, past the page's own policy. */
async function violations(page: Page | Frame): Promise<string[]> {
  await page.evaluate(`window.axe ?? (() => { ${axe} })()`);
  const found = (await page.evaluate('window.axe.run(document, { iframes: false })')) as AxeResults;
  assert.ok(found.passes.length > 10, 'axe looked at the page');
  return found.violations.map(
    ({ id, help, nodes }) =>
      `${id}: ${help}\n${nodes
        .map(({ target, failureSummary }) => `  ${target}: ${failureSummary}`)
        .slice(0, 3)
        .join('\n')}`,
  );
}

async function recordPage(workbench: Workbench, width: number): Promise<Page> {
  const text = readFileSync('samples/field/kestrel-hollow.well', 'utf8');
  const { record, findings } = analyseText(text, { packs: [], today: '2026-12-31' });
  const page = await workbench.page.context().newPage();
  await page.setViewportSize({ width, height: 900 });
  await page.setContent(recordHtml(record, findings, { today: '2026-12-31', lines: text.split('\n') }));
  return page;
}

/** Needs a preview to be open. */
export const accessible = (workbench: Workbench): Tests => ({
  ...Object.fromEntries(
    themes.map(({ name, theme, bodyClass }) => [
      `axe finds nothing wrong with the preview in the ${name} theme`,
      async () => {
        await chooseTheme(workbench.page, theme);
        const frame = await previewFrame(workbench.page);
        await frame.locator(`body.${bodyClass}`).waitFor({ state: 'attached' });
        await workbench.page.waitForTimeout(400);
        assert.deepEqual(await violations(frame), []);
      },
    ]),
  ),

  ...Object.fromEntries(
    [320, 1000].map((width) => [
      `axe finds nothing wrong with the record page at ${width} px, and it needs no scrolling sideways`,
      async () => {
        const page = await recordPage(workbench, width);
        try {
          assert.deepEqual(await violations(page), []);
          assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), width);
        } finally {
          await page.close();
        }
      },
    ]),
  ),
});
