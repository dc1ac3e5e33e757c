import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { getLanguageService, TextDocument } from 'vscode-json-languageservice';
import { recordHtml, recordJson, recordSchema, recordText } from '../../server/export/index.ts';
import { RecordFile } from '../../server/export/json/record-file.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { arbitraryOf } from '../drawing/arbitrary.ts';
import { busyLog, handLogs, sampleLogs } from '../drawing/logs.ts';
import { recordOf } from '../record/record-of.ts';

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

describe.each([...handLogs, ...sampleLogs])('the files of %s', (_, text) => {
  const record = recordOf(text);

  test('JSON fits its own schema and is read back as the same record', () => {
    const written: unknown = JSON.parse(recordJson(record, text.split('\n')));
    expect(RecordFile.parse(written)).toEqual(written);
  });

  test('are the same each time', () => {
    expect(recordJson(recordOf(text), [])).toBe(recordJson(record, []));
    expect(recordText(recordOf(text))).toBe(recordText(record));
    expect(recordHtml(recordOf(text), [])).toBe(recordHtml(record, []));
  });
});

describe('the calculation sheet', () => {
  const record = recordOf(busyLog);
  const sheet = recordText(record);

  test('says first that it is a help and not the law', () => {
    expect(sheet.split('\n')[0]).toBe(
      'The checks and figures are a help, not the law: local codes and licensed practice decide.',
    );
  });

  test('has each figure with its formula, the numbers put in, where they stand, its result and source', () => {
    for (const figure of record.figures) {
      const start = sheet.indexOf(`\n    ${figure.id}\n`);
      expect(start).toBeGreaterThan(0);
      const block = sheet.slice(sheet.lastIndexOf('\n\n', start), sheet.indexOf('\n\n', start));
      expect(block).toContain(figure.text || '?');
      expect(block).toContain(figure.formula);
      expect(block).toContain(`Source: ${figure.source}`);
      for (const input of figure.inputs) {
        const place = input.line === null ? '' : ` (line ${input.line + 1})`;
        expect(block).toContain(`      ${input.name} = ${input.text}${place}\n`);
      }
      for (const fact of figure.waitsFor) expect(block).toContain(fact);
      if (figure.caution !== null) expect(block).toContain(`Caution: ${figure.caution}`);
    }
  });

  test('lines up its tables', () => {
    const lines = recordText(recordOf('hole\n  0 - 7.2 254\n  - 61 152\n')).split('\n');
    const from = lines.indexOf('  The hole, depths in m below ground');
    expect(lines.slice(from + 1, from + 5)).toEqual([
      '     Depth  Diameter',
      '  --------  --------',
      '   0 – 7.2    254 mm',
      '  7.2 – 61    152 mm',
    ]);
  });

  test('has no character that acts on a terminal, whatever the record', () => {
    fc.assert(
      fc.property(records, (random) => {
        expect(recordText(random)).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}\u2028\u2029]/u);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the page', () => {
  const html = recordHtml(recordOf(busyLog), []);

  test('loads nothing and runs nothing', () => {
    expect(html).toContain(
      `content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"`,
    );
    expect(/<script|<link|<img|<iframe|<object|\ssrc=|\shref=|@import|url\((?!#)/i.test(html)).toBe(false);
    const addresses = [...html.matchAll(/https?:\/\/[^"\s<]*/g)].map(([address]) => address);
    expect(new Set(addresses)).toEqual(new Set(['http://www.w3.org/2000/svg']));
  });

  test('has the drawing with its colours, and rules for paper', () => {
    expect(html).toContain('<svg xmlns="http://www.w3.org/2000/svg" class="dh-drawing"');
    expect(html).not.toContain('var(--dh-');
    expect(html).toContain('@page { size: A4;');
    expect(html).toContain('@media print');
  });

  test('keeps a hostile name as text', () => {
    const hostile = recordHtml(recordOf('well </title><script>alert(1)</script>\n'), []);
    expect(hostile).not.toContain('<script');
    expect(hostile).toContain('<title>Record of &lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;</title>');
  });
});

describe('the schema', () => {
  const validate = async (json: string) => {
    const service = getLanguageService({});
    const document = TextDocument.create('file:///record.json', 'json', 1, json);
    return service.doValidation(document, service.parseJSONDocument(document), {}, recordSchema());
  };

  test('admits the records that are written, by a general validator', async () => {
    expect(await validate(recordJson(recordOf(busyLog), busyLog.split('\n')))).toEqual([]);
  });

  test('refuses what is no record, by the same validator', async () => {
    const record = recordOf(busyLog);
    const [first] = record.figures;
    const spoiled = { ...record, source: [], figures: [{ ...first, value: 'seven' }] };
    expect(await validate(JSON.stringify(spoiled))).not.toEqual([]);
  });

  test('is a JSON Schema of draft 2020-12 that names the parts of a record', () => {
    const schema = recordSchema() as { $schema: string; required: string[]; properties: object };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.required).toEqual([
      'log',
      'figures',
      'fills',
      'centralizerGaps',
      'topOfCasing',
      'depth',
      'due',
      'tests',
      'source',
    ]);
    expect(Object.keys(schema.properties)).toEqual(schema.required);
  });
});
