import assert from 'node:assert/strict';
import { type Tests, until } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { previewPage, textLine } from './driver.ts';
import { exportAs } from './export-as.ts';
import { previewFrame } from './preview-frame.ts';

/** Lines of sound.well, counted from 0. */
const wellLine = 1;
const disinfectionLine = 27;

/* Longer than an editor takes to come to rest after it was scrolled. */
const aWhile = 800;

const tie = (workbench: Workbench) => previewPage(workbench.page).locator('#tie');

const firstLine = (workbench: Workbench) => textLine(workbench.page, /KH-04/);

interface Place {
  readonly scrollTop: number;
  readonly drawingLeft: number;
  readonly zoom: string;
}

async function placeOf(workbench: Workbench): Promise<Place> {
  const frame = await previewFrame(workbench.page);
  return frame.evaluate(() => ({
    scrollTop: Math.round(window.scrollY),
    drawingLeft: Math.round(document.querySelector('figure')?.scrollLeft ?? -1),
    zoom: document.getElementById('zoom-fit')?.textContent ?? '',
  }));
}

const scrollTop = async (workbench: Workbench): Promise<number> => (await placeOf(workbench)).scrollTop;

/** Turns the wheel over something, notch by notch, until it is seen to have done what it should. */
async function turnWheel({ page }: Workbench, selector: string, notch: number, done: () => Promise<boolean>) {
  const box = await page.locator(selector).last().boundingBox();
  assert.ok(box, selector);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await until(`what the wheel over ${selector} brings`, async () => {
    await page.mouse.wheel(0, notch);
    await page.waitForTimeout(50);
    return done();
  });
}

/** Where the preview stands beside its text, and after it was out of sight. Needs the preview of sound.well to be open. */
export const keepingItsPlace = (workbench: Workbench): Tests => ({
  async 'tied, the text goes along when the preview is scrolled, and leaves it where it was scrolled to'() {
    await tie(workbench).click();
    assert.equal(await tie(workbench).getAttribute('aria-pressed'), 'true');
    await turnWheel(workbench, 'iframe.webview.ready', 200, async () => (await scrollTop(workbench)) > 1000);
    await firstLine(workbench).waitFor({ state: 'detached' });
    const scrolledTo = await scrollTop(workbench);
    await workbench.page.waitForTimeout(aWhile);
    assert.equal(await scrollTop(workbench), scrolledTo);
  },

  async 'tied, the preview goes along when the text is scrolled, and leaves it where it was scrolled to'() {
    await turnWheel(workbench, '.editor-instance .overflow-guard', -60, () => firstLine(workbench).isVisible());
    const ofFirstLine = previewPage(workbench.page).locator(`[data-line="${wellLine}"]`);
    const tops = () => ofFirstLine.evaluateAll((parts) => parts.map((part) => part.getBoundingClientRect().top));
    await until('what the first line says, at the top', async () => (await tops()).some((y) => y >= 0 && y < 100));
    await workbench.page.waitForTimeout(aWhile);
    assert.ok(await firstLine(workbench).isVisible());
    await tie(workbench).click();
    assert.equal(await tie(workbench).getAttribute('aria-pressed'), 'false');
  },

  async 'a preview that was hidden behind another tab is what and where it was, and makes pictures'() {
    const { page } = workbench;
    /* The cursor stands far from what is looked at: it must not draw the page there. */
    await textLine(page, /disinfection/).click();
    await previewPage(page).locator(`[data-line="${disinfectionLine}"].at-cursor`).first().waitFor();
    const larger = previewPage(page).getByRole('button', { name: 'Make the drawing larger' });
    for (let n = 0; n < 3; n++) await larger.click();
    await (await previewFrame(page)).evaluate(() => {
      window.scrollTo(0, 300);
      document.querySelector('figure')?.scrollTo(90, 0);
    });
    await until('the scroll', async () => (await placeOf(workbench)).drawingLeft === 90);
    const before = await placeOf(workbench);
    const shown = await previewPage(page).locator('#body').textContent();
    assert.deepEqual(before, { scrollTop: 300, drawingLeft: 90, zoom: '195 %' });

    const tab = page.locator('.tab', { hasText: 'Preview: ' });
    await tab.click();
    await page.locator('.explorer-folders-view .monaco-list-row', { hasText: 'no-shoe.well' }).dblclick();
    const over = page.locator('.tab', { hasText: 'no-shoe.well' });
    await previewPage(page).locator('svg').first().waitFor({ state: 'detached' });
    await tab.click();
    await previewPage(page).locator('svg').first().waitFor();
    await until('the place before', async () => (await placeOf(workbench)).drawingLeft === 90);
    assert.deepEqual(await placeOf(workbench), before);
    await page.waitForTimeout(aWhile);
    assert.deepEqual(await placeOf(workbench), before);
    assert.equal(await previewPage(page).locator('#body').textContent(), shown);

    await over.click();
    await previewPage(page).locator('svg').first().waitFor({ state: 'detached' });
    await textLine(page, /disinfection/).click();
    await exportAs(workbench, { title: 'Drawing as a picture (PNG)', ending: 'png', begins: '\u0089PNG' });
    await over.click({ button: 'middle' });
    await previewPage(page).locator('#zoom-fit').click();
  },
});
