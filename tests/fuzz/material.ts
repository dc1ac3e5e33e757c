import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { splitLines } from '../../grammar/index.ts';
import { keywords, table } from '../../grammar/table.ts';
import { termLists } from '../../grammar/terms/index.ts';
import { units } from '../../grammar/units.ts';

const folder = path.resolve(import.meta.dirname, '../../samples');

const sampleTexts: readonly string[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.well'))
  .map((name) => readFileSync(path.join(folder, name), 'utf8'));

/** Every example of the table, one under the other. */
const everyRow = table.map(({ example }) => example).join('\n');

/** Whole logs to begin with. */
export const samples: readonly string[] = [...sampleTexts, everyRow];

const sampleLines = samples.flatMap(splitLines);

const partOf = (sample: string, at: number, length: number): string => {
  const lines = splitLines(sample);
  const first = at % lines.length;
  return lines.slice(first, first + length).join('\n');
};

/** A text to begin with: mostly a part of a sample, which is quick to read, now and then the whole of one. */
export const beginning: fc.Arbitrary<string> = fc.oneof(
  { arbitrary: fc.constantFrom(...samples), weight: 1 },
  {
    arbitrary: fc
      .tuple(fc.constantFrom(...samples), fc.nat(), fc.integer({ min: 1, max: 16 }))
      .map(([sample, at, length]) => partOf(sample, at, length)),
    weight: 9,
  },
);

const word = fc.oneof(
  fc.constantFrom(...keywords),
  fc.constantFrom(...termLists.flatMap(({ terms }) => terms.flatMap(({ name, short }) => [name, ...short]))),
  fc.constantFrom(...units.flatMap(({ spellings }) => spellings)),
);

const number = fc.oneof(
  fc.integer({ min: 0, max: 300 }).map(String),
  fc.double({ min: 0, max: 400, noNaN: true }).map((value) => value.toFixed(2)),
  fc.constantFrom(
    '.3',
    '12\'6"',
    '6 1/4',
    '6-1/4"',
    '1e9',
    '9999999999999999999',
    '3,5',
    '1.2.3',
    '0x1F',
    '½',
    '12 ft 6 in',
  ),
);

const mark = fc.constantFrom(
  ...[
    '-',
    ' - ',
    '–',
    '—',
    ' to ',
    '+',
    '~',
    '?',
    '<',
    '>',
    ',',
    ';',
    '; ',
    '#',
    '# ',
    '# allow ',
    ' x ',
    '×',
    ':',
    '"',
  ],
  ...[
    "'",
    '(',
    ')',
    '[',
    ']',
    '%',
    '/',
    '@',
    '\\',
    '`',
    '\t',
    ' ',
    '\u00a0',
    'td',
    ' toc',
    '2026-05-04',
    '09:30',
    '31/31/31',
  ],
);

const strange = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 8 }),
  fc.constantFrom('\ud800', '\u0000', '\ufeff', '\u2028', '😀', 'é', '\u202e', 'constructor', '__proto__', 'toString'),
);

/** A piece of text that might be typed, pasted or left over. */
export const fragment: fc.Arbitrary<string> = fc.oneof(
  { arbitrary: word, weight: 4 },
  { arbitrary: number, weight: 4 },
  { arbitrary: mark, weight: 4 },
  { arbitrary: strange, weight: 1 },
);

const madeLine = fc.array(fragment, { maxLength: 8 }).map((pieces) => pieces.join(' ').replace(/[\r\n]/g, ' '));

/** One line: of a sample, or made of fragments. */
export const line: fc.Arbitrary<string> = fc.oneof(fc.constantFrom(...sampleLines), madeLine);

/** A log as it comes to be after accidents: lines lost, doubled, moved, broken and overwritten. */
export const mangled: fc.Arbitrary<string> = fc
  .record({
    sample: fc.constantFrom(...samples),
    accidents: fc.array(fc.record({ at: fc.nat(), length: fc.nat({ max: 40 }), put: fc.oneof(fragment, line) }), {
      maxLength: 12,
    }),
    end: fc.constantFrom('\n', '\r\n', '\r'),
  })
  .map(({ sample, accidents, end }) => {
    const wrecked = accidents.reduce((text, { at, length, put }) => {
      const from = at % (text.length + 1);
      return text.slice(0, from) + put + text.slice(from + length);
    }, sample);
    return wrecked.replace(/\n/g, end);
  });

/** Bytes read as text, as an editor would that was given the wrong file. */
export const bytes: fc.Arbitrary<string> = fc
  .tuple(fc.uint8Array({ maxLength: 2000 }), fc.constantFrom('utf8' as const, 'latin1' as const, 'utf16le' as const))
  .map(([array, encoding]) => Buffer.from(array).toString(encoding));

/** Any file. */
export const file: fc.Arbitrary<string> = fc.oneof(
  { arbitrary: mangled, weight: 3 },
  { arbitrary: bytes, weight: 1 },
  { arbitrary: fc.array(line, { maxLength: 40 }).map((lines) => lines.join('\n')), weight: 2 },
);
