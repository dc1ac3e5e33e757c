import assert from 'node:assert/strict';
import type { Tests } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { chooseTheme, previewPage, takeScreenshot } from './driver.ts';

export const themes = [
  { name: 'light', theme: 'Light Modern', bodyClass: 'vscode-light' },
  { name: 'dark', theme: 'Dark Modern', bodyClass: 'vscode-dark' },
  { name: 'hc-light', theme: 'Light High Contrast', bodyClass: 'vscode-high-contrast-light' },
  { name: 'hc-dark', theme: 'Dark High Contrast', bodyClass: 'vscode-high-contrast' },
];

interface Shown {
  readonly text: string;
  readonly ratio: number;
}

/**
 * The text of the page with its contrast against the page's background.
 * Ratio and relative luminance as WCAG 2.1 defines them; it runs in the page, so it holds all that it needs.
 */
function contrasts(texts: readonly Element[]): Shown[] {
  const channels = (colour: string): number[] =>
    (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => Number(part) / 255);
  const linear = (part: number): number => (part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
  const luminance = (colour: string): number => {
    const [red = 0, green = 0, blue = 0] = channels(colour).map(linear);
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const paper = luminance(getComputedStyle(document.body).backgroundColor);
  return texts.map((element) => {
    const style = getComputedStyle(element);
    const ink = luminance(element instanceof SVGElement ? style.fill : style.color);
    const ratio = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
    return { text: element.textContent ?? '', ratio };
  });
}

/** Needs a preview to be open. */
export const followingThemes = (workbench: Workbench): Tests =>
  Object.fromEntries(
    themes.map(({ name, theme, bodyClass }) => [
      `the preview follows the ${name} theme and stays readable`,
      async () => {
        await chooseTheme(workbench.page, theme);
        const page = previewPage(workbench.page);
        await page.locator(`body.${bodyClass}`).waitFor({ state: 'attached' });
        await workbench.page.waitForTimeout(500);
        await takeScreenshot(workbench.page, name);
        const shown = await page.locator('svg text, th, td, h2').evaluateAll(contrasts);
        assert.ok(shown.length > 0);
        // WCAG 2.1, success criterion 1.4.3: text needs a contrast of at least 4.5 to 1.
        const faint = shown.filter(({ ratio }) => ratio < 4.5).map(({ text, ratio }) => `${text}: ${ratio.toFixed(2)}`);
        assert.deepEqual(faint, []);
      },
    ]),
  );
