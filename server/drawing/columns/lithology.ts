import { isShown, shown, yOf } from '../depth-scale.ts';
import type { Extent } from '../depth-window.ts';
import { type Contact, gapsOf, type Layer } from '../layers.ts';
import { type Box, ellipse, filled, line, type Part, rect, type Shape, type Style, stroked, tiled } from '../shapes.ts';
import { textRow, types } from '../text.ts';
import { stratumTile } from '../tiles/second-materials.ts';
import { intervalWithUnit, metresText } from '../words.ts';
import type { Column, ColumnPlace } from './column.ts';

const contactStyles: Readonly<{ [C in Contact]: Style }> = {
  sharp: stroked('ink', 0.3),
  approximate: stroked('ink', 0.3, [1.6, 1]),
  doubtful: stroked('ink', 0.3, [0.7, 0.9]),
};

/** A layer in words. */
export const layerTitle = ({ stratum }: Pick<Layer, 'stratum'>, unit: string): string =>
  `${intervalWithUnit(stratum.interval, unit)}: ${stratum.description || 'not described'}`;

const isUnknown = (layer: Layer): boolean => layer.stratum.ground === null || layer.stratum.ground.class === 'unknown';

function layerPart(layer: Layer, { scale, box }: ColumnPlace, unit: string): Part {
  const [top, bottom] = [yOf(scale, shown(scale.window, layer.top)), yOf(scale, shown(scale.window, layer.bottom))];
  const middle = (top + bottom) / 2;
  const hasRoom = bottom - top > types.doubt.size;
  const query =
    isUnknown(layer) && hasRoom
      ? [textRow('?', box.x + box.width / 2, middle - types.doubt.size / 2, types.doubt, 'middle')]
      : [];
  return {
    name: 'layer',
    line: layer.stratum.line,
    title: layerTitle(layer, unit),
    shapes: [rect(box.x, top, box.width, bottom - top, tiled(stratumTile(layer.stratum).id)), ...query],
  };
}

const gapSide = stroked('doubt', 0.2, [0.8, 0.8]);

/** A stretch of which nobody logged the ground: open, with a query. */
function gapPart(gap: Extent, { scale, box }: ColumnPlace, unit: string): Part {
  const [top, bottom] = [yOf(scale, shown(scale.window, gap.top)), yOf(scale, shown(scale.window, gap.bottom))];
  const query = textRow('?', box.x + box.width / 2, (top + bottom - types.doubt.size) / 2, types.doubt, 'middle');
  return {
    name: 'gap',
    line: null,
    title: `No ground logged from ${metresText(gap.top, unit)} to ${metresText(gap.bottom, unit)}`,
    shapes: [
      ...[box.x, box.x + box.width].map((x) =>
        line(
          [
            [x, top],
            [x, bottom],
          ],
          gapSide,
        ),
      ),
      ...(bottom - top > types.doubt.size ? [query] : []),
    ],
  };
}

const side = stroked('ink', 0.15);
const queryWidth = 2.6;

/** A contact across a box: full, dashed, or dashed with a query. */
export function contactShapes(box: Box, y: number, contact: Contact): Shape[] {
  const [left, right] = [box.x, box.x + box.width];
  const style = contactStyles[contact];
  if (contact !== 'doubtful')
    return [
      line(
        [
          [left, y],
          [right, y],
        ],
        style,
      ),
    ];
  const middle = (left + right) / 2;
  return [
    line(
      [
        [left, y],
        [middle - queryWidth / 2, y],
      ],
      style,
    ),
    ellipse(middle, y, queryWidth / 2, queryWidth / 2, filled('paper')),
    textRow('?', middle, y - types.doubt.size / 2, types.doubt, 'middle'),
    line(
      [
        [middle + queryWidth / 2, y],
        [right, y],
      ],
      style,
    ),
  ];
}

const surer = (a: Contact, b: Contact): Contact =>
  a === 'sharp' ? b : a === 'approximate' && b === 'doubtful' ? b : a;

interface ContactMark {
  readonly depth: number;
  readonly contact: Contact;
  readonly line: number;
}

/** One mark for each contact: where the base above and the top below are one, the doubt of either counts. */
function contactsOf(layers: readonly Layer[]): ContactMark[] {
  const marks = new Map<number, ContactMark>();
  const add = (depth: number, contact: Contact, at: number): void => {
    const before = marks.get(depth);
    marks.set(depth, { depth, line: before?.line ?? at, contact: before ? surer(before.contact, contact) : contact });
  };
  for (const layer of layers) {
    add(layer.bottom, layer.bottomContact, layer.stratum.line);
    if (layer.top !== 0) add(layer.top, layer.topContact, layer.stratum.line);
  }
  return [...marks.values()].sort((a, b) => a.depth - b.depth);
}

/** Stretches of layers that meet. */
function loggedStretches(layers: readonly Layer[], window: Extent): Extent[] {
  const stretches: { top: number; bottom: number }[] = [];
  for (const layer of layers) {
    const [top, bottom] = [shown(window, layer.top), shown(window, layer.bottom)];
    const last = stretches.at(-1);
    if (last && top <= last.bottom) last.bottom = Math.max(last.bottom, bottom);
    else stretches.push({ top, bottom });
  }
  return stretches;
}

/** The sides of the column, as far as there are layers, and the surface where one begins there. */
function sidesPart(layers: readonly Layer[], { scale, box }: ColumnPlace): Part {
  const surface = layers.some(({ top }) => top === 0) && isShown(scale.window, 0);
  const across = (depth: number, style: Style): Shape =>
    line(
      [
        [box.x, yOf(scale, depth)],
        [box.x + box.width, yOf(scale, depth)],
      ],
      style,
    );
  const sides = loggedStretches(layers, scale.window).flatMap(({ top, bottom }) =>
    [box.x, box.x + box.width].map((x) =>
      line(
        [
          [x, yOf(scale, top)],
          [x, yOf(scale, bottom)],
        ],
        side,
      ),
    ),
  );
  const shapes = [...(surface ? [across(0, contactStyles.sharp)] : []), ...sides];
  return { name: 'sides', line: null, title: 'Logged ground', shapes };
}

const layersShown = (layers: readonly Layer[], window: Extent): Layer[] =>
  layers.filter((layer) => layer.bottom > window.top && layer.top < window.bottom);

/** The layers by their patterns, and the contacts between them. */
export const lithologyColumn: Column = {
  id: 'lithology',
  heading: () => 'Ground',
  subheading: () => '',
  width: 13.5,
  grows: false,
  rise: 0,
  isNeeded: () => true,
  labels: () => [],
  parts: ({ log, layers, unit, window }, place) => [
    ...layersShown(layers.layers, window).map((layer) => layerPart(layer, place, unit)),
    ...gapsOf(layers.layers, log.totalDepth)
      .filter(({ top, bottom }) => top < window.bottom && bottom > window.top)
      .map((gap) => gapPart(gap, place, unit)),
    sidesPart(layersShown(layers.layers, window), place),
    ...contactsOf(layers.layers)
      .filter(({ depth }) => depth >= window.top && depth <= window.bottom)
      .map(({ depth, contact, line: at }) => ({
        name: `contact-${contact}`,
        line: at,
        title: `Contact, ${contact}`,
        shapes: contactShapes(place.box, yOf(place.scale, depth), contact),
      })),
  ],
};
