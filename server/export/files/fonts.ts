import fontkit from '@pdf-lib/fontkit';
import type { PDFDocument, PDFFont } from 'pdf-lib';
import type { Asset } from './asset.ts';

/** The faces that files are set in, as the build ships them. Their widths are those that drawings are laid out by. */
export const fontFiles = { regular: 'arimo-regular.ttf', bold: 'arimo-bold.ttf' } as const;

export interface Fonts {
  readonly regular: PDFFont;
  readonly bold: PDFFont;
}

/** Embeds as much of each face as the document uses. */
export async function embedFonts(document: PDFDocument, asset: Asset): Promise<Fonts> {
  document.registerFontkit(fontkit);
  const embed = async (name: string) =>
    document.embedFont(await asset(name), { subset: true, features: { liga: false, kern: false } });
  return { regular: await embed(fontFiles.regular), bold: await embed(fontFiles.bold) };
}

/** The code points that the faces have; both have the same. */
export const charactersKnown = async (asset: Asset): Promise<ReadonlySet<number>> =>
  new Set(fontkit.create(await asset(fontFiles.regular)).characterSet);
