import { PDFDocument, PDFHexString, PDFName, PDFNumber, type PDFRef } from 'pdf-lib';
import { cleanText } from '../../drawing/escape.ts';
import type { Drawing } from '../../drawing/index.ts';
import type { Asset } from './asset.ts';
import { embedFonts } from './fonts.ts';
import { addSheet, type PageContent } from './pdf-page.ts';

/* A reader that speaks the page must come to an end of it. */
const mostNamed = 400;

/** What a sheet shows, in words, in the order in which it is drawn. */
function alternative({ description, parts }: Drawing): string {
  const named = [...new Set(parts.filter(({ line }) => line !== null).map(({ title }) => title))];
  const rest = named.length > mostNamed ? [`and ${named.length - mostNamed} more`] : [];
  return cleanText([description, ...named.slice(0, mostNamed), ...rest].join('\n'));
}

/** The structure of the document for those who do not see it (ISO 32000-1, 14.7): each sheet's title and its drawing. */
function tag(document: PDFDocument, sheets: readonly Drawing[], contents: readonly PageContent[]): void {
  const { context } = document;
  const rootRef = context.nextRef();
  const wholeRef = context.nextRef();
  const elementsOf = ({ page, heading, figure }: PageContent, sheet: Drawing, n: number): PDFRef[] => {
    const element = (S: string, K: number, more = {}) =>
      context.register(context.obj({ Type: 'StructElem', S, P: wholeRef, Pg: page.ref, K, ...more }));
    const { width, height } = page.getSize();
    const more = {
      Alt: PDFHexString.fromText(alternative(sheet)),
      A: { O: 'Layout', BBox: [0, 0, Math.ceil(width), Math.ceil(height)], Placement: 'Block' },
    };
    page.node.set(PDFName.of('StructParents'), PDFNumber.of(n));
    page.node.set(PDFName.of('Tabs'), PDFName.of('S'));
    return [...(heading === null ? [] : [element('H1', heading)]), element('Figure', figure, more)];
  };
  const elements = contents.map((content, n) => {
    const sheet = sheets[n];
    return sheet === undefined ? [] : elementsOf(content, sheet, n);
  });
  context.assign(wholeRef, context.obj({ Type: 'StructElem', S: 'Document', P: rootRef, K: elements.flat() }));
  const Nums = elements.flatMap((refs, n) => [PDFNumber.of(n), context.obj(refs)]);
  context.assign(
    rootRef,
    context.obj({ Type: 'StructTreeRoot', K: [wholeRef], ParentTree: { Nums }, ParentTreeNextKey: elements.length }),
  );
  document.catalog.set(PDFName.of('StructTreeRoot'), rootRef);
  document.catalog.set(PDFName.of('MarkInfo'), context.obj({ Marked: true }));
}

function describe(document: PDFDocument, title: string, today: string): void {
  const day = new Date(`${today}T00:00:00Z`);
  document.setTitle(cleanText(title), { showInWindowTitleBar: true });
  document.setLanguage('en');
  document.setCreator('Drillhand');
  document.setProducer('Drillhand, pdf-lib');
  document.setCreationDate(day);
  document.setModificationDate(day);
}

/**
 * The sheets as one PDF, a page each, to scale: real text in embedded fonts, titles and drawings tagged.
 * The same sheets and day give the same bytes.
 */
export async function pdfOf(sheets: readonly Drawing[], today: string, asset: Asset): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const fonts = await embedFonts(document, asset);
  describe(document, sheets[0]?.title ?? '', today);
  const contents = sheets.map((sheet) => addSheet(document, sheet, fonts));
  tag(document, sheets, contents);
  return document.save();
}
