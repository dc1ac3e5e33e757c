import { type PDFDict, type PDFDocument, PDFName, type PDFPage, type PDFRef } from 'pdf-lib';
import { cleanText } from '../../drawing/escape.ts';
import type { Drawing } from '../../drawing/index.ts';
import { filled, type Part, rect, type Tile } from '../../drawing/shapes.ts';
import type { Fonts } from './fonts.ts';
import { marksOf, number, type PageNames } from './pdf-marks.ts';

/* PDF counts in 1/72 inch. */
export const pointsPerMm = 72 / 25.4;

/* How thin the tint of a pattern lies on its paper, as in the SVG. */
const tintOpacity = 0.2;

/** Millimetres from the top left corner, y downward, to points from the bottom left corner. */
const matrixFor = (heightMm: number): string =>
  [pointsPerMm, 0, 0, -pointsPerMm, 0, heightMm * pointsPerMm].map((each) => number(each)).join(' ');

function namesFor(
  document: PDFDocument,
  resources: PDFDict,
  fonts: Fonts,
  tiles: ReadonlyMap<string, PDFRef>,
): PageNames {
  const { context } = document;
  const among = (kind: string): PDFDict => {
    const name = PDFName.of(kind);
    const there = resources.get(name);
    if (there === undefined) resources.set(name, context.obj({}));
    return resources.lookup(name) as PDFDict;
  };
  return {
    set: (text, bold, size) => {
      const font = bold ? fonts.bold : fonts.regular;
      const name = bold ? 'Bold' : 'Regular';
      among('Font').set(PDFName.of(name), font.ref);
      const clean = cleanText(text);
      return { font: name, bytes: font.encodeText(clean).toString(), width: font.widthOfTextAtSize(clean, size) };
    },
    tile: (id) => {
      const name = `Tile-${id}`;
      const tile = tiles.get(id);
      if (tile !== undefined) among('Pattern').set(PDFName.of(name), tile);
      return name;
    },
    opacity: (opacity) => {
      const name = `Opacity${Math.round(opacity * 1000)}`;
      among('ExtGState').set(PDFName.of(name), context.obj({ ca: Number(number(opacity)) }));
      return name;
    },
  };
}

/** A pattern that is repeated over the page from its top left corner. */
function tilePattern(document: PDFDocument, tile: Tile, fonts: Fonts, heightMm: number): PDFRef {
  const { context } = document;
  const whole = (style: Parameters<typeof rect>[4]) => rect(0, 0, tile.width, tile.height, style);
  const tint = tile.tint === null ? [] : [whole(filled(tile.tint, tintOpacity))];
  const resources = context.obj({});
  const names = namesFor(document, resources, fonts, new Map());
  const marks = marksOf([whole(filled('paper')), ...tint, ...tile.shapes], names);
  const size = [tile.width, tile.height].map((each) => Number(number(each)));
  return context.register(
    context.flateStream(marks, {
      Type: 'Pattern',
      PatternType: 1,
      PaintType: 1,
      TilingType: 2,
      BBox: [0, 0, ...size],
      XStep: size[0] ?? 1,
      YStep: size[1] ?? 1,
      Matrix: matrixFor(heightMm).split(' ').map(Number),
      Resources: resources,
    }),
  );
}

/** Content that a tag marks, so that a reader of the structure finds it under this number. */
const marked = (tag: string, id: number, marks: string): string => `/${tag} <</MCID ${id}>> BDC\n${marks}\nEMC`;

const isTitle = (part: Part): boolean => part.name === 'title';

/** The numbers under which a page's content is tagged; null where the page has no title of its own. */
export interface PageContent {
  readonly page: PDFPage;
  readonly heading: number | null;
  readonly figure: number;
}

/** One sheet as one page, to its own size. */
export function addSheet(document: PDFDocument, drawing: Drawing, fonts: Fonts): PageContent {
  const { widthMm, heightMm } = drawing;
  const page = document.addPage([widthMm * pointsPerMm, heightMm * pointsPerMm]);
  const resources = document.context.obj({});
  const tiles = new Map(drawing.tiles.map((tile) => [tile.id, tilePattern(document, tile, fonts, heightMm)]));
  const names = namesFor(document, resources, fonts, tiles);
  const marks = (parts: readonly Part[]) =>
    marksOf(
      parts.flatMap((part) => part.shapes),
      names,
    );
  const titles = drawing.parts.filter(isTitle);
  const heading = titles.length === 0 ? null : 0;
  const figure = titles.length === 0 ? 0 : 1;
  const content = [
    `${matrixFor(heightMm)} cm 4 M`,
    ...(heading === null ? [] : [marked('H1', heading, marks(titles))]),
    marked('Figure', figure, marks(drawing.parts.filter((part) => !isTitle(part)))),
  ].join('\n');
  page.node.set(PDFName.of('Resources'), resources);
  page.node.set(PDFName.of('Contents'), document.context.register(document.context.flateStream(content)));
  return { page, heading, figure };
}
