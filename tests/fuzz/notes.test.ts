import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { decodeNotes } from '../../server/import/decode.ts';
import { type ReadNotes, type ReadOptions, readNotes } from '../../server/import/index.ts';
import { rowsToLines } from '../../server/import/rows.ts';
import { file } from './material.ts';
import { files, patience } from './runs.ts';

const scrap = fc.constantFrom(
  ...[
    '0-12',
    '12\'6"',
    '6½″',
    '38',
    '0,5',
    '1,200',
    '20/40',
    '5/7/26',
    'May 6, 2026',
    'gpm',
    '5 gpm',
    'ft',
    'm',
    '"',
    "'",
  ],
  ...[
    'brn clay',
    'same',
    'do.',
    'csg',
    'set',
    'shoe',
    '14 bags',
    'grouted w/',
    'SWL',
    'wtr @',
    'screen',
    'TD',
    'Owner:',
  ],
  ...[
    'pumped',
    'for 2 hrs',
    'drawdown to',
    '\t',
    ' | ',
    ';',
    ',',
    '\n',
    '\n',
    '\r\n',
    ' ',
    ' to ',
    '-',
    '–',
    '?',
    '~',
    '#',
    'allow x',
  ],
  ...[
    'From',
    'To',
    'Thickness (ft)',
    'Description',
    'TopDepth',
    '\u0000',
    '\ufeff',
    'ﬁne',
    '½',
    '…',
    '....',
    '=',
    '(',
    ')',
  ],
);

const crewText = fc
  .array(fc.oneof({ arbitrary: scrap, weight: 9 }, { arbitrary: fc.string(), weight: 1 }), { maxLength: 60 })
  .map((parts) => parts.join(''));

const options: fc.Arbitrary<Partial<ReadOptions>> = fc.record({
  units: fc.constantFrom('m', 'ft', null),
  layers: fc.constantFrom('thickness', 'bases', 'tops', null),
  dates: fc.constantFrom('dmy', 'mdy', null),
  columns: fc.constantFrom(
    null,
    null,
    null,
    'from=1,to=2,description=3',
    'to=From,description=Description',
    'x',
    'from=',
  ),
});

const isAsked = ({ questions }: ReadNotes): boolean => questions.some(({ blocking }) => blocking);

/** Everything that is not blank, a comment's mark or what the reader itself strips. */
const letters = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, '');

function holds(text: string, read: ReadNotes): void {
  if (isAsked(read)) return;
  const faults = parseText(read.text).lines.flatMap(({ problems }) =>
    problems.filter(({ code }) => code !== 'unknown-term'),
  );
  expect(faults).toEqual([]);
  const comments = letters(
    read.text
      .split('\n')
      .filter((line) => line.startsWith('#'))
      .join('\n'),
  );
  for (const line of text.split(/\r\n|\n|\r/)) expect(comments).toContain(letters(line));
}

test(
  'any text that crews might write is read without a fault, and every line of it is kept',
  () => {
    fc.assert(
      fc.property(crewText, options, (text, given) => holds(text, readNotes(text, given))),
      { numRuns: files * 4 },
    );
  },
  patience.timeout,
);

test(
  'any text at all is read without a fault, and every line of it is kept',
  () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 400 }), file), options, (text, given) =>
        holds(text, readNotes(text, given)),
      ),
      { numRuns: files },
    );
  },
  patience.timeout,
);

test(
  'any bytes are decoded or refused in words',
  () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        const decoded = decodeNotes(bytes);
        if ('reason' in decoded) expect(decoded.reason).not.toBe('');
        else holds(decoded.text, readNotes(decoded.text, { units: 'm' }));
      }),
      { numRuns: files },
    );
  },
  patience.timeout,
);

test(
  'pasted rows of any text keep all that they say',
  () => {
    fc.assert(
      fc.property(
        crewText,
        fc.constantFrom('strata', 'hole', 'water', 'casing', 'test', 'nowhere'),
        (text, section) => {
          const { lines } = rowsToLines(text, section, 'm');
          for (const line of lines) expect(line).not.toMatch(/[\r\n]|^\s*#\s*allow\b/i);
        },
      ),
      { numRuns: files * 2 },
    );
  },
  patience.timeout,
);

test(
  'a very long line takes no longer than its length',
  () => {
    for (const piece of [
      '0-12 clay, ',
      '"',
      "1'",
      '1 ft ',
      '12-',
      'w/ ',
      '. A',
      ' water at 5',
      'from ',
      '(',
      '1/2 ',
      'May 6, ',
    ]) {
      const text = piece.repeat(Math.ceil(200_000 / piece.length));
      const began = performance.now();
      readNotes(text, { units: 'ft' });
      expect(performance.now() - began, piece).toBeLessThan(5000);
    }
  },
  patience.timeout,
);
