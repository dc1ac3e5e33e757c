import type { AtDepth, Depth, PipeString, WellLog } from '../../model/log.ts';
import { isShown } from '../depth-scale.ts';
import { ellipse, filled, line, outlined, type Part, polygon, rect, type Shape, stroked } from '../shapes.ts';
import { depthText, depthWithUnit, listed, wordsText } from '../words.ts';
import { bothSides, part, type WellFrame, xAt, yAt } from './frame.ts';
import { aroundAt, type DrawnString } from './geometry.ts';
import { wallLeft, wallWidth } from './strings.ts';

const shownDepth = (frame: WellFrame, depth: Depth | null): number | null =>
  depth?.value != null && isShown(frame.scale.window, depth.value) ? depth.value : null;

/** A thing at a depth in words. */
export const fittingTitle = (name: string, fitting: AtDepth, unit: string): string =>
  listed([fitting.depth === null ? name : `${name} ${depthWithUnit(fitting.depth, unit)}`, wordsText(fitting.kinds)]);

function atDepth(
  frame: WellFrame,
  name: string,
  words: string,
  fitting: AtDepth,
  shapesAt: (depth: number) => readonly Shape[],
): Part[] {
  const depth = shownDepth(frame, fitting.depth);
  return depth === null ? [] : [part(name, fitting.line, fittingTitle(words, fitting, frame.unit), shapesAt(depth))];
}

const shoeHeight = 2;
const shoeReach = 0.8;

/** A wedge at the foot of each wall. */
function shoeParts(frame: WellFrame, drawn: DrawnString): Part[] {
  const { shoe } = drawn.string;
  if (shoe === null) return [];
  return atDepth(frame, 'shoe', 'Shoe', { ...shoe, depth: shoe.depth ?? drawn.string.interval.bottom }, (depth) => {
    const y = yAt(frame, depth);
    return bothSides((side) => {
      const outside = xAt(frame, drawn.outer, side);
      const inside = outside - side * wallWidth(frame, drawn);
      return [
        polygon(
          [
            [outside, y - shoeHeight],
            [outside + side * shoeReach, y],
            [inside, y],
          ],
          filled('ink'),
        ),
      ];
    });
  });
}

const bowHeight = 1.2;
const bow = outlined('paper', 'ink', 0.2);

function bowShapes(frame: WellFrame, drawn: DrawnString, depth: number): Shape[] {
  const y = yAt(frame, depth);
  const around = aroundAt(frame.well, drawn, depth);
  return bothSides((side) => {
    const [wall, reach] = [xAt(frame, drawn.outer, side), xAt(frame, around, side)];
    return [
      polygon(
        [
          [wall, y - bowHeight],
          [reach, y - 0.4 * bowHeight],
          [reach, y + 0.4 * bowHeight],
          [wall, y + bowHeight],
        ],
        bow,
      ),
    ];
  });
}

/** The depths of centralizers in words. */
export const centralizersTitle = (string: PipeString, unit: string): string => {
  const { positions, every } = string.centralizers ?? { positions: [], every: null };
  const depths = positions.map((depth) => depthText(depth, unit)).join(', ');
  return `Centralizers ${listed([depths, every === null ? '' : `every ${depthText(every, unit)}`]) || '?'} ${unit}`;
};

function centralizerParts(frame: WellFrame, drawn: DrawnString): Part[] {
  const { centralizers } = drawn.string;
  if (centralizers === null) return [];
  const depths = centralizers.positions.flatMap((depth) => shownDepth(frame, depth) ?? []);
  const shapes = depths.flatMap((depth) => bowShapes(frame, drawn, depth));
  return shapes.length === 0
    ? []
    : [part('centralizer', centralizers.line, centralizersTitle(drawn.string, frame.unit), shapes)];
}

/* More joints than any string has; a greater count is a slip. */
const mostJoints = 2000;

/** Depths of the joints, from the foot up. */
function jointDepths(drawn: DrawnString): number[] {
  const depths: number[] = [];
  let depth = drawn.foot;
  for (const { count, length } of drawn.string.joints?.lengths ?? []) {
    const each = length.value ?? 0;
    for (let n = 0; each > 0 && n < count && depth - each > drawn.head + 1e-6 && depths.length < mostJoints; n += 1) {
      depth -= each;
      depths.push(depth);
    }
  }
  return depths;
}

function jointParts(frame: WellFrame, drawn: DrawnString): Part[] {
  const { joints } = drawn.string;
  if (joints === null) return [];
  const shown = jointDepths(drawn).filter((depth) => isShown(frame.scale.window, depth));
  const shapes = shown.flatMap((depth) =>
    bothSides((side) => [
      rect(
        wallLeft(frame, drawn, side) - 0.2,
        yAt(frame, depth) - 0.25,
        wallWidth(frame, drawn) + 0.4,
        0.5,
        outlined('paper', 'ink', 0.15),
      ),
    ]),
  );
  const title = `Joints of ${drawn.string.kind} ${drawn.string.number}, from the foot up`;
  return shapes.length === 0 ? [] : [part('joint', joints.line, title, shapes)];
}

function packerShapes(frame: WellFrame, drawn: DrawnString, depth: number): Shape[] {
  const y = yAt(frame, depth);
  const around = aroundAt(frame.well, drawn, depth);
  return bothSides((side) => {
    const [a, b] = [xAt(frame, drawn.outer, side), xAt(frame, around, side)];
    return [rect(Math.min(a, b), y - 0.9, Math.abs(b - a), 1.8, filled('ink', 0.8))];
  });
}

const packerParts = (frame: WellFrame, drawn: DrawnString): Part[] =>
  drawn.string.packers.flatMap((packer) =>
    atDepth(frame, 'packer', 'Packer', packer, (depth) => packerShapes(frame, drawn, depth)),
  );

function pitlessShapes(frame: WellFrame, drawn: DrawnString, depth: number): Shape[] {
  const [x, y] = [xAt(frame, drawn.outer, 1), yAt(frame, depth)];
  return [
    line(
      [
        [x, y],
        [x + 4, y],
      ],
      stroked('ink', 0.6),
    ),
    ellipse(x, y, 0.8, 0.8, outlined('paper', 'ink', 0.3)),
  ];
}

const pitlessParts = (frame: WellFrame, drawn: DrawnString): Part[] =>
  drawn.string.pitless.flatMap((pitless) =>
    atDepth(frame, 'pitless', 'Pitless adapter', pitless, (depth) => pitlessShapes(frame, drawn, depth)),
  );

/** Shoe, joints, centralizers, packers and pitless adapters of a string. */
export const fittingParts = (frame: WellFrame, drawn: DrawnString): Part[] => [
  ...jointParts(frame, drawn),
  ...centralizerParts(frame, drawn),
  ...packerParts(frame, drawn),
  ...shoeParts(frame, drawn),
  ...pitlessParts(frame, drawn),
];

const capHeight = 1.2;

/* A flush-mounted well ends a little below ground, under its cover: common practice, no source. */
const flushDepth = 1;

/** The string that a cap sits on: the narrowest of those that come to the surface and stay. */
export function cappedString(frame: WellFrame): DrawnString | null {
  const staying = frame.well.strings.filter(
    ({ string, head, top }) => !string.temporary && string.kind !== 'screen' && head <= flushDepth && head === top,
  );
  return staying.reduce<DrawnString | null>(
    (best, each) => (best === null || each.outer < best.outer ? each : best),
    null,
  );
}

/** The cap on top of the well. */
export function capParts(frame: WellFrame, log: WellLog): Part[] {
  const drawn = cappedString(frame);
  const cap = log.caps.at(-1);
  if (drawn === null || cap === undefined) return [];
  const [left, right, y] = [xAt(frame, drawn.outer, -1) - 0.7, xAt(frame, drawn.outer, 1) + 0.7, yAt(frame, drawn.top)];
  return [
    part('cap', cap.line, fittingTitle('Cap', cap, frame.unit), [
      rect(left, y - capHeight, right - left, capHeight, filled('ink')),
    ]),
  ];
}
