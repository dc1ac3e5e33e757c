import type { Depth, Interval } from '../../model/log.ts';
import { type Label, labelText, type PlacedLabel, rowsOf } from '../labels.ts';
import { ellipse, filled, line, type Part, type Shape, stroked } from '../shapes.ts';
import type { Sheet } from '../sheet.ts';
import { type Type, types } from '../text.ts';
import { cutTitle } from '../well/cuts.ts';
import { fillTitle } from '../well/fills.ts';
import { centralizersTitle, fittingTitle } from '../well/fittings.ts';
import { xAt } from '../well/frame.ts';
import { type DrawnString, holeAt } from '../well/geometry.ts';
import { holeTitle } from '../well/hole.ts';
import { pumpTitle } from '../well/pump.ts';
import { screenTitle, stringTitle } from '../well/strings.ts';
import { lostDepth, lostTitle } from '../well/trouble-marks.ts';
import { drawnLevels, foundDepth, foundTitle, levelTitle } from '../well/water-marks.ts';
import { unitName } from '../words.ts';
import type { Column, ColumnPlace } from './column.ts';

interface Note {
  readonly line: number;
  readonly title: string;
  readonly at: number | null;
  readonly diameter: number | null;
  readonly type: Type;
}

const metresOf = (depth: Depth | null | undefined): number | null =>
  depth?.value != null && Number.isFinite(depth.value) ? depth.value : null;

/** A depth within the interval, at a share of the way down. */
function within(interval: Interval | null, share: number): number | null {
  const [top, bottom] = [metresOf(interval?.top), metresOf(interval?.bottom)];
  if (top === null || bottom === null) return top ?? bottom;
  return top + share * (bottom - top);
}

const note = (
  line: number,
  title: string,
  at: number | null,
  diameter: number | null,
  type: Type = types.body,
): Note => ({
  line,
  title,
  at,
  diameter,
  type,
});

const holeNotes = ({ well, log }: Sheet): Note[] =>
  well.hole.map((stretch) =>
    note(
      stretch.line,
      holeTitle(log, stretch.line),
      stretch.top + 0.75 * (stretch.bottom - stretch.top),
      stretch.diameter,
      types.small,
    ),
  );

/* A screen that is a string of its own is told of once, as a screen. */
const isOneScreen = ({ kind, screens }: DrawnString['string']): boolean => kind === 'screen' && screens.length > 0;

function stringNotes({ unit }: Sheet, drawn: DrawnString): Note[] {
  const { string, outer } = drawn;
  const { shoe, centralizers } = string;
  return [
    ...(isOneScreen(string)
      ? []
      : [note(string.line, stringTitle(string, unit), drawn.top + 0.12 * (drawn.bottom - drawn.top), outer)]),
    ...(shoe === null
      ? []
      : [note(shoe.line, fittingTitle('Shoe', shoe, unit), metresOf(shoe.depth) ?? drawn.bottom, outer)]),
    ...(centralizers === null
      ? []
      : [note(centralizers.line, centralizersTitle(string, unit), metresOf(centralizers.positions[0]), outer)]),
    ...string.screens.map((screen) =>
      note(screen.line, screenTitle(screen, unit), within(screen.interval, 0.5), outer),
    ),
    ...string.packers.map((packer) =>
      note(packer.line, fittingTitle('Packer', packer, unit), metresOf(packer.depth), outer),
    ),
    ...string.pitless.map((pitless) =>
      note(pitless.line, fittingTitle('Pitless adapter', pitless, unit), metresOf(pitless.depth), outer),
    ),
    ...string.cuts.map((cut) => note(cut.line, cutTitle(cut, unit), metresOf(cut.to), outer)),
    ...string.fills.map((fill) =>
      note(fill.line, fillTitle(fill, unit), metresOf(fill.depth) ?? within(fill.interval, 0.55), null),
    ),
  ];
}

const waterNotes = ({ log, unit }: Sheet): Note[] => [
  ...log.water.found.map((found) => note(found.line, foundTitle(found, unit), foundDepth(found), null, types.water)),
  ...drawnLevels(log).map((level) => note(level.line, levelTitle(level, unit), metresOf(level.level), 0, types.water)),
  ...log.water.gas.map((gas) => note(gas.line, fittingTitle('Gas', gas, unit), metresOf(gas.depth), null)),
  ...log.drilling.flatMap((drilling) =>
    drilling.lost.map((lost) => note(lost.line, lostTitle(lost, unit), lostDepth(lost), null)),
  ),
];

function otherNotes({ log, unit, well, pumping, window }: Sheet): Note[] {
  const top = well.strings.reduce((least, each) => Math.min(least, each.top), 0);
  return [
    ...log.caps.slice(-1).map((cap) => note(cap.line, fittingTitle('Cap', cap, unit), top, 0)),
    ...pumping.map((each) => note(each.line, each.title, each.depth, 0, types.water)),
    ...log.abandonments.flatMap(({ fills }) =>
      fills.map((fill) => note(fill.line, fillTitle(fill, unit), within(fill.interval, 0.5), 0)),
    ),
    ...log.pumps.flatMap((pump) =>
      pump.set === null
        ? []
        : [note(pump.line, pumpTitle(pump, unit), Math.min(metresOf(pump.set) ?? window.bottom, window.bottom), 0)],
    ),
  ];
}

const notesOf = (sheet: Sheet): Note[] => [
  ...holeNotes(sheet),
  ...sheet.well.strings.flatMap((drawn) => stringNotes(sheet, drawn)),
  ...waterNotes(sheet),
  ...otherNotes(sheet),
];

const gutter = 5.5;

const labelOf = (each: Note, width: number, { window }: Sheet): Label => ({
  name: each.type === types.water ? 'note-water' : 'note',
  line: each.line,
  title: each.title,
  at: each.at === null || !Number.isFinite(each.at) ? null : Math.min(Math.max(each.at, window.top), window.bottom),
  diameter: each.diameter,
  rows: rowsOf(each.title, each.type, width - gutter - 1, 4),
});

const leader = stroked('quiet-ink', 0.13);

/** Where a leader starts: on the part itself, or at the edge of the column where the well is not drawn. */
function startOf({ label, from }: PlacedLabel, { frame, box, scale }: ColumnPlace): number {
  if (frame === null || from === null) return box.x;
  const depth = scale.window.top + (from - scale.top) / scale.mmPerMetre;
  return xAt(frame, label.diameter ?? holeAt(frame.well, depth)?.diameter ?? frame.well.widest, 1);
}

function leaderShapes(placed: PlacedLabel, place: ColumnPlace): Shape[] {
  if (placed.from === null) return [];
  const first = placed.label.rows[0];
  const y = placed.top + 0.45 + (first?.type.size ?? 0) * 0.63;
  const start = startOf(placed, place);
  const { x } = place.box;
  return [
    line(
      [
        [start, placed.from],
        [x, placed.from],
        [x + gutter - 2.2, y],
        [x + gutter - 0.6, y],
      ],
      leader,
    ),
    ellipse(start, placed.from, 0.3, 0.3, filled('quiet-ink')),
  ];
}

/** What the parts of the well are, in words, with leaders to them. */
export const notesColumn: Column = {
  id: 'notes',
  heading: () => 'Construction and water',
  subheading: ({ unit }) => `depths in ${unitName(unit)}`,
  width: 41,
  grows: true,
  rise: 0.5,
  isNeeded: () => true,
  labels: (sheet, width) => notesOf(sheet).map((each) => labelOf(each, width, sheet)),
  parts: (_, place): Part[] =>
    place.labels.map((placed) => ({
      name: placed.label.name,
      line: placed.label.line,
      title: placed.label.title,
      shapes: [...leaderShapes(placed, place), ...labelText(placed, place.box.x + gutter)],
    })),
};
