import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvText, harmless } from '../../server/export/csv/csv-text.ts';
import { csvFormat } from '../../server/export/csv/index.ts';
import { busyLog, sampleLogs } from '../drawing/logs.ts';
import { recordOf } from '../record/record-of.ts';
import { contextOf } from './context-of.ts';

const made = async (text: string) => csvFormat.make(recordOf(text), contextOf(text));

const rowsOf = (content: string | Uint8Array): string[][] => parse(String(content), { relaxColumnCount: false });

async function tableOf(text: string, name: string): Promise<Record<string, string>[]> {
  const { files } = await made(text);
  const file = files.find((each) => each.name === `${name}.csv`);
  return file === undefined ? [] : parse(String(file.content), { columns: true });
}

describe('a cell', () => {
  // The first characters that OWASP's page on CSV injection names, and their full-width forms.
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1'])(
    'that a spreadsheet would run, %j, is made text',
    (text) => {
      expect(harmless(text)).toBe(`'${text}`);
    },
  );

  test.each(['clay', '3 - 4', '', "'=1", 'a=b'])('that it would not, %j, is left as it is', (text) => {
    expect(harmless(text)).toBe(text);
  });

  test('is read back by a general reader as it was', () => {
    const cell = fc.oneof(fc.string({ unit: 'binary' }), fc.string(), fc.constantFrom('a"b', 'a,b', 'a\r\nb', ' a '));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, fc.double()), { minLength: 1 }), (rows) => {
        const back = rowsOf(csvText(rows)) as string[][];
        expect(back.map(([a, b]) => [a, b])).toEqual(rows.map(([a, b]) => [harmless(a), harmless(b)]));
        for (const [at, row] of rows.entries()) {
          const number = row[2];
          const read = back[at]?.[2] ?? '';
          if (!Number.isFinite(number)) expect(read).toBe('');
          else expect(Math.abs(Number(read) - number)).toBeLessThanOrEqual(Math.abs(number) * 1e-11);
        }
      }),
    );
  });

  test('with a number below zero stays a number', () => {
    expect(csvText([[-0.9, '-0.9', null]])).toBe("-0.9,'-0.9,\r\n");
  });
});

describe('the tables', () => {
  test('have what the notes say, in words and in the unit of the column', async () => {
    const [casing] = await tableOf(
      'units ft in\ncasing +2 - 58? steel 10.75 x 0.365 welded ; from the yard\n',
      'strings',
    );
    expect(casing).toMatchObject({
      string: '1',
      top_m: '-0.6096',
      top_written: "'+2",
      bottom_m: '17.6784',
      bottom_written: '58?',
      material: 'steel',
      outside_diameter_mm: '273.05',
      joint: 'welded',
      remark: 'from the yard',
      line: '2',
    });
  });

  test('leave a cell empty where the notes have ?, and say so beside it', async () => {
    const [hole] = await tableOf('hole\n  0 - 12 ?\n', 'hole');
    expect(hole).toMatchObject({ diameter_mm: '', diameter_written: '?' });
  });

  test('keep the marks of a date that the notes doubt or give as about', async () => {
    const facts = await tableOf('began ~2026-05-04\nfinished 2026-05-06?\n', 'well');
    const valueOfFact = (fact: string) => facts.find((each) => each.fact === fact)?.value;
    expect([valueOfFact('began'), valueOfFact('finished')]).toEqual(['~2026-05-04', '2026-05-06?']);
  });

  test.each(sampleLogs)('of %s have as many cells in each row, and lose nothing that was written', async (_, text) => {
    const { files } = await made(text);
    const cells = new Set(files.flatMap(({ content }) => rowsOf(content).flat()));
    const all = [...cells].join('\n');
    for (const words of writtenIn(recordOf(text).log)) {
      const shown = harmless(words);
      if (!cells.has(shown) && !all.includes(words)) expect.fail(`"${words}" is in no table`);
    }
  });

  test('say what they do not carry', async () => {
    const { left } = await made(busyLog);
    expect(left).toEqual(['Text that a spreadsheet would take for a formula has an apostrophe before it.']);
    expect((await made('# a comment\nwell A\n')).left).toContain(
      'Comments of the log (after #) are not in the tables.',
    );
  });
});

/** The words of every measure and every text of a log. */
function writtenIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(writtenIn);
  if (typeof value !== 'object' || value === null) return [];
  if ('written' in value && 'number' in value) return [String(value.written)];
  if ('text' in value && 'span' in value && Object.keys(value).length === 2) return [String(value.text)];
  return Object.entries(value).flatMap(([key, part]) => (key === 'questions' ? [] : writtenIn(part)));
}
