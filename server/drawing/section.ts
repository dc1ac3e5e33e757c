import { lithologyColumn } from './columns/lithology.ts';
import { axisTicks, type DepthScale, roundBelow, shown, tickDecimals, yOf } from './depth-scale.ts';
import { footParts, plainNotes } from './foot-parts.ts';
import { type Label, labelsHeight, labelText, placeLabels, rowsOf } from './labels.ts';
import { groundEntries, legendOf, tilesOf } from './legend.ts';
import { apart, type NamedWell, nameOf, placedWells } from './places.ts';
import type { Drawing } from './scene.ts';
import { matchLayers } from './section-joins.ts';
import { line, type Part, type Shape, stroked } from './shapes.ts';
import { type Sheet, sheetOf } from './sheet.ts';
import { fitted, rowHeight, textRow, textWidth, types } from './text.ts';
import { wellFrame } from './well/frame.ts';
import { wellParts } from './well/well-parts.ts';
import { capital, metresText, numberText, unitName } from './words.ts';

interface HungWell {
  readonly well: NamedWell;
  readonly sheet: Sheet;
  /** Elevation of the ground in m. */
  readonly ground: number;
}

/** A well with its place across the section. */
interface Strip extends HungWell {
  /** The left edge of its ground column. */
  readonly x: number;
  /** Room for it up to the next one. */
  readonly room: number;
  readonly scale: DepthScale;
  readonly labels: readonly Label[];
}

const margin = 4;
const axisWidth = 16;
const headHeight = 10;
const nameHeight = 11;
const groundWidth = 9;
const wellWidth = 22;
const stripWidth = groundWidth + wellWidth;
const leastSpacing = stripWidth + 16;
const mostAcross = 1200;
const usualAcross = 230;
const leastHeight = 140;
const mostHeight = 1500;
const wordsGap = 1.5;
const highestGround = 10_000;

/** Wells with a ground elevation to hang them by, and those without. */
function hungWells(wells: readonly NamedWell[]): { hung: HungWell[]; loose: NamedWell[] } {
  const known = wells.map((well) => ({ well, ground: well.record.log.ground?.elevation?.value ?? Number.NaN }));
  const isSound = ({ ground }: { ground: number }): boolean => Math.abs(ground) <= highestGround;
  return {
    hung: known.filter(isSound).map(({ well, ground }) => ({ well, ground, sheet: sheetOf(well.record) })),
    loose: known.filter((each) => !isSound(each)).map(({ well }) => well),
  };
}

interface Spacing {
  /** Of the middle of each well from the first, in mm. */
  readonly offsets: readonly number[];
  /** Metres from well to well along the section; null where they stand evenly. */
  readonly metres: readonly number[] | null;
  readonly denominator: number | null;
}

const evenly = (count: number): Spacing => ({
  offsets: Array.from(
    { length: count },
    (_, n) => n * Math.max(leastSpacing, usualAcross / Math.max(count - 1, 1) / 1.5),
  ),
  metres: null,
  denominator: null,
});

function summed(steps: readonly number[]): number[] {
  const offsets = [0];
  let reached = 0;
  for (const step of steps) {
    reached += step;
    offsets.push(reached);
  }
  return offsets;
}

/** Wells as far from each other as they are, at a round scale; evenly where a place is missing or two nearly meet. */
function spacingOf(hung: readonly HungWell[]): Spacing {
  const { placed } = placedWells(hung.map(({ well }) => well));
  if (placed.length < hung.length || hung.length < 2) return evenly(hung.length);
  const steps = placed.slice(1).map((well, n) => apart(placed[n] ?? well, well));
  const least = steps.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const whole = steps.reduce((sum, step) => sum + step, 0);
  const mmPerMetre = Math.max(leastSpacing / least, usualAcross / whole);
  if (!(least > 0) || whole * mmPerMetre > mostAcross) return evenly(hung.length);
  const fine = 1000 / mmPerMetre;
  const denominator = roundBelow(fine);
  return { offsets: summed(steps.map((step) => (step * 1000) / denominator)), metres: steps, denominator };
}

/** What the layers of a well are called beside it. */
function labelsOf({ sheet }: HungWell, room: number): Label[] {
  const words = room - stripWidth - wordsGap - 1.5;
  if (words < 10) return [];
  return sheet.layers.layers.map(({ stratum, top }) => ({
    name: 'section-label',
    line: null,
    title: stratum.description,
    at: shown(sheet.window, top),
    diameter: null,
    rows: rowsOf(capital(stratum.principal?.name ?? stratum.description) || 'Not described', types.small, words, 2),
  }));
}

interface Heights {
  readonly top: number;
  readonly bottom: number;
  readonly denominator: number;
}

/** The elevations that the section shows, and a round scale at which every well's words find room. */
function heightsOf(hung: readonly HungWell[], rooms: readonly number[]): Heights {
  const top = hung.reduce(
    (most, { ground, sheet }) => Math.max(most, ground - sheet.window.top),
    Number.NEGATIVE_INFINITY,
  );
  const bottom = hung.reduce(
    (least, { ground, sheet }) => Math.min(least, ground - sheet.window.bottom),
    Number.POSITIVE_INFINITY,
  );
  const mmPerMetre = hung.reduce(
    (most, well, n) => {
      const { window } = well.sheet;
      return Math.max(most, labelsHeight(labelsOf(well, rooms[n] ?? 0)) / (window.bottom - window.top));
    },
    leastHeight / (top - bottom),
  );
  const usable = Math.min(mmPerMetre, mostHeight / (top - bottom));
  return { top, bottom, denominator: roundBelow(1000 / usable) };
}

/* The lines of a section come from several logs: none of them can be followed to one. */
const loose = (part: Part): Part => ({ ...part, line: null });

function groundParts(strip: Strip): Part[] {
  const { sheet, scale, x } = strip;
  const box = { x, y: yOf(scale, sheet.window.top), width: groundWidth, height: 0 };
  return lithologyColumn.parts(sheet, { scale, box, labels: [], frame: null });
}

function builtParts({ sheet, scale, x }: Strip): Part[] {
  const y = yOf(scale, sheet.window.top);
  const box = { x: x + groundWidth, y, width: wellWidth, height: yOf(scale, sheet.window.bottom) - y };
  return wellParts(wellFrame(sheet.well, scale, sheet.unit, box), sheet.record, sheet.pumping);
}

const leader = stroked('rule', 0.15);

/** The words of a well's layers, right of the well as built. */
function wordParts({ labels, scale, sheet, x }: Strip): Part[] {
  const [top, bottom] = [yOf(scale, sheet.window.top), yOf(scale, sheet.window.bottom)];
  const left = x + stripWidth + wordsGap;
  return placeLabels(labels, (depth) => yOf(scale, depth), top, bottom, 0).map((placed) => ({
    name: 'section-label',
    line: null,
    title: placed.label.title,
    shapes: [
      ...(placed.from === null
        ? []
        : [
            line(
              [
                [x + groundWidth, placed.from],
                [x + stripWidth, placed.from],
                [left, placed.top + 0.4],
                [left + 6, placed.top + 0.4],
              ],
              leader,
            ),
          ]),
      ...labelText(placed, left),
    ],
  }));
}

function namePart({ well, ground, sheet, x, scale, room }: Strip): Part {
  const y = yOf(scale, sheet.window.top) - nameHeight + 1;
  const width = Math.min(room - 1.5, 60);
  const elevation = `ground ${metresText(ground, sheet.unit)}`;
  return {
    name: 'section-well',
    line: null,
    title: `${nameOf(well)}, ${elevation}, ${metresText(sheet.log.totalDepth ?? Number.NaN, sheet.unit)} deep`,
    shapes: [
      textRow(fitted(nameOf(well), types.head, width), x, y, types.head),
      textRow(fitted(elevation, types.small, width), x, y + rowHeight(types.head), types.small),
    ],
  };
}

interface Axis {
  readonly top: number;
  readonly foot: number;
  readonly scale: DepthScale;
  readonly unit: string;
}

function axisPart({ scale, unit, top, foot }: Axis, x: number, side: -1 | 1): Part {
  const ticks = axisTicks(scale, unit, -1, 0);
  const decimals = tickDecimals(ticks);
  const shapes: Shape[] = [
    line(
      [
        [x, top],
        [x, foot],
      ],
      stroked('ink', 0.3),
    ),
    ...ticks.flatMap(({ value, y, major }) => [
      line(
        [
          [x, y],
          [x + side * (major ? 2 : 1), y],
        ],
        stroked('ink', major ? 0.25 : 0.12),
      ),
      ...(major
        ? [
            textRow(
              numberText(value, decimals),
              x + side * 2.6,
              y - rowHeight(types.number) / 2,
              types.number,
              side < 0 ? 'end' : 'start',
            ),
          ]
        : []),
    ]),
  ];
  return { name: 'axis-elevation', line: null, title: `Elevation in ${unitName(unit)}`, shapes };
}

const joinStyle = stroked('quiet-ink', 0.25, [1.4, 1]);

/** Where the words beside a well end. */
const wordsEnd = ({ x, labels }: Strip): number =>
  x +
  stripWidth +
  wordsGap +
  labels.reduce((most, { rows }) => rows.reduce((more, row) => Math.max(more, textWidth(row.text, row.type)), most), 0);

/** A contact carried over to the next well: behind the well itself, then from behind its words on. */
const joinLines = (left: Strip, from: number, right: Strip, to: number): Shape[] => [
  line(
    [
      [left.x + groundWidth, from],
      [left.x + stripWidth, from],
    ],
    joinStyle,
  ),
  line(
    [
      [Math.min(wordsEnd(left) + 1, right.x - 1), from],
      [right.x, to],
    ],
    joinStyle,
  ),
];

/** Dashed lines between layers of neighbours that are taken for the same. */
function joinParts(strips: readonly Strip[]): Part[] {
  return strips.slice(1).flatMap((right, n) => {
    const left = strips[n];
    if (left === undefined) return [];
    return matchLayers(left.sheet.layers.layers, right.sheet.layers.layers).map((match) => ({
      name: 'join',
      line: null,
      title: `${capital(match.left.stratum.principal?.name ?? '')} of ${nameOf(left.well)} and of ${nameOf(right.well)}, joined`,
      shapes: (['top', 'bottom'] as const).flatMap((edge) =>
        joinLines(
          left,
          yOf(left.scale, shown(left.sheet.window, match.left[edge])),
          right,
          yOf(right.scale, shown(right.sheet.window, match.right[edge])),
        ),
      ),
    }));
  });
}

function noteTexts(
  strips: readonly Strip[],
  spacing: Spacing,
  heights: Heights,
  missing: readonly NamedWell[],
  join: boolean,
): string[] {
  const { denominator, metres } = spacing;
  const times = denominator === null ? null : denominator / heights.denominator;
  const unit = strips[0]?.sheet.unit ?? 'm';
  return [
    denominator === null || times === null
      ? `Elevations 1:${heights.denominator} when printed at full size. The wells stand evenly: their distances are not to scale.`
      : `Elevations 1:${heights.denominator}, distances 1:${denominator} when printed at full size: heights are drawn ${numberText(Number(times.toPrecision(2)), 0)} times larger. From well to well: ${(metres ?? []).map((each) => metresText(Math.round(each), unit)).join(', ')}. Widths of wells are not to scale.`,
    join
      ? 'Dashed: layers of one material in the same order joined from well to well. What lies between wells is a guess.'
      : 'What lies between the wells is not known, and is left open.',
    ...(missing.length === 0
      ? []
      : [`Without a ground elevation, and so not hung here: ${missing.map(nameOf).join(', ')}.`]),
  ];
}

/**
 * A section through wells in the order given, hung by the elevations of their grounds, each with its layers and as
 * built. Between them nothing is drawn unless `join` asks for layers of like material and order to be joined, dashed.
 */
export function wellSection(wells: readonly NamedWell[], join = false): Drawing {
  const { hung, loose: missing } = hungWells(wells);
  const spacing = spacingOf(hung);
  const rooms = spacing.offsets.map((offset, n) => (spacing.offsets[n + 1] ?? offset + leastSpacing + 14) - offset);
  const title = `Section through ${hung.length} ${hung.length === 1 ? 'well' : 'wells'}`;
  const left = margin + axisWidth + 4;
  const across = hung.length === 0 ? 100 : (spacing.offsets.at(-1) ?? 0) + (rooms.at(-1) ?? 0);
  const width = left + across + axisWidth + margin;
  const heights = hung.length === 0 ? { top: 0, bottom: -1, denominator: 1 } : heightsOf(hung, rooms);
  const mmPerMetre = 1000 / heights.denominator;
  const top = margin + headHeight + nameHeight;
  const strips = hung.map((well, n): Strip => {
    const scale = {
      window: well.sheet.window,
      top: top + (heights.top - (well.ground - well.sheet.window.top)) * mmPerMetre,
      mmPerMetre,
      denominator: heights.denominator,
    };
    const room = rooms[n] ?? leastSpacing;
    return { ...well, x: left + (spacing.offsets[n] ?? 0), room, scale, labels: labelsOf(well, room) };
  });
  const foot = top + (heights.top - heights.bottom) * mmPerMetre;
  const unit = hung[0]?.sheet.unit ?? 'm';
  const axis = {
    top,
    foot,
    unit,
    scale: {
      window: { top: -heights.top, bottom: -heights.bottom },
      top,
      mmPerMetre,
      denominator: heights.denominator,
    },
  };
  const legend = legendOf(
    groundEntries(hung.flatMap(({ sheet }) => sheet.log.strata)),
    margin,
    foot + 5,
    width - 2 * margin,
  );
  const notesTop = foot + 6 + legend.height;
  const notes = footParts(
    plainNotes(noteTexts(strips, spacing, heights, missing, join)),
    margin,
    notesTop,
    width - 2 * margin,
  );
  const head = { ...types.head, size: 3.6 };
  const tiles = hung.flatMap(({ sheet }) => tilesOf(sheet));
  return {
    widthMm: width,
    heightMm: notesTop + notes.height + margin,
    title,
    description: `${hung.map(({ well }) => nameOf(well)).join(', ')}, by the elevation of the ground.`,
    tiles: [...new Map(tiles.map((tile) => [tile.id, tile])).values()],
    parts: [
      {
        name: 'section-title',
        line: null,
        title,
        shapes: [
          textRow(title, margin, margin + 0.5, head),
          textRow(
            fitted(`Elevation, ${unitName(unit)}`, types.small, 60),
            margin,
            margin + headHeight - 3,
            types.small,
          ),
        ],
      },
      ...(hung.length === 0
        ? []
        : [axisPart(axis, margin + axisWidth, -1), axisPart(axis, width - margin - axisWidth, 1)]),
      ...(join ? joinParts(strips) : []),
      ...strips.flatMap((strip) =>
        [...wordParts(strip), ...groundParts(strip), ...builtParts(strip), namePart(strip)].map(loose),
      ),
      legend.part,
      ...notes.parts,
    ],
  };
}
