import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { readRecord } from '../../server/export/json/read-record.ts';
import { recordJson } from '../../server/export/json/record-json.ts';
import { buildLog } from '../../server/model/index.ts';
import { sampleLogs } from '../drawing/logs.ts';
import { recordOf } from '../record/record-of.ts';

const backFrom = (text: string) => {
  const { record, fault } = readRecord(recordJson(recordOf(text), text.split('\n')));
  return record ?? expect.fail(fault ?? '');
};

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('log to JSON to log', () => {
  test.each(sampleLogs)('keeps %s to the letter, and what it says', (_, text) => {
    const { source, log } = backFrom(text);
    expect(source.join('\n')).toBe(text);
    expect(plain(buildLog(parseText(source.join('\n'))))).toEqual(plain(log));
  });

  test('keeps any lines', () => {
    const line = fc.oneof(
      fc.string({ unit: 'binary' }).map((text) => text.replace(/[\r\n]/g, '')),
      fc.constantFrom('strata', '  0 - 12 clay ; soft', '    - 30? limestone', 'casing +0.4 - 9 steel 168.3', '# said'),
    );
    fc.assert(
      fc.property(fc.array(line, { minLength: 1 }), (lines) => {
        const text = lines.join('\n');
        expect(backFrom(text).source.join('\n')).toBe(text);
      }),
    );
  });
});

describe('what is no record', () => {
  test.each([
    ['', /^it is not JSON/],
    ['{', /^it is not JSON/],
    ['[]', /^the whole: /],
    ['{"log": 3}', /^log: .*\(and \d+ more\)$/],
  ])('is told with the place of its first fault: %j', (text, fault) => {
    expect(readRecord(text)).toEqual({ record: null, fault: expect.stringMatching(fault) });
  });

  test('is told by the path to a value of the wrong kind', () => {
    const record = JSON.parse(recordJson(recordOf('hole\n  0 - 4 150\n'), []));
    record.log.hole[0].line = 'two';
    expect(readRecord(JSON.stringify(record)).fault).toMatch(/^log\.hole\[0\]\.line: /);
  });
});
