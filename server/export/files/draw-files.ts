import {
  type Drawing,
  type DrawingOptions,
  drawingFile,
  drawSheets,
  type FileTheme,
  plotSheets,
} from '../../drawing/index.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import type { ExportContext, Exported, ExportedFile } from '../format.ts';
import { recordHtml } from '../record-html.ts';
import type { Asset } from './asset.ts';
import { smallTypeText } from './small-type.ts';

/** What a drawing is asked to look like, beside what its layout is. */
export interface FileWishes {
  readonly drawing: Partial<DrawingOptions>;
  /** `print` for paper, `dark` for a dark page; PDF and HTML are for paper always. */
  readonly theme: FileTheme;
}

export const noFileWishes: FileWishes = { drawing: {}, theme: 'print' };

type Make = (record: WellRecord, context: ExportContext, wishes: FileWishes) => Promise<Exported>;

/** Several sheets are numbered; one has the plain name. */
const named = (name: string, extension: string, contents: readonly (string | Uint8Array)[]): ExportedFile[] =>
  contents.map((content, n) => ({
    name: `${name}${contents.length === 1 ? '' : `-${n + 1}`}.${extension}`,
    content,
  }));

/* What makes PDF and PNG is large, and is read in when first asked for. */
async function lacking(sheets: readonly Drawing[], asset: Asset): Promise<string[]> {
  const [{ charactersKnown }, { lackingText }] = await Promise.all([import('./fonts.ts'), import('./lacking.ts')]);
  return lackingText(sheets, await charactersKnown(asset));
}

const svg: Make = async (record, { name }, { drawing, theme }) => {
  const sheets = drawSheets(record, drawing);
  const texts = sheets.map((sheet) => drawingFile(sheet, theme));
  return { files: named(name, 'svg', texts), left: smallTypeText(sheets) };
};

const png: Make = async (record, { name, asset }, { drawing, theme }) => {
  const { pngOf } = await import('./png.ts');
  const sheets = drawSheets(record, drawing);
  const pictures = await Promise.all(sheets.map((sheet) => pngOf(sheet, theme, asset)));
  return { files: named(name, 'png', pictures), left: [...smallTypeText(sheets), ...(await lacking(sheets, asset))] };
};

const pdf: Make = async (record, { name, today, asset }, { drawing }) => {
  const { pdfOf } = await import('./pdf.ts');
  const logSheets = drawSheets(record, { layout: 'pages', ...drawing });
  const sheets = [...logSheets, ...plotSheets(record, drawing)];
  return {
    files: named(name, 'pdf', [await pdfOf(sheets, today, asset)]),
    left: [...smallTypeText(logSheets), ...(await lacking(sheets, asset))],
  };
};

const html: Make = async (record, { name, findings, today, source }, { drawing }) => ({
  files: named(name, 'html', [recordHtml(record, findings, { today, lines: source, drawing })]),
  left: [],
});

/** How the drawing of a record is written, by file extension. */
export const drawFiles = { svg, png, pdf, html } as const satisfies { [extension: string]: Make };

export type DrawFile = keyof typeof drawFiles;
