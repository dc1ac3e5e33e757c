import { type Drawing, drawingFile, type FileTheme } from '../../drawing/index.ts';
import type { Asset } from './asset.ts';
import { fontFiles } from './fonts.ts';
import { leaned } from './lean.ts';
import { withTitle } from './png-title.ts';

const pixelsPerMm = 200 / 25.4;
/* A browser shows no picture that is larger by far, and one of this many takes a quarter of a gigabyte to make. */
const mostPixels = 60e6;

let started: Promise<typeof import('@resvg/resvg-wasm')> | null = null;

/* The library may be started but once in a program. */
async function start(asset: Asset): Promise<typeof import('@resvg/resvg-wasm')> {
  const library = await import('@resvg/resvg-wasm');
  await library.initWasm((await asset('resvg.wasm')) as Uint8Array<ArrayBuffer>);
  return library;
}

/** The sheet as a picture of 200 dots per inch, of less where it is very long. The same sheet gives the same bytes. */
export async function pngOf(sheet: Drawing, theme: FileTheme, asset: Asset): Promise<Uint8Array> {
  started ??= start(asset);
  const { Resvg } = await started;
  const fontBuffers = await Promise.all(Object.values(fontFiles).map(asset));
  const zoom = Math.min(pixelsPerMm, Math.sqrt(mostPixels / (sheet.widthMm * sheet.heightMm)));
  const drawn = new Resvg(leaned(drawingFile(sheet, theme)), {
    fitTo: { mode: 'width', value: Math.round(sheet.widthMm * zoom) },
    font: { fontBuffers, defaultFontFamily: 'Arimo', sansSerifFamily: 'Arimo' },
  });
  const image = drawn.render();
  const png = image.asPng();
  image.free();
  drawn.free();
  return withTitle(png, sheet.title);
}
