import type { Frame, Page } from 'playwright-core';
import { previewPage } from './driver.ts';

/** The innermost frame of the preview, where its page is. */
export async function previewFrame(page: Page): Promise<Frame> {
  const handle = await previewPage(page).owner().elementHandle();
  const frame = await handle?.contentFrame();
  if (!frame) throw new Error('the preview has no page');
  return frame;
}
