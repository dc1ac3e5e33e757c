import { Buffer } from 'node:buffer';
import { describe, expect, test } from 'vitest';
import { decodeNotes } from '../../server/import/decode.ts';
import { type ReadNotes, readNotes } from '../../server/import/index.ts';

const linesOf = ({ entries }: ReadNotes): string[] => entries.flatMap(({ lines }) => lines.map(({ text }) => text));
const asked = ({ questions }: ReadNotes) => questions.map(({ about, line, answers }) => ({ about, line, answers }));

describe('which column is what', () => {
  test('a header that names each part once, over cells that fit, is not asked about', () => {
    expect(linesOf(readNotes('From,To,Soil type\n0,2,clay\n2,9,sand', { units: 'm' }))).toEqual([
      '0 - 2 clay',
      '2 - 9 sand',
    ]);
  });

  test('names that nobody knows are asked about, with a map ready to be used', () => {
    const read = readNotes('A;B;C\n0;3;clay\n3;9;sand', { units: 'm' });
    expect(asked(read)).toEqual([{ about: 'columns', line: 1, answers: ['from=A,to=B,description=C'] }]);
    expect(read.text).toBe('');
    expect(
      linesOf(readNotes('A;B;C\n0;3;clay\n3;9;sand', { units: 'm', columns: 'from=A,to=B,description=C' })),
    ).toEqual(['0 - 3 clay', '3 - 9 sand']);
  });

  test('without a header columns are asked about by number', () => {
    expect(asked(readNotes('0\t3\tclay\n3\t9\tsand', { units: 'm' }))).toEqual([
      { about: 'columns', line: 1, answers: ['from=1,to=2,description=3'] },
    ]);
  });

  test('two columns of one name, and a name over cells that do not fit it, are asked about', () => {
    expect(asked(readNotes('From,From,To,Soil\n0,0,2,clay\n2,2,9,sand', { units: 'm' }))[0]?.about).toBe('columns');
    expect(asked(readNotes('From,To,Soil\nclay,0,2\nsand,2,9', { units: 'm' }))[0]?.about).toBe('columns');
  });

  test.each([
    ['from=X,to=B,description=C', 'there is no column "X"; the columns are "A", "B", "C"'],
    ['from=A,to=B', 'a map needs the depths'],
    ['upside=A', '"upside=A" is none of from=COLUMN'],
    ['from=1,to=2,description=9', 'there is no column "9"'],
  ])('the map %s is refused in words', (columns, says) => {
    expect(readNotes('A;B;C\n0;3;clay', { units: 'm', columns }).questions[0]?.says).toContain(says);
  });

  test('columns without a place are kept in the comments, and said so', () => {
    const read = readNotes('From,To,Soil,Blows\n0,2,clay,14', { units: 'm' });
    expect(read.troubles).toEqual([{ line: 1, says: 'no place for "Blows": kept in the comments alone' }]);
    expect(read.text).toContain('# 0,2,clay,14\n');
  });
});

describe('broken tables', () => {
  test('a quotation mark that nothing closes is told with its line, and every row is kept', () => {
    const read = readNotes('From,To,Soil\n0,2,clay\n2,9,"sand\n9,12,gravel', { units: 'm' });
    expect(read.troubles.map(({ line }) => line)).toEqual([3]);
    expect(linesOf(read)).toEqual(['0 - 2 clay', '2 - 9 sand', '9 - 12 gravel']);
    for (const row of ['0,2,clay', '2,9,"sand', '9,12,gravel']) expect(read.text).toContain(`# ${row}\n`);
  });

  test('a cell that goes on over lines stays one row, with both its lines', () => {
    const [row] = readNotes('From,To,Soil\n0,2,"clay,\nstiff"\n2,4,sand', { units: 'm' }).entries.slice(1);
    expect(row).toMatchObject({
      first: 2,
      last: 3,
      source: ['0,2,"clay,', 'stiff"'],
      lines: [{ text: '0 - 2 clay, stiff' }],
    });
  });

  test('words with commas that nobody quoted are joined again, and said so', () => {
    const [row] = readNotes('From,To,Soil\n0,2,clay, brown\n2,4,sand', { units: 'm' }).entries.slice(1);
    expect(row).toMatchObject({ status: 'partly', lines: [{ text: '0 - 2 clay, brown' }] });
  });

  test('a depth that is no length leaves its row a comment, with its line number', () => {
    const read = readNotes(
      `From,To,Soil\n${Array.from({ length: 30 }, (_, at) => `${at},${at + 1},clay`).join('\n')}\n30,3l,sand`,
      { units: 'm' },
    );
    expect(read.entries.at(-1)).toMatchObject({ first: 32, status: 'not', lines: [] });
    expect(read.text).toContain('# 30,3l,sand\n');
  });

  test('merged cells: a well stands for the rows below it, words without depths are not put anywhere', () => {
    const read = readNotes('Well,From,To,Soil\nW-1,0,2,clay\n,2,9,sand\n,,,with stones', { units: 'm' });
    expect(linesOf(read)).toEqual(['well W-1', '0 - 2 clay', '2 - 9 sand']);
    expect(read.entries.at(-1)).toMatchObject({ first: 4, lines: [] });
    expect(read.entries.at(-1)?.why).not.toEqual([]);
    expect(read.text).toContain('# ,,,with stones\n');
  });

  test('rows of a second well are left out, and said so', () => {
    const read = readNotes('Well,From,To,Soil\nW-1,0,2,clay\nW-2,0,5,sand', { units: 'm' });
    expect(linesOf(read)).toEqual(['well W-1', '0 - 2 clay']);
    expect(read.entries.at(-1)?.why[0]).toContain('W-2');
  });

  test('a decimal comma is read where the table leaves no other reading, and said so', () => {
    const read = readNotes('Von;Bis;Soil\n0;0,5;clay\n0,5;2,25;sand', {
      units: 'm',
      columns: 'from=Von,to=Bis,description=Soil',
    });
    expect(linesOf(read)).toEqual(['0 - 0.5 clay', '0.5 - 2.25 sand']);
    expect(read.troubles.some(({ says }) => says.includes('decimal comma'))).toBe(true);
    expect(
      linesOf(readNotes('A;B;Soil\n0;1,250;clay', { units: 'm', columns: 'from=A,to=B,description=Soil' })),
    ).toEqual([]);
  });
});

describe('the bytes of a file', () => {
  const text = 'From,To,Soil\r\n0,2,clay\r\n2,9,sable fin à galets\r\n';
  const utf16 = (mark: boolean, big: boolean): Uint8Array => {
    const bytes = Buffer.from((mark ? '\ufeff' : '') + text, 'utf16le');
    return big ? bytes.swap16() : bytes;
  };

  test.each([
    ['UTF-8', Buffer.from(text, 'utf8'), null],
    ['UTF-8 with a mark', Buffer.from(`\ufeff${text}`, 'utf8'), null],
    ['Windows-1252', Buffer.from(text, 'latin1'), 'not UTF-8, so read as Windows-1252; line 3 is the first'],
    ['UTF-16LE with a mark', utf16(true, false), 'read as UTF-16LE'],
    ['UTF-16BE with a mark', utf16(true, true), 'read as UTF-16BE'],
    ['UTF-16LE without a mark', utf16(false, false), 'read as UTF-16LE'],
    ['UTF-16BE without a mark', utf16(false, true), 'read as UTF-16BE'],
  ])('%s', (_, bytes, note) => {
    const decoded = decodeNotes(bytes);
    expect(decoded).toMatchObject({ text });
    if ('note' in decoded) expect(decoded.note ?? '').toContain(note ?? '');
    if ('note' in decoded && note === null) expect(decoded.note).toBeNull();
  });

  test('curly quotes and half signs of Windows-1252 are what they are there', () => {
    expect(decodeNotes(new Uint8Array([0x30, 0x2d, 0x36, 0xbd, 0x92, 0x20, 0x96]))).toMatchObject({ text: '0-6½’ –' });
  });

  test('a spreadsheet file is refused in words', () => {
    expect(decodeNotes(Buffer.from('PK\u0003\u0004abc\n\u0000\u0000xyz', 'latin1'))).toEqual({
      reason: 'line 2 has a NUL byte, as in a spreadsheet or picture file; export it as text or CSV',
    });
  });
});

test('100,000 rows are read, each in its place', () => {
  const words = ['brown clay', 'sand and gravel, wet', 'limestone, grey', 'zorfy clay'];
  const rows = Array.from({ length: 100_000 }, (_, at) => `${at},${at + 1},"${words[at % 4]}"`);
  const read = readNotes(['From (m),To (m),Soil', ...rows].join('\n'));
  expect(read.entries).toHaveLength(100_001);
  expect(read.entries.at(-1)).toMatchObject({ first: 100_001, lines: [{ text: '99999 - 100000 zorfy clay' }] });
  expect(read.text.split('\n').filter((line) => line.startsWith('#')).length).toBeGreaterThan(100_000);
}, 120_000);
