import { type Drawing, defaultDrawOptions, drawingFile, drawWell } from '../../drawing/index.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import type { ExportContext, Exported, ExportFormat } from '../format.ts';
import { recordHtml } from '../record-html.ts';
import type { Asset } from './asset.ts';

/** The log on one sheet, as long as it needs. */
const sheetOf = (record: WellRecord): Drawing => drawWell(record, defaultDrawOptions);

const one = (
  name: string,
  extension: string,
  content: string | Uint8Array,
  left: readonly string[] = [],
): Exported => ({
  files: [{ name: `${name}.${extension}`, content }],
  left,
});

/* What makes PDF and PNG is large, and is read in when first asked for. */
async function lacking(sheets: readonly Drawing[], asset: Asset): Promise<string[]> {
  const [{ charactersKnown }, { lackingText }] = await Promise.all([import('./fonts.ts'), import('./lacking.ts')]);
  return lackingText(sheets, await charactersKnown(asset));
}

async function pdf(record: WellRecord, { name, today, asset }: ExportContext): Promise<Exported> {
  const { pdfOf } = await import('./pdf.ts');
  const sheets = [sheetOf(record)];
  return one(name, 'pdf', await pdfOf(sheets, today, asset), await lacking(sheets, asset));
}

async function png(record: WellRecord, { name, asset }: ExportContext): Promise<Exported> {
  const { pngOf } = await import('./png.ts');
  const sheet = sheetOf(record);
  return one(name, 'png', await pngOf(sheet, asset), await lacking([sheet], asset));
}

/** The drawing as picture files, and the record as one page. */
export const fileFormats: readonly ExportFormat[] = [
  {
    id: 'svg',
    title: 'Drawing (SVG)',
    extension: 'svg',
    many: false,
    make: (record, { name }) => one(name, 'svg', drawingFile(sheetOf(record))),
  },
  { id: 'png', title: 'Drawing as a picture (PNG)', extension: 'png', many: false, make: png },
  { id: 'pdf', title: 'Drawing for paper (PDF)', extension: 'pdf', many: false, make: pdf },
  {
    id: 'html',
    title: 'Record for print (HTML)',
    extension: 'html',
    many: false,
    make: (record, { name, findings, today }) => one(name, 'html', recordHtml(record, findings, today)),
  },
];
