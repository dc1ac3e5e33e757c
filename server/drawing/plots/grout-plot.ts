import type { FillRecord, Record as WellRecord } from '../../record/record.ts';
import type { Drawing } from '../scene.ts';
import { type Box, line, outlined, type Part, rect, type Shape, type Style, stroked } from '../shapes.ts';
import { fitted, rowHeight, textRow, textWidth, types } from '../text.ts';
import { fillLook } from '../tiles/fill-tiles.ts';
import { wellName } from '../title.ts';
import { capital, intervalWithUnit, unitName, wordText } from '../words.ts';
import { linearAxis } from './axes.ts';

/* m³ in a cubic foot; exact, NIST SP 811 (2008), appendix B. */
const cubicFoot = 0.3048 ** 3;

interface Bar {
  readonly name: string;
  /** In m³. */
  readonly volume: number;
  readonly text: string;
  readonly style: Style;
}

interface Row {
  readonly line: number;
  readonly names: readonly string[];
  readonly bars: readonly Bar[];
}

const isVolume = (value: number | null): value is number =>
  value !== null && Number.isFinite(value) && value > 0 && value < 1e6;

const fillOf = ({ log }: WellRecord, fill: FillRecord) =>
  log.strings
    .find(({ number }) => number === fill.string)
    ?.fills.find(({ kind, number }) => kind === fill.kind && number === fill.number);

function rowOf(record: WellRecord, fill: FillRecord, shown: (volume: number) => string): Row[] {
  const { unit, strings } = { unit: record.log.units.depth, strings: record.log.strings };
  const id = `casing.${fill.string}.${fill.kind}.${fill.number}`;
  const textOf = (name: string, volume: number): string =>
    record.figures.find((figure) => figure.id === `${id}.${name}` && figure.value !== null)?.text ?? shown(volume);
  const written = fillOf(record, fill);
  const { tile } = fillLook(written?.fillClass ?? null);
  const placedStyle: Style = { ...outlined('paper', 'ink', 0.25), tile: tile.id };
  const allowance = fill.allowance > 0 ? `, with ${Math.round(fill.allowance * 100)} % allowed for` : '';
  const bars: Bar[] = [
    ...(isVolume(fill.required)
      ? [
          {
            name: `required${allowance}`,
            volume: fill.required,
            text: textOf('required-volume', fill.required),
            style: outlined('paper', 'ink', 0.25),
          },
        ]
      : []),
    ...(isVolume(fill.placed)
      ? [{ name: 'placed', volume: fill.placed, text: textOf('placed-volume', fill.placed), style: placedStyle }]
      : []),
  ];
  const string = strings.find(({ number }) => number === fill.string);
  const names = [
    `${capital(fill.kind)} of ${string?.kind ?? 'casing'} ${fill.string}`,
    [intervalWithUnit(written?.interval ?? null, unit), wordText(written?.material ?? null)].filter(Boolean).join(', '),
  ];
  return bars.length === 0 ? [] : [{ line: fill.line, names, bars }];
}

const width = 180;
const margin = 3;
const namesWidth = 46;
const headHeight = 8;
const barHeight = 4.2;
const barGap = 0.6;
const rowGap = 3;
const valueRoom = 62;
const annulusStyle = stroked('doubt', 0.35, [1, 0.6]);

const heightOf = ({ bars }: Row): number =>
  Math.max(2 * rowHeight(types.body), bars.length * (barHeight + barGap)) + rowGap;

function rowPart(row: Row, y: number, xOf: (volume: number) => number, left: number): Part {
  const names = row.names
    .filter((text) => text !== '')
    .map((text, n) =>
      textRow(
        fitted(text, n === 0 ? types.body : types.small, namesWidth - 3),
        margin,
        y + n * rowHeight(types.body),
        n === 0 ? types.body : types.small,
      ),
    );
  const farthest = row.bars.reduce((most, { volume }) => Math.max(most, xOf(volume)), left) + 1.5;
  const bars = row.bars.flatMap((bar, n): Shape[] => {
    const top = y + n * (barHeight + barGap);
    const end = xOf(bar.volume);
    return [
      rect(left, top, end - left, barHeight, bar.style),
      textRow(
        fitted(`${bar.text} ${bar.name}`, types.small, width - margin - farthest),
        farthest,
        top + (barHeight - rowHeight(types.small)) / 2,
        types.small,
      ),
    ];
  });
  const [required] = row.bars;
  const limit =
    required !== undefined && row.bars.length > 1
      ? [
          line(
            [
              [xOf(required.volume), y - 0.6],
              [xOf(required.volume), y + row.bars.length * (barHeight + barGap)],
            ],
            annulusStyle,
          ),
        ]
      : [];
  const title = `${row.names.filter(Boolean).join(', ')}: ${row.bars.map(({ name, text }) => `${name} ${text}`).join('; ')}`;
  return { name: 'grout-row', line: row.line, title, shapes: [...names, ...bars, ...limit] };
}

/** What the annulus of each fill required and what was placed, as bars; null where neither is known of any fill. */
export function groutPlot(record: WellRecord): Drawing | null {
  const isFeet = record.log.units.depth === 'ft';
  const [each, unit] = isFeet ? [cubicFoot, 'ft3'] : [1, 'm3'];
  const shown = (volume: number): string => `${Number((volume / each).toPrecision(3))} ${unitName(unit)}`;
  const rows = record.fills.flatMap((fill) => rowOf(record, fill, shown));
  if (rows.length === 0) return null;
  const most = rows.reduce((high, { bars }) => bars.reduce((more, { volume }) => Math.max(more, volume), high), 0);
  const left = margin + namesWidth;
  const body: Box = { x: left, y: margin + headHeight, width: width - margin - left - valueRoom, height: 0 };
  const axis = linearAxis(`Volume, ${unitName(unit)}`, [0, most / each], left, left + body.width);
  let y = body.y;
  const parts = rows.map((row) => {
    const part = rowPart(row, y, (volume) => axis.placeOf(volume / each), left);
    y += heightOf(row);
    return part;
  });
  const every = Math.max(
    1,
    ...axis.ticks.map(({ text }) => Math.ceil((textWidth(text, types.number) + 2) / (body.width / axis.ticks.length))),
  );
  const marks: Shape[] = axis.ticks.flatMap(({ at, text }, n) => [
    line(
      [
        [at, body.y - 1.5],
        [at, y],
      ],
      stroked('rule', 0.12),
    ),
    ...(n % every === 0 ? [textRow(text, at, y + 0.6, types.number, 'middle')] : []),
  ]);
  const title = `Fills of ${wellName(record.log.header)}: required and placed`;
  const head = { ...types.head, size: 3.2 };
  const tiles = rows.flatMap(({ line: at }) =>
    record.log.strings.flatMap(({ fills }) =>
      fills.filter((fill) => fill.line === at).map((fill) => fillLook(fill.fillClass).tile),
    ),
  );
  return {
    widthMm: width,
    heightMm: y + 2 * rowHeight(types.number) + 2 + margin,
    title,
    description: `${rows.length} ${rows.length === 1 ? 'fill' : 'fills'}; the dashed line is what was required.`,
    tiles: [...new Map(tiles.map((tile) => [tile.id, tile])).values()],
    parts: [
      {
        name: 'plot-title',
        line: null,
        title,
        shapes: [textRow(fitted(title, head, width - 2 * margin), margin, margin, head)],
      },
      {
        name: 'plot-frame',
        line: null,
        title: axis.title,
        shapes: [
          ...marks,
          textRow(axis.title, left + body.width / 2, y + 0.8 + rowHeight(types.number), types.body, 'middle'),
        ],
      },
      ...parts,
    ],
  };
}
