/* Takes the pictures of the README anew: node .config/build.mjs && node .config/run.mjs tests/editor/pictures.ts */
import { cpSync, statSync } from 'node:fs';
import path from 'node:path';
import { ensureEditor } from './editor.ts';
import { stagedExtension } from './suite-in-host.ts';
import { chooseTheme, openFile, previewPage, textLine } from './window/driver.ts';
import { themes } from './window/themes.ts';
import { startWorkbench, type Workbench } from './workbench.ts';

const media = path.resolve('client', 'media');
const largest = 250_000;

async function take(workbench: Workbench, name: string): Promise<void> {
  const file = path.join(media, `${name}.png`);
  await workbench.page.mouse.move(600, 500);
  await workbench.page.waitForTimeout(1500);
  await workbench.page.screenshot({ path: file });
  const { size } = statSync(file);
  console.log(`${file}: ${Math.round(size / 1000)} kB`);
  if (size > largest) throw new Error(`${file} is larger than ${largest} bytes`);
}

async function openSideBySide({ page }: Workbench): Promise<void> {
  await openFile(page, 'kestrel-hollow.well');
  await page.keyboard.press('Control+B');
  await textLine(page, /Kestrel/).click();
  await page.keyboard.press('Control+K');
  await page.keyboard.press('v');
  await previewPage(page).locator('svg').first().waitFor({ timeout: 60_000 });
  await textLine(page, /topsoil/).click();
}

const workbench = await startWorkbench({
  editor: await ensureEditor(),
  workspace: path.resolve('tests', 'editor', 'workspace'),
  extensionsFolder: null,
});
try {
  await workbench.page.setViewportSize({ width: 1280, height: 800 });
  cpSync('samples/kestrel-hollow.well', path.join(workbench.workspace, 'kestrel-hollow.well'));
  await workbench.open([['extensionDevelopmentPath', workbench.uri(stagedExtension)]]);
  await workbench.page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: 60_000 });
  await openSideBySide(workbench);
  for (const { name, theme } of themes) {
    await chooseTheme(workbench.page, theme);
    await take(workbench, name === 'light' ? 'preview' : `preview-${name}`);
  }
} finally {
  await workbench.stop();
}
