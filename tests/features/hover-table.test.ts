import { describe, expect, test } from 'vitest';
import { type Row, rowById, type Slot, table } from '../../grammar/table.ts';
import { descriptionLists, termLists } from '../../grammar/terms/index.ts';
import type { ListId, Term } from '../../grammar/terms/term.ts';
import type { Item, Line, Value } from '../../grammar/tree.ts';
import { amountsOf } from '../../server/features/amounts.ts';
import { hover } from '../../server/features/hover.ts';
import { escapeMarkdown } from '../../server/features/markdown.ts';
import { termsOf, wordsOf } from '../../server/features/words.ts';
import { snapshotOf } from './fixture.ts';

const fills =
  'neat cement, 0.29 m3, 9 x 40 kg bags, w/c 0.5, water 120 L, 1830 kg/m3, solids 20 %, gel 2 %, montmorillonite 80 %, grain 10, tremie, pipe at 7, 300 kPa, 2026-05-05 09:30, plug inside 0.5, returned 20 L, top-up 10 L, settled 0.3';
const bags = 'bentonite chips, 8 bags, 22.7 kg';
const weighed = 'sand, total 400 kg';
const pipe =
  'sch 40, sdr 26, nominal 6, od 168.3, id 154, coupling 187, grade A53 B, welded, driven, pulled 2026-05-06, perforated 5 - 6, set 2026-05-04';

const fillLines = (keyword: string): readonly string[] =>
  [fills, bags, weighed].map((said) => `${keyword}0 - 7.2 ${said}`);

/** More that a row takes than its example shows, as lines that stand in its section. */
const more: Readonly<Record<string, readonly string[]>> = {
  place: [
    'place utm 17 713898 4943474, NAD83, accuracy 5 m',
    'place 44.6128 -78.3042?, WGS84',
    'place 44°36\'46"N 78°18\'15"W',
  ],
  ground: ['ground 287.4 m, NAVD88, accuracy 0.5'],
  'hole.line': ['0 - 30 254 reamed from 152, tricone, 2026-05-04'],
  'strata.line': ['0 - 3 silty gravel, brown, to 60 mm, at 1.5'],
  drilling: ['drilling air 21 m3/min 2400 kPa, pipe 114, bit 152, down-the-hole hammer'],
  'drilling.line': ['7.2 - 13.2 18 min foam 12 L/min 900 kPa, bit 150, air rotary, 2026-05-05 07:00 - 08:00'],
  casing: ['casing 0 - 20 steel 168.3 x 6.4', `casing +0.45 - 7.2 steel, ${pipe}`],
  liner: ['liner 0 - 20 pvc 114.3', `liner 6 - 20 pvc, ${pipe}`],
  screen: [
    'screen 30 - 36 stainless 114.3, slot 0.5, open area 12 %, wire-wound',
    'screen 30 - 36 pvc 114.3, slot #20',
    `screen 30 - 36 cpvc, ${pipe}`,
  ],
  grout: fillLines('grout '),
  seal: fillLines('seal '),
  plug: fillLines('plug '),
  pack: [...fillLines('pack '), 'pack 27 - 36 20/40 sand, d50 0.6'],
  'abandonment.line': fillLines(''),
  'water.line': ['38.5 fresh, 10 L/min, total 25 L/min, 2026-05-05'],
  test: ['test blow 40 L/min, intake 50, stem 50, 1 h, 2026-05-07 08:00, toc'],
  'test.line': ['60 dd 5.3, 40 L/min', '08:15 5.2'],
  quality: ['quality 38.5 clear, iron 0.4 mg/L, pH 7.2, 2026-05-05'],
  flowing: ['flowing 35 L/min, shut-in 42 kPa, valve, no leak, 2026-05-05', 'flowing 35 L/min, shut-in 1.2'],
  gas: ['gas 47.2 - 48 methane'],
  disinfection: ['disinfection 100 mg/L, 12 h, 2026-05-08, hypochlorite, 12 %, 2 L'],
  development: ['development air, 3 h, 50 L/min, sand <5 mg/L, sulphur, 2026-05-05'],
  hydrofracture: ['hydrofracture 40 - 61, 14 MPa, before 2 L/min, after 15 L/min, 2026-05-05'],
  pump: ['pump submersible 0.56 kW, set 45, 40 L/min, 2026-05-05'],
  abandonment: ['abandonment 2026-06-01, reason dry'],
  shoe: ['shoe 7.2 drive shoe'],
  recovery: ['recovery 60'],
  observed: ['observed OW-1, r 30 m, dd'],
  centralizers: ['centralizers 1.5 4 6.7, every 3, sets of 3'],
  packer: ['packer 24.4 rubber'],
  level: ['level 5.65 toc 2026-05-07'],
};

const heads: Readonly<Record<string, string>> = {
  casing: 'casing 0 - 60 steel 168.3 x 6.4',
  test: 'test pump 40 L/min',
  abandonment: 'abandonment 2026-06-01',
};

/** The line of a row within a log that lets it be read. */
function logOf(row: Row, line: string): string {
  const [section = ''] = row.of;
  return section === '' ? line : `${heads[section] ?? section}\n  ${line}`;
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

const namesOf = (row: Row): readonly string[] =>
  row.body === 'place'
    ? ['latitude', 'longitude', 'zone', 'easting', 'northing', 'datum', 'accuracy']
    : row.body === 'text' && row.id !== 'note'
      ? [row.id]
      : row.slots.map(({ slot }) => slot);

const everySlot = table.flatMap((row) => namesOf(row).map((slot) => [`${row.id} ${slot}`, row, slot] as const));

describe('a hover on every slot of the table', () => {
  test('there are examples of all of them', () => {
    const seen = new Set(places.map(({ row, slot }) => `${row} ${slot}`));
    expect(everySlot.map(([name]) => name).filter((name) => !seen.has(name))).toEqual([]);
    expect(everySlot.length).toBeGreaterThan(200);
  });

  test.each(everySlot)('%s says something of it', (_, row, slot) => {
    for (const { markdown, shown, item } of places.filter((each) => each.row === row.id && each.slot === slot)) {
      expect(markdown, shown).not.toBeNull();
      if (item.value.kind === 'term')
        expect(markdown?.toLowerCase(), shown).toContain(item.value.term.name.split(/[ (-]/)[0]?.toLowerCase());
      if (item.value.kind === 'quantity' && item.value.number !== null && !item.value.unit?.gallon)
        expect(markdown, shown).toMatch(/\*\*[^*]*\d/);
    }
  });

  test('bare numbers of a place are in the units of the file', () => {
    const bare = places.filter(
      ({ item }) => item.value.kind === 'quantity' && item.value.unit === null && item.value.number !== null,
    );
    const lengths = bare.filter(({ row, slot }) => {
      const found = rowById(row).slots.find((each) => each.slot === slot);
      return found?.bare === 'depth' || found?.bare === 'diameter';
    });
    expect(lengths.length).toBeGreaterThan(20);
    for (const { markdown, shown } of lengths) expect(markdown, shown).toMatch(/ft|in\b/);
  });

  test('a number tells one kind of thing: only a place in the hole has an elevation', () => {
    const [head, ...rest] = ['ground 287.4 m', 'casing 0 - 60 steel 168.3 x 6.4'];
    const lengths = [
      '  joints 6.1| 1.55',
      '  centralizers 1.5, every 3|',
      '  grout 0 - 7 neat cement, settled 0.3|',
      '  grout 0 - 7 neat cement, plug inside 0.5|',
    ];
    for (const line of lengths) {
      const column = line.indexOf('|');
      const snapshot = snapshotOf([head, ...rest, line.replace('|', '')].join('\n'));
      expect(hover(snapshot, { line: 2, column })?.markdown, line).not.toContain('Elevation');
    }
  });
});

test('every number on the examples is one that a hover can be asked of', () => {
  const lines = table.flatMap((row) => snapshotOf(logOf(row, row.example)).tree.lines);
  expect(lines.flatMap(amountsOf).length).toBeGreaterThan(60);
});

const labels = table.flatMap((row) =>
  row.slots.flatMap((slot) => slot.labels.map((label) => [row, slot, label] as const)),
);

/** A line with a label and something behind it. */
const labelled = (row: Row, slot: Slot, label: string): string => {
  const kinds = new Set(slot.accepts.map(({ kind }) => kind));
  const value = kinds.has('interval') ? '5 - 6' : kinds.has('moment') ? '2026-05-06' : kinds.has('flag') ? '' : '?';
  const keyword = row.keywords[0] ?? '';
  const depths = { none: '', interval: '0 - 3', depth: '3', either: '3', optional: '' }[row.depths];
  const before = [keyword, depths || (row.id === 'test.line' ? '60' : '')].filter((part) => part !== '').join(' ');
  return logOf(row, `${before}, ${label} ${value}`.trimEnd());
};

describe('a hover on every keyword and label', () => {
  test.each(table.flatMap((row) => row.keywords.map((keyword) => [keyword, row] as const)))('%s', (keyword, row) => {
    const snapshot = snapshotOf(logOf(row, keyword));
    const line = snapshot.lines.length - 1;
    const column = snapshot.lines[line]?.indexOf(keyword) ?? 0;
    const markdown = hover(snapshot, { line, column })?.markdown ?? '';
    expect(markdown).toContain(escapeMarkdown(row.doc));
    expect(markdown).toContain(row.example);
  });

  test.each(labels.map(([row, slot, label]) => [`${row.id} ${label}`, row, slot, label] as const))(
    '%s',
    (_, row, slot, label) => {
      const snapshot = snapshotOf(labelled(row, slot, label));
      const line = snapshot.lines.length - 1;
      const column = (snapshot.lines[line]?.indexOf(', ') ?? 0) + 2;
      expect(hover(snapshot, { line, column })?.markdown).toContain(escapeMarkdown(slot.doc));
    },
  );
});

/** A row and a slot that take the terms of a list. */
function takerOf(list: ListId): readonly [Row, Slot] | undefined {
  const all = table.flatMap((row) => row.slots.map((slot) => [row, slot] as const));
  const takes = ({ accepts }: Slot) => accepts.some((each) => each.kind === 'terms' && each.lists.includes(list));
  return all.find(([, slot]) => slot.labelList === list) ?? all.find(([, slot]) => takes(slot));
}

const isOfGround = (list: ListId): boolean => descriptionLists.includes(list) || list === 'class-symbol';

/** A term as a line can say it: a plus sign parts words. */
function formOf({ name, id, short }: Term): string {
  if (name === '') return id;
  return name.includes('+') ? (short[0] ?? name) : name;
}

const written = (list: ListId, term: Term): string => (list === 'class-symbol' ? `clay (${term.id})` : formOf(term));

function lineWith(list: ListId, term: Term): string {
  if (isOfGround(list)) return `strata\n  0 - 3 ${written(list, term)}`;
  if (list === 'geodetic-datum') return `ground 287 m, ${formOf(term)}`;
  const taker = takerOf(list);
  if (taker === undefined) throw new Error(`no row takes ${list}`);
  const [row, slot] = taker;
  const depths = { none: '', interval: '0 - 3 ', depth: '3 ', either: '3 ', optional: '' }[row.depths];
  const value = slot.labelList === null ? '' : ' 3';
  return logOf(row, `${row.keywords[0] ?? ''} ${depths}${formOf(term)}${value}`.trim());
}

/** What may be said of a word that stands in several lists. */
const meaningsOf = ({ name }: Term): readonly string[] =>
  termLists.flatMap(({ terms }) => terms.filter((other) => other.name === name).map(({ meaning }) => meaning));

describe('a hover on every term', () => {
  test.each(termLists.map(({ id }) => id))('of the list %s tells its meaning and its source', (list) => {
    const silent = termsOf(list).filter((term) => {
      const snapshot = snapshotOf(lineWith(list, term));
      const line = snapshot.lines.length - 1;
      const column = (snapshot.lines[line]?.lastIndexOf(formOf(term)) ?? 0) + 1;
      const markdown = hover(snapshot, { line, column })?.markdown ?? '';
      return ![term.meaning, ...meaningsOf(term)].some((meaning) => markdown.includes(escapeMarkdown(meaning)));
    });
    const isLabel = ({ name }: Term): boolean => labels.some(([, , label]) => label === name);
    expect(silent.filter((term) => !isLabel(term)).map(formOf)).toEqual([]);
  });
});
