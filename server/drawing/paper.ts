import { headHeight, heightBelow, type Plan } from './compose.ts';
import { givenScale } from './depth-scale.ts';
import { type DrawingOptions, papers } from './options.ts';
import { line, type Part, stroked } from './shapes.ts';
import type { Sheet } from './sheet.ts';
import { fitted, rowHeight, textRow, types } from './text.ts';
import { titleHeight, titlePart, wellName } from './title.ts';
import type { Track } from './tracks.ts';
import { metresText } from './words.ts';

/** Edge of the paper that is left white, in mm: what every printer leaves. */
export const edge = 12;
const pageLineHeight = 5;
/* However long the legend: a body lower than this holds no log. The sheet is then longer than its paper. */
const leastBody = 70;
const shortTitle = 9;
/* Room for the depths in it. */
const depthsRoom = 66;

/** Where the columns stand on one sheet of paper. */
export interface PaperPlace {
  readonly width: number;
  readonly height: number;
  /** Top of the headings. */
  readonly top: number;
  /** Height of the columns below their headings. */
  readonly body: number;
}

/** The room on a sheet `times` as large as the paper; the first sheet has the whole title, the others a short one. */
export function placeOn(
  whole: Sheet,
  tracks: readonly Track[],
  { paper, title }: DrawingOptions,
  first: boolean,
  times = 1,
): PaperPlace {
  const [width, height] = [papers[paper].width * times, papers[paper].height * times];
  const head = first ? (title ? titleHeight(whole) : 0) : shortTitle;
  const top = edge + head;
  const scale = givenScale(whole.window, 0, 1000);
  const provisional: Plan = {
    sheet: whole,
    whole,
    tracks,
    scale,
    left: edge,
    width: width - 2 * edge,
    top,
    bottom: top,
  };
  const room = height - edge - pageLineHeight - heightBelow(provisional) - top - headHeight;
  return { width, height, top, body: Math.max(room, leastBody) };
}

/** The head of a sheet: the title block, or the well's name and the depths on the later ones. */
export function headParts(sheet: Sheet, { width, top }: PaperPlace, first: boolean, title: boolean): Part[] {
  const box = { x: edge, y: edge, width: width - 2 * edge, height: top - edge };
  if (first) return title ? [titlePart(sheet, box)] : [];
  const { unit, window } = sheet;
  const depths = `${metresText(window.top, unit)} – ${metresText(window.bottom, unit)}, continued`;
  const name = { ...types.name, size: 4 };
  const right = edge + box.width;
  return [
    {
      name: 'title',
      line: null,
      title: `Log of ${wellName(sheet.log.header)}, ${depths}`,
      shapes: [
        textRow(fitted(wellName(sheet.log.header), name, box.width - depthsRoom - 4), edge, edge, name),
        textRow(fitted(depths, types.body, depthsRoom), right, edge + 1.5, types.body, 'end'),
        line(
          [
            [edge, top - 0.6],
            [right, top - 0.6],
          ],
          stroked('ink', 0.6),
        ),
      ],
    },
  ];
}

/** The line at the foot of a sheet: which well, which page of how many. */
export function pageLine(sheet: Sheet, { width }: PaperPlace, height: number, number: number, count: number): Part {
  const y = height - edge - rowHeight(types.small);
  const text = `Page ${number} of ${count}`;
  const name = fitted(wellName(sheet.log.header), types.small, width - 2 * edge - 40);
  return {
    name: 'page',
    line: null,
    title: text,
    shapes: [textRow(name, edge, y, types.small), textRow(text, width - edge, y, types.small, 'end')],
  };
}
