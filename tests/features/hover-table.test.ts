import { describe, expect, test } from 'vitest';
import { type Row, table } from '../../grammar/table.ts';
import type { Item, Line, Value } from '../../grammar/tree.ts';
import { amountsOf } from '../../server/features/amounts.ts';
import { hover } from '../../server/features/hover.ts';
import { wordsOf } from '../../server/features/words.ts';
import { snapshotOf } from './fixture.ts';

/** More that a row takes than its example shows, as lines that stand in its section. */
const more: Readonly<Record<string, readonly string[]>> = {
  ground: ['ground 287.4 m, NAVD88, accuracy 0.5'],
  place: ['place utm 17 713898 4943474, NAD83, accuracy 5 m'],
  casing: [
    'casing +0.45 - 7.2 steel 6 in sch 40, inside 154, coupling 187, grade A53 B, welded, driven, pulled 2026-05-06',
    'casing 0 - 20 pvc nominal 5 in sdr 21, od 141.3, perforated 10 - 12, set 2026-05-04',
  ],
  grout: [
    'grout 0 - 7.2 neat cement, 0.29 m3, 40 kg, 12 L water, 1830 kg/m3, solids 20 %, gel 2 %, 300 kPa, plug inside 0.5, returned 20 L, top-up 10 L, settled 0.3',
    'grout 0 - 7 neat cement, water 120 L',
  ],
  pack: ['pack 27 - 36 20/40, grain 0.6, d50 0.6'],
  screen: [
    'screen 30 - 36 stainless 114.3, slot 0.5, open area 12 %, wire-wound',
    'screen 30 - 36 pvc 114.3, slot #20',
  ],
  'hole.line': ['0 - 30 254 reamed from 152, tricone, 2026-05-04'],
  'strata.line': ['0 - 3 silty gravel, brown, to 60 mm, at 1.5'],
  drilling: ['drilling air 21 m3/min 2400 kPa, pipe 114, bit 152, down-the-hole hammer'],
  'drilling.line': ['7.2 - 13.2 18 min foam 12 L/min 900 kPa, bit 150, air rotary, 2026-05-05 07:00 - 08:00'],
  'water.line': ['38.5 fresh, total 25 L/min, 2026-05-05'],
  test: ['test blow 40 L/min, stem 50, 1 h, 2026-05-07 08:00, toc'],
  'test.line': ['60 dd 5.3, 40 L/min'],
  quality: ['quality 38.5 clear, iron 0.4 mg/L, pH 7.2, 2026-05-05'],
  flowing: ['flowing 35 L/min, shut-in 1.2, valve, 2026-05-05'],
  disinfection: ['disinfection 100 mg/L, 12 h, 2026-05-08, hypochlorite, 12 %, 2 L'],
  development: ['development air, 3 h, 50 L/min, sand <5 mg/L, clear, 2026-05-05'],
  hydrofracture: ['hydrofracture 40 - 61, 14 MPa, before 2 L/min, after 15 L/min, 2026-05-05'],
  pump: ['pump submersible 0.56 kW, set 45, 40 L/min, 2026-05-05'],
  abandonment: ['abandonment 2026-06-01, reason dry'],
  shoe: ['shoe 7.2 drive shoe'],
  recovery: ['recovery 60'],
  observed: ['observed OW-1, r 30 m, dd'],
  centralizers: ['centralizers 1.5 4 6.7, every 3'],
};

/** The line of a row within a log that lets it be read. */
function logOf(row: Row, line: string): string {
  const [section = ''] = row.of;
  if (section === '') return line;
  const head = section === 'casing' ? 'casing 0 - 60 steel 168.3 x 6.4' : section;
  return row.id === 'screen' || row.of.includes('casing')
    ? `casing 0 - 60 steel 168.3 x 6.4\n  ${line}`
    : `${head}\n  ${line}`;
}

const examplesOf = (row: Row): readonly string[] => {
  const own = row.example.split('\n');
  return [
    ...(own.length > 1 ? [row.example] : [logOf(row, row.example)]),
    ...(more[row.id] ?? []).map((line) => logOf(row, line)),
  ];
};

const leafOf = (value: Value): Value =>
  value.kind === 'product' ? value.factors[0] : value.kind === 'list' ? (value.values[0] ?? value) : value;

const columnIn = ({ value }: Item, line: Line): number => {
  const word = wordsOf(line).find(({ start }) => start >= value.start && start < value.end);
  return value.kind === 'description' ? (word?.start ?? value.start) : leafOf(value).start;
};

interface Place {
  readonly slot: string;
  readonly row: string;
  readonly markdown: string | null;
  readonly shown: string;
  readonly item: Item;
}

function placesOf(row: Row): readonly Place[] {
  return examplesOf(row).flatMap((text) => {
    const snapshot = snapshotOf(text);
    return snapshot.tree.lines.flatMap((line, number) =>
      line.row === row.id || (row.id === line.section && line.row?.startsWith(row.id))
        ? line.items.map((item) => ({
            slot: item.slot,
            row: line.row ?? '',
            item,
            shown: `${row.id}: ${line.text.slice(item.value.start, item.value.end)}`,
            markdown: hover(snapshot, { line: number, column: columnIn(item, line) })?.markdown ?? null,
          }))
        : [],
    );
  });
}

const places = table.flatMap(placesOf);

describe('a hover on every slot of the table', () => {
  test('there are examples of nearly all of them', () => {
    const seen = new Set(places.map(({ row, slot }) => `${row} ${slot}`));
    const borrowed = new Set(['liner', 'seal', 'plug', 'abandonment.line']);
    const all = table
      .filter(({ id }) => !borrowed.has(id))
      .flatMap(({ id, slots }) => slots.map(({ slot }) => `${id} ${slot}`));
    expect(all.filter((name) => seen.has(name)).length / all.length).toBeGreaterThan(0.75);
  });

  test.each(
    table
      .flatMap((row) => row.slots.map((slot) => [row, slot] as const))
      .map(([row, slot]) => [`${row.id} ${slot.slot}`, row, slot] as const),
  )('%s says something of it', (_, row, slot) => {
    for (const { markdown, shown, item } of places.filter((each) => each.row === row.id && each.slot === slot.slot)) {
      expect(markdown, shown).not.toBeNull();
      if (item.value.kind === 'term')
        expect(markdown?.toLowerCase(), shown).toContain(item.value.term.name.split(/[ (-]/)[0]?.toLowerCase());
      if (item.value.kind === 'quantity' && item.value.unit !== null && !item.value.unit.gallon)
        expect(markdown, shown).toMatch(/SI: |count/);
    }
  });

  test('bare numbers of a place are in the units of the file', () => {
    const bare = places.filter(
      ({ item }) => item.value.kind === 'quantity' && item.value.unit === null && item.value.number !== null,
    );
    const lengths = bare.filter(({ row, slot }) => {
      const found = table.find(({ id }) => id === row)?.slots.find((each) => each.slot === slot);
      return found?.bare === 'depth' || found?.bare === 'diameter';
    });
    expect(lengths.length).toBeGreaterThan(20);
    for (const { markdown, shown } of lengths) expect(markdown, shown).toMatch(/ft|in\b/);
  });
});

test('every number on the examples is one that a hover can be asked of', () => {
  const lines = table.flatMap((row) => snapshotOf(logOf(row, row.example)).tree.lines);
  expect(lines.flatMap(amountsOf).length).toBeGreaterThan(60);
});
