import { roundAbove, tickStep } from './depth-scale.ts';
import { footParts, plainNotes } from './foot-parts.ts';
import { metresIn } from './lengths.ts';
import { type NamedWell, nameOf, type PlacedWell, placedWells } from './places.ts';
import type { Drawing } from './scene.ts';
import { type Box, ellipse, filled, line, outlined, type Part, polygon, rect, type Shape, stroked } from './shapes.ts';
import { fitted, rowHeight, type Type, textRow, textWidth, types } from './text.ts';
import { fieldText, listed, metresText, unitName } from './words.ts';

const width = 180;
const margin = 4;
const headHeight = 10;
const mapHeight = 150;
/* Wells stand at least this far from the edge of the map, in mm. */
const inset = 16;
/* One well, or several at one place, are shown with this much around them, in m. */
const leastExtent = 100;
const dotRadius = 1.1;
const labelType: Type = { ...types.body, bold: true };

interface Spot {
  readonly well: PlacedWell;
  readonly x: number;
  readonly y: number;
}

interface Fit {
  readonly denominator: number;
  readonly spots: readonly Spot[];
}

const middle = (values: readonly number[]): number =>
  (values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY) +
    values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)) /
  2;

const reach = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY) -
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);

/** The wells put on the map, at the largest round scale that holds them all. */
function fitOn(placed: readonly PlacedWell[], box: Box): Fit {
  const [easts, norths] = [placed.map(({ east }) => east), placed.map(({ north }) => north)];
  const [across, up] = [Math.max(reach(easts), leastExtent), Math.max(reach(norths), leastExtent)];
  const denominator = roundAbove(
    Math.max((across * 1000) / (box.width - 2 * inset), (up * 1000) / (box.height - 2 * inset)),
  );
  const [east, north] = [middle(easts), middle(norths)];
  const spots = placed.map((well) => ({
    well,
    x: box.x + box.width / 2 + ((well.east - east) * 1000) / denominator,
    y: box.y + box.height / 2 - ((well.north - north) * 1000) / denominator,
  }));
  return { denominator, spots };
}

const covers = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const dotBox = ({ x, y }: Spot): Box => ({
  x: x - dotRadius - 0.3,
  y: y - dotRadius - 0.3,
  width: 2 * dotRadius + 0.6,
  height: 2 * dotRadius + 0.6,
});

const inside = (box: Box, outer: Box): boolean =>
  box.x >= outer.x + 0.5 &&
  box.y >= outer.y + 0.5 &&
  box.x + box.width <= outer.x + outer.width - 0.5 &&
  box.y + box.height <= outer.y + outer.height - 0.5;

/* Ways that a name may stand from its well, the usual ones first. */
const ways: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [0.7, -0.7],
  [0.7, 0.7],
  [-0.7, -0.7],
  [-0.7, 0.7],
];
const mostRings = 24;
const ringApart = 2;

interface PlacedName {
  readonly spot: Spot;
  readonly text: string;
  readonly box: Box;
  /** True where it stands so far off that a line leads to it. */
  readonly led: boolean;
}

/** The places that a name may take, from near to far. */
function* candidates(spot: Spot, size: Size): Generator<{ box: Box; led: boolean }> {
  for (let ring = 0; ring < mostRings; ring += 1) {
    const away = dotRadius + 0.8 + ring * ringApart;
    for (const [right, down] of ways) {
      const x = spot.x + right * away - (right > 0 ? 0 : right < 0 ? size.width : size.width / 2);
      const y = spot.y + down * away - (down > 0 ? 0 : down < 0 ? size.height : size.height / 2);
      yield { box: { x, y, ...size }, led: ring > 0 };
    }
  }
}

type Size = Pick<Box, 'width' | 'height'>;

function firstFree(spot: Spot, size: Size, map: Box, used: readonly Box[]) {
  for (const candidate of candidates(spot, size)) {
    const { box } = candidate;
    if (inside(box, map) && !used.some((each) => covers(each, box))) return candidate;
  }
  return undefined;
}

const longestName = 44;

/** Names by their wells, none over another, over a well or out of the map; those that find no room are left over. */
function placeNames(spots: readonly Spot[], map: Box, taken: readonly Box[]): { names: PlacedName[]; left: Spot[] } {
  const used: Box[] = [...taken, ...spots.map(dotBox)];
  const names: PlacedName[] = [];
  const left: Spot[] = [];
  for (const spot of spots) {
    const text = fitted(nameOf(spot.well), labelType, longestName);
    const size = { width: textWidth(text, labelType), height: rowHeight(labelType) };
    const free = firstFree(spot, size, map, used);
    if (free === undefined) left.push(spot);
    else {
      used.push(free.box);
      names.push({ spot, text, ...free });
    }
  }
  return { names, left };
}

/** A well in words: name, depth of hole, use. */
function wellWords({ record, ...well }: NamedWell): string {
  const { log } = record;
  const depth = log.totalDepth === null ? '' : `${metresText(log.totalDepth, log.units.depth)} deep`;
  return listed([nameOf({ record, ...well }), depth, fieldText(log.header.location)]);
}

function nameShapes({ spot, text, box, led }: PlacedName): Shape[] {
  const nearX = Math.min(Math.max(spot.x, box.x), box.x + box.width);
  const nearY = Math.min(Math.max(spot.y, box.y), box.y + box.height);
  const lead = line(
    [
      [spot.x, spot.y],
      [nearX, nearY],
    ],
    stroked('quiet-ink', 0.15),
  );
  return [...(led ? [lead] : []), textRow(text, box.x, box.y, labelType)];
}

function wellPart(spot: Spot, name: PlacedName | undefined): Part {
  const isDoubtful = spot.well.record.log.place?.doubtful ?? false;
  const look = isDoubtful ? outlined('paper', 'doubt', 0.4) : outlined('water', 'ink', 0.3);
  return {
    name: 'map-well',
    line: null,
    title: `${wellWords(spot.well)}${isDoubtful ? ', place doubtful' : ''}`,
    shapes: [...(name === undefined ? [] : nameShapes(name)), ellipse(spot.x, spot.y, dotRadius, dotRadius, look)],
  };
}

const barWidth = 46;

/** A bar of a round length in the unit, in quarters. */
function scaleBar(denominator: number, unit: string, x: number, y: number): { part: Part; box: Box } {
  const [each, name] = unit === 'ft' ? [metresIn('ft'), 'ft'] : [1, 'm'];
  const mmPerUnit = (1000 * each) / denominator;
  const length = tickStep(mmPerUnit, barWidth / 2.6);
  const long = length * mmPerUnit;
  const [shown, shownUnit] = name === 'm' && length >= 1000 ? [length / 1000, 'km'] : [length, name];
  const quarters = [0, 1, 2, 3].map((n) =>
    rect(
      x + (n * long) / 4,
      y,
      long / 4,
      1.4,
      n % 2 === 0 ? outlined('ink', 'ink', 0.2) : outlined('paper', 'ink', 0.2),
    ),
  );
  const text = `${shown} ${unitName(shownUnit)}`;
  const shapes = [
    ...quarters,
    textRow('0', x, y + 1.8, types.number, 'start'),
    textRow(text, x + long + 1.2, y - 0.7, types.number),
  ];
  const box = { x: x - 1, y: y - 1.5, width: long + textWidth(text, types.number) + 4, height: 7 };
  return { part: { name: 'scale-bar', line: null, title: `Scale bar of ${text}`, shapes }, box };
}

function northArrow(x: number, y: number): { part: Part; box: Box } {
  const shapes = [
    polygon(
      [
        [x, y],
        [x - 2.2, y + 9],
        [x, y + 7],
      ],
      filled('ink'),
    ),
    polygon(
      [
        [x, y],
        [x + 2.2, y + 9],
        [x, y + 7],
      ],
      outlined('paper', 'ink', 0.25),
    ),
    textRow('N', x, y + 9.5, types.head, 'middle'),
  ];
  return {
    part: { name: 'north', line: null, title: 'North is up', shapes },
    box: { x: x - 3, y: y - 1, width: 6, height: 14.5 },
  };
}

const datumsOf = (placed: readonly PlacedWell[]): string[] => [
  ...new Set(placed.map(({ record }) => record.log.place?.datum?.name ?? 'no datum given')),
];

function noteTexts(
  placed: readonly PlacedWell[],
  unplaced: readonly NamedWell[],
  left: readonly Spot[],
  scale: number | null,
): string[] {
  const datums = datumsOf(placed);
  const names = (wells: readonly NamedWell[]): string => wells.map(nameOf).join(', ');
  return [
    ...(scale === null
      ? ['None of these wells has a place.']
      : [
          `Sketch from the places in the logs, 1:${scale} when printed at full size; no survey. Datum: ${datums.join(', ')}.`,
        ]),
    ...(datums.length > 1 ? ['The datums differ: wells may be off against each other by 100 m and more.'] : []),
    ...(left.length === 0 ? [] : [`No room for the names of: ${names(left.map(({ well }) => well))}.`]),
    ...(unplaced.length === 0 ? [] : [`Without a place: ${names(unplaced)}.`]),
  ];
}

/** Wells on a plain sketch, north up, with a scale bar; those without a place are named below it. */
export function wellMap(wells: readonly NamedWell[]): Drawing {
  const { placed, unplaced } = placedWells(wells);
  const map: Box = {
    x: margin,
    y: margin + headHeight,
    width: width - 2 * margin,
    height: placed.length === 0 ? 0 : mapHeight,
  };
  const unit = wells[0]?.record.log.units.depth ?? 'm';
  const title = `Map of ${wells.length} ${wells.length === 1 ? 'well' : 'wells'}`;
  const head = { ...types.head, size: 3.6 };
  const fit = placed.length === 0 ? null : fitOn(placed, map);
  const bar = fit && scaleBar(fit.denominator, unit, map.x + 4, map.y + map.height - 8);
  const north = fit && northArrow(map.x + map.width - 6, map.y + 3);
  const { names, left } =
    fit && bar && north ? placeNames(fit.spots, map, [bar.box, north.box]) : { names: [], left: [] };
  const footTop = map.y + map.height + 2.5;
  const foot = footParts(
    plainNotes(noteTexts(placed, unplaced, left, fit?.denominator ?? null)),
    margin,
    footTop,
    map.width,
  );
  const frame = {
    name: 'map-frame',
    line: null,
    title: 'Edge of the map',
    shapes: [rect(map.x, map.y, map.width, map.height, stroked('ink', 0.3))],
  };
  return {
    widthMm: width,
    heightMm: footTop + foot.height + margin,
    title,
    description: `${placed.length} of ${wells.length} with a place.`,
    tiles: [],
    parts: [
      { name: 'map-title', line: null, title, shapes: [textRow(title, margin, margin + 1, head)] },
      ...(fit === null ? [] : [frame]),
      ...(fit?.spots ?? []).map((spot) =>
        wellPart(
          spot,
          names.find((name) => name.spot === spot),
        ),
      ),
      ...(bar === null ? [] : [bar.part]),
      ...(north === null ? [] : [north.part]),
      ...foot.parts,
    ],
  };
}
