import type { Record as WellRecord } from '../../record/record.ts';
import { type DrawingOptions, defaultDrawingOptions, papers } from '../options.ts';
import { edge } from '../paper.ts';
import type { Drawing } from '../scene.ts';
import { line, type Part, stroked } from '../shapes.ts';
import { moved, shrunk } from '../shrunk.ts';
import { fitted, rowHeight, textRow, types } from '../text.ts';
import { wellName } from '../title.ts';
import { allPlots } from './all-plots.ts';

const headHeight = 12;
const footHeight = 8;

function headPart(name: string, { title }: Drawing, right: number): Part {
  const type = { ...types.name, size: 4 };
  const shapes = [
    textRow(fitted(name, type, right - edge), edge, edge, type),
    line(
      [
        [edge, edge + 8.4],
        [right, edge + 8.4],
      ],
      stroked('ink', 0.6),
    ),
  ];
  return { name: 'title', line: null, title, shapes };
}

function footPart(name: string, text: string, right: number, y: number): Part {
  const shapes = [
    textRow(fitted(name, types.small, right - edge - 40), edge, y, types.small),
    textRow(text, right, y, types.small, 'end'),
  ];
  return { name: 'page', line: null, title: text, shapes };
}

/** Each plot of the record on a sheet of paper of its own, with the well's name; smaller where the sheet asks for it. */
export function plotSheets(record: WellRecord, options: Partial<DrawingOptions> = {}): Drawing[] {
  const { width, height } = papers[options.paper ?? defaultDrawingOptions.paper];
  const right = width - edge;
  const name = wellName(record.log.header);
  const room = { width: right - edge, height: height - 2 * edge - headHeight - footHeight };
  return allPlots(record).map((plot, n, all) => {
    const factor = Math.min(1, room.width / plot.widthMm, room.height / plot.heightMm);
    const small = shrunk(plot, factor);
    return {
      ...small,
      widthMm: width,
      heightMm: height,
      parts: [
        headPart(name, plot, right),
        ...moved(small.parts, edge + (room.width - small.widthMm) / 2, edge + headHeight),
        footPart(name, `Plot ${n + 1} of ${all.length}`, right, height - edge - rowHeight(types.small)),
      ],
    };
  });
}
