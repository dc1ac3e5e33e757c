import type { Stratum } from '../model/log.ts';
import { contactShapes } from './columns/lithology.ts';
import type { Contact } from './layers.ts';
import { ellipse, filled, line, outlined, type Part, polygon, rect, type Shape, stroked, type Tile } from './shapes.ts';
import type { Sheet } from './sheet.ts';
import { fitted, rowHeight, textRow, textWidth, types } from './text.ts';
import { fillLook } from './tiles/fill-tiles.ts';
import { shownWith, stratumTile } from './tiles/second-materials.ts';
import { cutStyle } from './well/cuts.ts';
import { doubtSpots } from './well/doubts.ts';
import { pumpShapes } from './well/pump.ts';
import { capital } from './words.ts';

/** One swatch of a legend and what it means. */
export interface LegendEntry {
  readonly text: string;
  readonly swatch: (x: number, y: number) => Shape[];
}

const swatchWidth = 8;
const swatchHeight = 4.2;

const tileSwatch =
  (tile: Tile) =>
  (x: number, y: number): Shape[] => [
    rect(x, y, swatchWidth, swatchHeight, { ...filled('paper'), tile: tile.id, stroke: 'ink', width: 0.15 }),
  ];

/** What the pattern of a layer stands for: its material, and the others that show in it. */
function groundName(stratum: Stratum): string {
  const { ground, principal } = stratum;
  if (ground === null || ground.class === 'unknown') return 'not recorded';
  const second = shownWith(stratum);
  const name = principal?.name ?? ground.class;
  return second.length === 0 ? name : `${name} with ${second.join(' and ')}`;
}

/** The grounds of the log, each pattern once, under the names of its materials. */
export function groundEntries(strata: readonly Stratum[]): LegendEntry[] {
  const names = new Map<string, { tile: Tile; names: string[] }>();
  for (const stratum of strata) {
    const tile = stratumTile(stratum);
    const entry = names.get(tile.id) ?? { tile, names: [] };
    const name = groundName(stratum);
    if (!entry.names.includes(name) && entry.names.length < 3) entry.names.push(name);
    names.set(tile.id, entry);
  }
  return [...names.values()].map((entry) => ({
    text: capital(entry.names.join(', ')),
    swatch: tileSwatch(entry.tile),
  }));
}

function fillEntries({ log }: Sheet): LegendEntry[] {
  const fills = [...log.strings.flatMap((string) => string.fills), ...log.abandonments.flatMap(({ fills }) => fills)];
  const looks = new Map(fills.map((fill) => [fillLook(fill.fillClass).name, fillLook(fill.fillClass)]));
  return [...looks.values()].map(({ name, tile }) => ({ text: name, swatch: tileSwatch(tile) }));
}

const staticSwatch = (x: number, y: number): Shape[] => [
  line(
    [
      [x, y + 3],
      [x + swatchWidth, y + 3],
    ],
    stroked('water', 0.3),
  ),
  polygon(
    [
      [x + 4, y + 3],
      [x + 2.6, y + 0.8],
      [x + 5.4, y + 0.8],
    ],
    filled('water'),
  ),
];

const pumpingSwatch = (x: number, y: number): Shape[] => [
  line(
    [
      [x, y + 3],
      [x + swatchWidth, y + 3],
    ],
    stroked('water', 0.3, [1, 0.6]),
  ),
  polygon(
    [
      [x + 4, y + 3],
      [x + 2.6, y + 0.8],
      [x + 5.4, y + 0.8],
    ],
    outlined('paper', 'water', 0.3),
  ),
];

const foundSwatch = (x: number, y: number): Shape[] => [
  line(
    [
      [x, y + 2.1],
      [x + 5, y + 2.1],
    ],
    stroked('water', 0.45),
  ),
  polygon(
    [
      [x + 7, y + 2.1],
      [x + 5, y + 1.2],
      [x + 5, y + 3],
    ],
    filled('water'),
  ),
];

const slottedSwatch = (x: number, y: number): Shape[] => [
  rect(x + 2.5, y, 3, swatchHeight, outlined('paper', 'ink', 0.18)),
  ...[0.7, 1.6, 2.5, 3.4].map((down) =>
    line(
      [
        [x + 2.5, y + down],
        [x + 5.5, y + down],
      ],
      stroked('ink', 0.22),
    ),
  ),
];

const gasSwatch = (x: number, y: number): Shape[] => [
  ellipse(x + 4, y + 2.2, 0.8, 0.8, outlined('paper', 'doubt', 0.3)),
];

const signSwatch =
  (sign: string) =>
  (x: number, y: number): Shape[] => [textRow(sign, x + 4, y + 0.6, types.doubt, 'middle')];

const contactSwatch =
  (contact: Contact) =>
  (x: number, y: number): Shape[] =>
    contactShapes({ x, y, width: swatchWidth, height: swatchHeight }, y + swatchHeight / 2, contact);

const contactNames: Readonly<{ [C in Contact]: string }> = {
  sharp: 'Sharp contact',
  approximate: 'Approximate contact (~)',
  doubtful: 'Doubtful contact (?)',
};

/** The sorts of contact, where there is more than the sharp one. */
function contactEntries({ layers }: Sheet): LegendEntry[] {
  const there = new Set(layers.layers.flatMap((layer) => [layer.topContact, layer.bottomContact]));
  const sorts = (['sharp', 'approximate', 'doubtful'] as const).filter((contact) => there.has(contact));
  if (there.size === 0 || (there.size === 1 && there.has('sharp'))) return [];
  return sorts.map((contact) => ({ text: contactNames[contact], swatch: contactSwatch(contact) }));
}

const cutSwatch = (x: number, y: number): Shape[] => [
  line(
    [
      [x + 4, y],
      [x + 4, y + swatchHeight],
    ],
    cutStyle,
  ),
];

const pumpSwatch = (x: number, y: number): Shape[] => pumpShapes(x + 4, y + 0.2, y + swatchHeight);

function markEntries({ log, pumping, well }: Sheet): LegendEntry[] {
  const signs = new Set(doubtSpots(well, log, pumping).map(({ sign }) => sign));
  const slotted = log.strings.some(
    (string) => string.screens.length + string.perforated.length > 0 || string.kind === 'screen',
  );
  const entries: (readonly [boolean, LegendEntry])[] = [
    [log.water.found.length > 0, { text: 'Water found', swatch: foundSwatch }],
    [log.water.levels.length > 0, { text: 'Static water level', swatch: staticSwatch }],
    [pumping.length > 0, { text: 'Pumping water level', swatch: pumpingSwatch }],
    [slotted, { text: 'Screen or slotted pipe', swatch: slottedSwatch }],
    [log.water.gas.length > 0, { text: 'Gas', swatch: gasSwatch }],
    [log.strings.some(({ cuts }) => cuts.length > 0), { text: 'Cut off', swatch: cutSwatch }],
    [log.pumps.some(({ set }) => set !== null), { text: 'Pump', swatch: pumpSwatch }],
    [signs.has('~'), { text: 'Approximate place (~)', swatch: signSwatch('~') }],
    [signs.has('?') || log.questions.length > 0, { text: 'Not recorded, or doubtful', swatch: signSwatch('?') }],
  ];
  return entries.filter(([needed]) => needed).map(([, entry]) => entry);
}

interface Placed {
  readonly entry: LegendEntry;
  readonly x: number;
  readonly row: number;
}

const rowPitch = swatchHeight + 1.6;
const longestName = 52;

const entryWidth = (entry: LegendEntry): number =>
  swatchWidth + 1.6 + Math.min(textWidth(entry.text, types.small), longestName) + 5;

function flowed(entries: readonly LegendEntry[], width: number): Placed[] {
  let [x, row] = [0, 0];
  return entries.map((entry) => {
    const needed = entryWidth(entry);
    if (x > 0 && x + needed > width) [x, row] = [0, row + 1];
    const placed = { entry, x, row };
    x += needed;
    return placed;
  });
}

/** A legend in rows at most `width` mm wide. */
export function legendOf(
  entries: readonly LegendEntry[],
  left: number,
  top: number,
  width: number,
): { part: Part; height: number } {
  const placed = flowed(entries, width);
  const shapes = placed.flatMap(({ entry, x, row }) => {
    const y = top + row * rowPitch;
    const textTop = y + (swatchHeight - rowHeight(types.small)) / 2;
    return [
      ...entry.swatch(left + x, y),
      textRow(fitted(entry.text, types.small, longestName), left + x + swatchWidth + 1.6, textTop, types.small),
    ];
  });
  const height = placed.length === 0 ? 0 : ((placed.at(-1)?.row ?? 0) + 1) * rowPitch;
  return { part: { name: 'legend', line: null, title: 'Patterns and marks', shapes }, height };
}

const entriesOf = (sheet: Sheet): LegendEntry[] => [
  ...groundEntries(sheet.log.strata),
  ...contactEntries(sheet),
  ...fillEntries(sheet),
  ...markEntries(sheet),
];

/** What the patterns and marks of the drawing mean; only those that it uses. */
export const legendPart = (sheet: Sheet, left: number, top: number, width: number): { part: Part; height: number } =>
  legendOf(entriesOf(sheet), left, top, width);

/** The patterns that the sheet's drawing uses, each once. */
export function tilesOf({ log }: Sheet): Tile[] {
  const fills = [...log.strings.flatMap((string) => string.fills), ...log.abandonments.flatMap(({ fills }) => fills)];
  const tiles = [...log.strata.map(stratumTile), ...fills.map((fill) => fillLook(fill.fillClass).tile)];
  return [...new Map(tiles.map((tile) => [tile.id, tile])).values()];
}
