import type { Part } from '../shapes.ts';
import { textRow, types } from '../text.ts';
import { part, type WellFrame, xAt, yAt } from './frame.ts';
import type { DrawnString, HoleStretch } from './geometry.ts';

const query = (frame: WellFrame, x: number, depth: number, line: number, title: string): Part =>
  part('doubt', line, title, [textRow('?', x, yAt(frame, depth) - types.doubt.size / 2, types.doubt, 'middle')]);

const isDoubtful = (depth: { readonly doubtful: boolean; readonly approximate: boolean } | null): boolean =>
  depth?.doubtful ?? false;

function stringDoubts(frame: WellFrame, drawn: DrawnString): Part[] {
  const { string } = drawn;
  const x = xAt(frame, drawn.inner, 1) - 1.6;
  const name = `${string.kind} ${string.number}`;
  const marks: Part[] = [];
  if (drawn.top === drawn.head && (!drawn.topKnown || isDoubtful(string.interval.top)))
    marks.push(query(frame, x, drawn.top, string.line, `Top of ${name} not certain`));
  if (drawn.bottom === drawn.foot && (!drawn.bottomKnown || isDoubtful(string.interval.bottom)))
    marks.push(query(frame, x, drawn.bottom, string.line, `Foot of ${name} not certain`));
  if (!drawn.sizeKnown)
    marks.push(query(frame, x, (drawn.top + drawn.bottom) / 2, string.line, `Size of ${name} not known`));
  return marks;
}

const holeDoubts = (frame: WellFrame, stretch: HoleStretch): Part[] =>
  stretch.known
    ? []
    : [
        query(
          frame,
          xAt(frame, stretch.diameter, -1) - 1.6,
          (stretch.top + stretch.bottom) / 2,
          stretch.line,
          'Diameter of the hole not known',
        ),
      ];

/** A query beside every part of the well that the notes leave open. */
export const doubtParts = (frame: WellFrame): Part[] => [
  ...frame.well.hole.flatMap((stretch) => holeDoubts(frame, stretch)),
  ...frame.well.strings.flatMap((drawn) => stringDoubts(frame, drawn)),
];
