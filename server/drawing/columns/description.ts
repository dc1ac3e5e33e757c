import type { Stratum } from '../../model/log.ts';
import { shown } from '../depth-scale.ts';
import { type Label, labelText, type PlacedLabel, rowsOf } from '../labels.ts';
import { line, type Part, stroked } from '../shapes.ts';
import { textRow, textWidth, types } from '../text.ts';
import { capital, fieldText, intervalText, unitName } from '../words.ts';
import type { Column, ColumnPlace } from './column.ts';
import { layerTitle } from './lithology.ts';

/* Room for the leaders, and the most for the depths before the words, in mm. */
const gutter = 4.5;
const mostDepths = 16;
const depthsGap = 1.5;

/** Room that the depths of these layers take before the words. */
const depthsWidth = (strata: readonly Stratum[], unit: string): number =>
  Math.min(
    mostDepths,
    strata.reduce((most, { interval }) => Math.max(most, textWidth(intervalText(interval, unit), types.small)), 0) +
      depthsGap,
  );

function labelOf(stratum: Stratum, at: number | null, unit: string, room: number): Label {
  const remark = fieldText(stratum.remark);
  return {
    name: 'description',
    line: stratum.line,
    title: layerTitle({ stratum }, unit),
    at,
    diameter: null,
    rows: [
      ...rowsOf(capital(stratum.description) || 'Not described', types.body, room, 6),
      ...rowsOf(remark, types.remark, room, 3),
    ],
  };
}

const leader = stroked('rule', 0.2);

function leaderShapes(placed: PlacedLabel, { box }: ColumnPlace) {
  if (placed.from === null) return [];
  const y = placed.top;
  return [
    line(
      [
        [box.x, placed.from],
        [box.x + gutter - 1, y],
        [box.x + box.width, y],
      ],
      leader,
    ),
  ];
}

function depthsRow(stratum: Stratum | undefined, placed: PlacedLabel, place: ColumnPlace, unit: string, width: number) {
  const text = stratum ? intervalText(stratum.interval, unit) : '';
  const type = {
    ...types.small,
    size: Math.min(
      types.small.size,
      (types.small.size * (width - depthsGap)) / Math.max(textWidth(text, types.small), 0.1),
    ),
  };
  return textRow(text, place.box.x + gutter, placed.top + 0.6, type);
}

/** What the layers are, in words, none over another, with leaders to the tops of their layers. */
export const descriptionColumn: Column = {
  id: 'description',
  heading: () => 'Description',
  subheading: ({ unit }) => `depths in ${unitName(unit)}`,
  width: 43,
  grows: true,
  rise: 0,
  isNeeded: () => true,
  labels: ({ log, layers, unit, window }, width) => {
    const room = width - gutter - depthsWidth(log.strata, unit) - 1;
    return [
      ...layers.layers.map(({ stratum, top }) => labelOf(stratum, shown(window, top), unit, room)),
      ...layers.unplaced.map((stratum) => labelOf(stratum, null, unit, room)),
    ];
  },
  continued: ({ log, layers, unit }, width, depth) => {
    const room = width - gutter - depthsWidth(log.strata, unit) - 1;
    return layers.layers
      .filter(({ top, bottom }) => top < depth && bottom > depth)
      .map(({ stratum }) => ({
        name: 'description',
        line: stratum.line,
        title: `${layerTitle({ stratum }, unit)}, continued`,
        at: depth,
        diameter: null,
        rows: rowsOf(`${capital(stratum.description) || 'Not described'} (continued)`, types.body, room, 2),
      }));
  },
  parts: ({ log, unit }, place): Part[] => {
    const byLine = new Map(log.strata.map((stratum) => [stratum.line, stratum]));
    const depths = depthsWidth(log.strata, unit);
    return place.labels.map((placed) => ({
      name: 'description',
      line: placed.label.line,
      title: placed.label.title,
      shapes: [
        ...leaderShapes(placed, place),
        depthsRow(byLine.get(placed.label.line ?? -1), placed, place, unit, depths),
        ...labelText(placed, place.box.x + gutter + depths),
      ],
    }));
  },
};
