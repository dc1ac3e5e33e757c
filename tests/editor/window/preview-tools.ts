import assert from 'node:assert/strict';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { previewPage, textLine } from './driver.ts';
import { exportAs } from './export-as.ts';
import { previewFrame } from './preview-frame.ts';

/** Lines of sound.well, counted from 0. */
const limestoneLine = 14;

const drawingWidth = (workbench: Workbench): Promise<number> =>
  previewPage(workbench.page)
    .locator('svg.dh-drawing')
    .first()
    .evaluate((svg) => svg.getBoundingClientRect().width);

const button = (workbench: Workbench, name: string) => previewPage(workbench.page).getByRole('button', { name });

const headings = (workbench: Workbench) => previewPage(workbench.page).locator('svg.dh-drawing .dh-frame text');

/** What can be done with the drawing beside the text. Needs the preview of sound.well to be open. */
export const usingThePreview = (workbench: Workbench): Tests => ({
  async 'the drawing is made larger and smaller by buttons and by keys, and fits again'() {
    const before = await drawingWidth(workbench);
    await button(workbench, 'Make the drawing larger').click();
    assert.ok(Math.abs((await drawingWidth(workbench)) / before - 1.25) < 0.01);
    await previewPage(workbench.page).locator('figure').first().press('+');
    assert.ok(Math.abs((await drawingWidth(workbench)) / before - 1.5625) < 0.01);
    await previewPage(workbench.page).locator('#zoom-fit').click();
    assert.ok(Math.abs((await drawingWidth(workbench)) - before) < 1);
  },

  async 'a drawing larger than its place is drawn along with the mouse, and that is no click'() {
    const { page } = workbench;
    for (let n = 0; n < 3; n++) await button(workbench, 'Make the drawing larger').click();
    const figure = previewPage(page).locator('figure').first();
    const cursor = page.locator('.active-line-number');
    const before = await cursor.textContent();
    const scrolled = await figure.evaluate(({ scrollLeft }) => scrollLeft);
    const box = await figure.boundingBox();
    assert.ok(box);
    const [x, y] = [box.x + box.width / 2, Math.max(box.y, 0) + 300];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 80, y - 10, { steps: 5 });
    await page.mouse.up();
    assert.equal(await figure.evaluate(({ scrollLeft }) => scrollLeft), scrolled + 80);
    assert.equal(await cursor.textContent(), before);
    await previewPage(workbench.page).locator('#zoom-fit').click();
  },

  async 'the arrow keys go through the parts of the drawing, and each says what it is'() {
    const frame = await previewFrame(workbench.page);
    const part = frame.locator('svg.dh-drawing [data-line]').first();
    await part.focus();
    await workbench.page.keyboard.press('End');
    await workbench.page.keyboard.press('Home');
    await workbench.page.keyboard.press('ArrowDown');
    const focused = await frame.evaluate(() => {
      const parts = [...document.querySelectorAll('svg.dh-drawing')][0]?.querySelectorAll('[tabindex]') ?? [];
      const stops = [...parts].filter((each) => each.getAttribute('tabindex') === '0');
      const name = document.activeElement?.getAttribute('aria-label') ?? '';
      return { at: [...parts].indexOf(document.activeElement as Element), stops: stops.length, name };
    });
    assert.equal(focused.at, 1);
    assert.equal(focused.stops, 1);
    const shown = await frame.locator('#tooltip').textContent();
    assert.ok(focused.name !== '' && shown?.startsWith(focused.name), `the tooltip says ${shown}`);
    await workbench.page.keyboard.press('Escape');
    await frame.locator('#tooltip').waitFor({ state: 'hidden' });
  },

  async 'hovering over a layer tells what it is and where it is written'() {
    const layer = previewPage(workbench.page).locator(`svg .dh-layer[data-line="${limestoneLine}"]`).first();
    await layer.scrollIntoViewIfNeeded();
    await layer.hover();
    const tooltip = previewPage(workbench.page).locator('#tooltip');
    await tooltip.waitFor();
    assert.match((await tooltip.textContent()) ?? '', /limestone, grey, fractured[\s\S]*Line 15/i);
  },

  async 'columns are switched off and on'() {
    await previewPage(workbench.page).locator('#columns summary').click();
    const notes = previewPage(workbench.page).getByLabel('Construction and water');
    await headings(workbench).getByText('Construction and water').waitFor();
    await notes.uncheck();
    await headings(workbench).getByText('Construction and water').waitFor({ state: 'detached' });
    await notes.check();
    await headings(workbench).getByText('Construction and water').waitFor();
    await previewPage(workbench.page).locator('#columns summary').click();
  },

  async 'the record is exported by a command, the picture too'() {
    await textLine(workbench.page, /disinfection/).click();
    await exportAs(workbench, { title: 'Drawing for paper (PDF)', ending: 'pdf', begins: '%PDF-1.7' });
    await exportAs(workbench, { title: 'Drawing as a picture (PNG)', ending: 'png', begins: '\u0089PNG' });
  },
});
