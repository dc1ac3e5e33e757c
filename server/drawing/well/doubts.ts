import type { AtDepth, Depth, Fill, Interval, WellLog } from '../../model/log.ts';
import { isShown } from '../depth-scale.ts';
import { ellipse, filled, type Part } from '../shapes.ts';
import { textRow, types } from '../text.ts';
import { bothEnds, type DoubtSign, type DoubtSpot, markOf, spotAt } from './doubt-spots.ts';
import { part, type Side, type WellFrame, xAt, yAt } from './frame.ts';
import {
  aroundAt,
  boreAt,
  type DrawnString,
  footDepth,
  type HoleStretch,
  pipeAt,
  topDepth,
  type WellGeometry,
} from './geometry.ts';
import type { PumpingLevel } from './pumping-level.ts';
import { drawnLevels, holeWall } from './water-marks.ts';

type Place = DoubtSpot['place'];

const nameOf = ({ string }: DrawnString): string => `${string.kind} ${string.number}`;

/* Marks stand this far within the wall that they belong to, in mm. */
const withinWall = 1.6;

const insideWall =
  (drawn: DrawnString, side: Side): Place =>
  (frame) =>
    xAt(frame, drawn.inner, side) - side * withinWall;

const onCentre: Place = ({ centre }) => centre;

const beyondWall =
  (depth: number, side: Side, beyond: number): Place =>
  (frame) =>
    holeWall(frame, depth, side) + side * beyond;

/** An end that is known by its depth, or drawn where it may be. */
const endSpots = (drawn: DrawnString, what: string, at: number, depth: Depth | null): DoubtSpot[] => {
  const sign: DoubtSign | null = depth === null ? '?' : markOf(depth);
  if (sign === null) return [];
  return [spotAt(sign, at, drawn.string.line, `${what} of ${nameOf(drawn)}`, insideWall(drawn, 1), -1)];
};

function stringSpots(drawn: DrawnString): DoubtSpot[] {
  const { string } = drawn;
  const middle = (drawn.top + drawn.bottom) / 2;
  return [
    ...(drawn.top === drawn.head ? endSpots(drawn, 'Top', drawn.top, topDepth(string)) : []),
    ...(drawn.bottom === drawn.foot ? endSpots(drawn, 'Foot', drawn.bottom, footDepth(string)) : []),
    ...(drawn.sizeKnown
      ? []
      : [
          {
            ...spotAt('?', middle, string.line, '', insideWall(drawn, 1), -1),
            title: `Size of ${nameOf(drawn)} not known`,
          },
        ]),
    ...string.screens.flatMap(({ interval, line }) => screenSpots(drawn, interval, line)),
    ...string.perforated.flatMap((interval) => screenSpots(drawn, interval, interval.span.line)),
  ];
}

const screenSpots = (drawn: DrawnString, interval: Interval, line: number): DoubtSpot[] =>
  bothEnds(interval, line, `screen of ${nameOf(drawn)}`, () => insideWall(drawn, 1), -1);

const fittingSpot = (drawn: DrawnString, name: string, fitting: AtDepth, side: Side): DoubtSpot[] =>
  depthSpot(fitting.depth, fitting.line, `${name} of ${nameOf(drawn)}`, insideWall(drawn, side), side === 1 ? -1 : 1);

/** One mark where a depth of the notes is doubtful or about; none where it is sure, or not known at all. */
function depthSpot(depth: Depth | null, line: number, what: string, place: Place, side: Side): DoubtSpot[] {
  const sign = markOf(depth);
  return sign === null || depth?.value == null ? [] : [spotAt(sign, depth.value, line, what, place, side)];
}

function fittingSpots(drawn: DrawnString): DoubtSpot[] {
  const { shoe, centralizers, packers, pitless } = drawn.string;
  const where = insideWall(drawn, -1);
  return [
    ...(shoe === null ? [] : fittingSpot(drawn, 'Shoe', shoe, -1)),
    ...(centralizers?.positions ?? []).flatMap((depth) =>
      depthSpot(depth, centralizers?.line ?? drawn.string.line, `Centralizer of ${nameOf(drawn)}`, where, 1),
    ),
    ...packers.flatMap((packer) => fittingSpot(drawn, 'Packer', packer, -1)),
    ...pitless.flatMap((each) => fittingSpot(drawn, 'Pitless adapter', each, 1)),
  ];
}

/* An annulus narrower than this on the page has its mark beside it, in mm. */
const roomForMark = 2.4;

const inAnnulus =
  (well: WellGeometry, drawn: DrawnString) =>
  (depth: number): Place =>
  (frame) => {
    const [wall, around] = [pipeAt(drawn, depth), aroundAt(well, drawn, depth)].map((width) => xAt(frame, width, -1));
    const [inner, outer] = [wall ?? frame.centre, around ?? frame.centre];
    return inner - outer >= roomForMark ? (inner + outer) / 2 : outer - roomForMark / 2;
  };

const fillSpots = (fill: Fill, what: string, placeAt: (depth: number) => Place): DoubtSpot[] =>
  fill.interval === null
    ? depthSpot(fill.depth, fill.line, what, onCentre, 1)
    : bothEnds(fill.interval, fill.line, what, placeAt, -1);

const stringFills = (well: WellGeometry, drawn: DrawnString): DoubtSpot[] =>
  drawn.string.fills.flatMap((fill) =>
    fillSpots(fill, `${fill.kind} of ${nameOf(drawn)}`, fill.kind === 'plug' ? () => onCentre : inAnnulus(well, drawn)),
  );

/* Beyond the arrows and the bubbles that they question, in mm from the wall of the hole. */
const beyondArrow = 6.2;
const beyondBubbles = 4.6;

const foundSpots = ({ water }: WellLog): DoubtSpot[] =>
  water.found.flatMap(({ depth, interval, line }) => [
    ...depthSpot(depth, line, 'Water found', beyondWall(depth?.value ?? 0, -1, beyondArrow), -1),
    ...bothEnds(interval, line, 'water found', (at) => beyondWall(at, -1, beyondArrow), -1),
  ]);

const onLevel =
  (well: WellGeometry, depth: Depth | null): Place =>
  (frame) =>
    frame.centre + Math.max((boreAt(well, depth?.value ?? 0) * frame.mmAcross) / 2 - 1.8, 2.9);

const levelSpots = (well: WellGeometry, log: WellLog, pumping: readonly PumpingLevel[]): DoubtSpot[] => [
  ...drawnLevels(log).flatMap(({ level, line }) => depthSpot(level, line, 'Static level', onLevel(well, level), 1)),
  ...pumping.flatMap(({ level, line }) => depthSpot(level, line, 'Pumping level', onLevel(well, level), 1)),
];

const holeSpots = (stretch: HoleStretch): DoubtSpot[] => {
  const middle = (stretch.top + stretch.bottom) / 2;
  const place: Place = (frame) => xAt(frame, stretch.diameter, -1) - withinWall;
  return stretch.known
    ? []
    : [{ ...spotAt('?', middle, stretch.line, '', place, -1), title: 'Diameter of the hole not known' }];
};

/** Every place on the well that the notes leave open, or say only about: where, and in words. */
export const doubtSpots = (well: WellGeometry, log: WellLog, pumping: readonly PumpingLevel[]): DoubtSpot[] => [
  ...well.hole.flatMap(holeSpots),
  ...well.strings.flatMap((drawn) => [...stringSpots(drawn), ...fittingSpots(drawn), ...stringFills(well, drawn)]),
  ...log.abandonments.flatMap(({ fills }) =>
    fills.flatMap((fill) => fillSpots(fill, 'abandonment seal', () => onCentre)),
  ),
  ...log.hole.flatMap(({ interval, line }) => depthSpot(interval.bottom, line, 'Foot of hole', onCentre, 1)),
  ...foundSpots(log),
  ...log.water.gas.flatMap(({ depth, line }) =>
    depthSpot(depth, line, 'Gas', beyondWall(depth?.value ?? 0, 1, beyondBubbles), 1),
  ),
  ...levelSpots(well, log, pumping),
];

interface Point {
  readonly x: number;
  readonly y: number;
}

/* Half of what a mark covers, in mm. */
const halfWidth = 1;
const halfHeight = 1.2;
/* More than any drawing can show apart. */
const mostMarks = 500;

const meets = (a: Point, b: Point): boolean =>
  Math.abs(a.x - b.x) < 2 * halfWidth && Math.abs(a.y - b.y) < 2 * halfHeight;

/** A free place for a mark, sideways from where it wishes to be, within the column. */
function freePoint(frame: WellFrame, { depth, place, side }: DoubtSpot, taken: readonly Point[]): Point {
  const [least, most] = [frame.box.x + halfWidth + 0.2, frame.box.x + frame.box.width - halfWidth - 0.2];
  const within = (x: number): number => Math.min(Math.max(x, least), most);
  let point = { x: within(place(frame)), y: yAt(frame, depth) };
  while (point.x > least && point.x < most && taken.some((each) => meets(each, point)))
    point = { ...point, x: within(point.x + 2 * side * halfWidth) };
  return point;
}

const markShapes = (sign: DoubtSign, { x, y }: Point) => [
  ellipse(x, y, halfWidth, halfHeight, filled('paper', 0.85)),
  textRow(sign, x, y - types.doubt.size / 2, types.doubt, 'middle'),
];

/** A query beside every part of the well that the notes leave open, a tilde beside what they say about. */
export function doubtParts(frame: WellFrame, log: WellLog, pumping: readonly PumpingLevel[]): Part[] {
  const taken: Point[] = [];
  const shown = doubtSpots(frame.well, log, pumping).filter(({ depth }) => isShown(frame.scale.window, depth));
  return shown.slice(0, mostMarks).map((spot) => {
    const point = freePoint(frame, spot, taken);
    taken.push(point);
    return part('doubt', spot.line, spot.title, markShapes(spot.sign, point));
  });
}
