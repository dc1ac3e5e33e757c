import { escapeText } from './escape.ts';
import { type FileTheme, paintValue, type Theme } from './paints.ts';
import { remembered } from './remembered.ts';
import type { Drawing } from './scene.ts';
import type { EllipseShape, Part, PathShape, Point, RectShape, Shape, Style, TextShape, Tile } from './shapes.ts';
import { filled, rect } from './shapes.ts';

const fontFamily = "Arial, Helvetica, 'Liberation Sans', sans-serif";
const tintOpacity = 0.2;

/* What stands behind the whole millimetres, by hundredths. */
const fractions = Array.from({ length: 100 }, (_, n) => String(n / 100).slice(1));

/** A length in mm, to the hundredth; what is no number is drawn at 0 rather than spoil the file. */
function mm(value: number): string {
  const hundredths = Math.round(value * 100);
  if (!(hundredths >= 0 && hundredths < 1e9)) return Number.isFinite(hundredths) ? String(hundredths / 100 || 0) : '0';
  return String(Math.floor(hundredths / 100)) + (fractions[hundredths % 100] ?? '');
}

const attribute = (name: string, value: string): string => ` ${name}="${value}"`;

function fillOf(style: Style, theme: Theme): string {
  if (style.tile !== null) return attribute('fill', `url(#dh-${escapeText(style.tile)})`);
  if (style.fill === null) return attribute('fill', 'none');
  const opacity = style.fillOpacity < 1 ? attribute('fill-opacity', String(style.fillOpacity)) : '';
  return attribute('fill', paintValue(style.fill, theme)) + opacity;
}

function strokeOf(style: Style, theme: Theme): string {
  if (style.stroke === null) return '';
  const dash = style.dash === null ? '' : attribute('stroke-dasharray', style.dash.map(mm).join(' '));
  return attribute('stroke', paintValue(style.stroke, theme)) + attribute('stroke-width', mm(style.width)) + dash;
}

const styleOf = (style: Style, theme: Theme): string => fillOf(style, theme) + strokeOf(style, theme);

const rectText = (shape: RectShape, theme: Theme): string =>
  `<rect x="${mm(shape.x)}" y="${mm(shape.y)}" width="${mm(Math.max(shape.width, 0))}" height="${mm(Math.max(shape.height, 0))}"${styleOf(shape.style, theme)}/>`;

const pointText = ({ x, y }: Point): string => `${mm(x)} ${mm(y)}`;

const pathText = (shape: PathShape, theme: Theme): string =>
  `<path d="M${shape.points.map(pointText).join('L')}${shape.closed ? 'Z' : ''}"${styleOf(shape.style, theme)}/>`;

const ellipseText = (shape: EllipseShape, theme: Theme): string =>
  `<ellipse cx="${mm(shape.x)}" cy="${mm(shape.y)}" rx="${mm(shape.rx)}" ry="${mm(shape.ry)}"${styleOf(shape.style, theme)}/>`;

function textText(shape: TextShape, theme: Theme): string {
  const face = (shape.bold ? ' font-weight="bold"' : '') + (shape.italic ? ' font-style="italic"' : '');
  const anchor = shape.anchor === 'start' ? '' : attribute('text-anchor', shape.anchor);
  return `<text x="${mm(shape.x)}" y="${mm(shape.y)}" font-size="${mm(shape.size)}"${face}${anchor}${attribute('fill', paintValue(shape.paint, theme))}>${escapeText(shape.text)}</text>`;
}

function shapeText(shape: Shape, theme: Theme): string {
  if (shape.kind === 'rect') return rectText(shape, theme);
  if (shape.kind === 'path') return pathText(shape, theme);
  return shape.kind === 'ellipse' ? ellipseText(shape, theme) : textText(shape, theme);
}

function writtenTile(tile: Tile, theme: Theme): string {
  const tint = tile.tint === null ? [] : [rect(0, 0, tile.width, tile.height, filled(tile.tint, tintOpacity))];
  const shapes = [rect(0, 0, tile.width, tile.height, filled('paper')), ...tint, ...tile.shapes];
  return `<pattern id="dh-${escapeText(tile.id)}" width="${mm(tile.width)}" height="${mm(tile.height)}" patternUnits="userSpaceOnUse">${shapes.map((shape) => shapeText(shape, theme)).join('')}</pattern>`;
}

/* Patterns are the same in every drawing, and are written once. */
const tileTexts: Readonly<{ [T in Theme]: (tile: Tile) => string }> = {
  print: remembered((tile: Tile) => writtenTile(tile, 'print')),
  dark: remembered((tile: Tile) => writtenTile(tile, 'dark')),
  editor: remembered((tile: Tile) => writtenTile(tile, 'editor')),
};

/* On a page a part that comes from a line can be reached and followed; in a file it is a picture only. */
function partText(part: Part, theme: Theme): string {
  const at = part.line === null ? '' : attribute('data-line', String(part.line));
  const reach = part.line !== null && theme === 'editor' ? ' tabindex="0" role="img"' : '';
  const shapes = part.shapes.map((shape) => shapeText(shape, theme)).join('');
  return `<g class="dh-${part.name}"${at}${reach}><title>${escapeText(part.title)}</title>${shapes}</g>`;
}

const fileStyle =
  '<style>.dh-drawing{font-family:Arial,Helvetica,"Liberation Sans",sans-serif;-webkit-print-color-adjust:exact;print-color-adjust:exact}</style>';

/**
 * The drawing as one `svg` element, the same text for the same drawing. `print` and `dark` have their colours in themselves;
 * `editor` takes them from the custom properties `--dh-…` of the page, and has no style element.
 */
export function drawingSvg(drawing: Drawing, theme: Theme): string {
  const [width, height] = [mm(drawing.widthMm), mm(drawing.heightMm)];
  const role = theme === 'editor' ? 'group' : 'img';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="dh-drawing" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="${role}" aria-label="${escapeText(`${drawing.title}. ${drawing.description}`)}" font-family="${fontFamily}">`,
    `<title>${escapeText(drawing.title)}</title>`,
    `<desc>${escapeText(drawing.description)}</desc>`,
    ...(theme === 'editor' ? [] : [fileStyle]),
    `<defs>${drawing.tiles.map(tileTexts[theme]).join('')}</defs>`,
    shapeText(rect(0, 0, drawing.widthMm, drawing.heightMm, filled('paper')), theme),
    ...drawing.parts.map((part) => partText(part, theme)),
    '</svg>',
    '',
  ].join('\n');
}

/** The drawing as a file of its own. */
export const drawingFile = (drawing: Drawing, theme: FileTheme = 'print'): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${drawingSvg(drawing, theme)}`;
