import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lasFormat } from '../../server/export/las/index.ts';
import { fitsEveryEdge, stepFor } from '../../server/export/las/step.ts';
import { sampleLogs } from '../drawing/logs.ts';
import { recordOf, valueIn } from '../record/record-of.ts';
import { contextOf } from './context-of.ts';

/* What LAS 2.0 (Canadian Well Logging Society, 1992) asks of a file; the page is read from memory. */
interface LasFile {
  readonly sections: readonly string[];
  readonly head: ReadonlyMap<string, string>;
  readonly curves: readonly string[];
  readonly rows: readonly (readonly number[])[];
}

const headPattern = /^ ?([^.\s]+)\s*\.(\S*)\s(.*):(.*)$/;

/** A plain reader after the standard: name up to the first dot, unit up to the first blank, value up to the last colon. */
function readLas(text: string): LasFile {
  const lines = text.split('\r\n').filter((line) => line !== '');
  const sections = lines.filter((line) => line.startsWith('~')).map((line) => line[1] ?? '');
  let section = '';
  const head = new Map<string, string>();
  const curves: string[] = [];
  const rows: number[][] = [];
  for (const line of lines) {
    if (line.startsWith('~')) section = line[1] ?? '';
    else if (section === 'A') rows.push(line.trim().split(/\s+/).map(Number));
    else {
      const [, name = '', , value = ''] = headPattern.exec(line) ?? expect.fail(`no header line: ${line}`);
      if (section === 'C') curves.push(name);
      else head.set(name, value.trim());
    }
  }
  return { sections, head, curves, rows };
}

async function lasOf(text: string): Promise<LasFile> {
  const { files } = await lasFormat.make(recordOf(text), contextOf(text));
  return readLas(String(files[0]?.content));
}

const column = ({ curves, rows }: LasFile, name: string): Map<number, number> =>
  new Map(rows.map((row) => [row[0] ?? Number.NaN, row[curves.indexOf(name)] ?? Number.NaN]));

const log = `well A: 1
hole
  0 - 7.5 254
    - 30  152
strata
  0 - 3.5 clay
    - 30  limestone
drilling air 280 L/s, pipe 89
  0   - 7.5  30 min
  7.5 - 30   90 min
`;

describe('a LAS file', () => {
  test('has the sections of the standard in their order, and its version first', async () => {
    const { sections, head } = await lasOf(log);
    expect(sections).toEqual(['V', 'W', 'C', 'P', 'A']);
    expect(head.get('VERS')).toBe('2.0');
    expect(head.get('WRAP')).toBe('NO');
    expect(head.get('NULL')).toBe('-999.25');
  });

  test('runs from its first depth to its last by its step', async () => {
    const { head, rows } = await lasOf(log);
    const [start, stop, step] = ['STRT', 'STOP', 'STEP'].map((name) => Number(head.get(name)));
    expect([start, stop, step]).toEqual([0, 30, 0.5]);
    expect(rows).toHaveLength(61);
    for (const [at, row] of rows.entries()) expect(row[0]).toBeCloseTo(at * 0.5, 9);
  });

  test('holds each value from the top of its stretch down to its base', async () => {
    const file = await lasOf(log);
    const hole = column(file, 'HOLED');
    expect([hole.get(0), hole.get(7), hole.get(7.5), hole.get(29.5), hole.get(30)]).toEqual([
      254, 254, 152, 152, -999.25,
    ]);
    const rate = column(file, 'ROP');
    // 7.5 m in 30 min are 15 m/h; 22.5 m in 90 min as well.
    expect([rate.get(2), rate.get(20)]).toEqual([15, 15]);
    // FGDC-STD-013-2006: clay 620, limestone 627.
    const ground = column(file, 'FGDC');
    expect([ground.get(3), ground.get(3.5)]).toEqual([620, 627]);
  });

  /* FGDC-STD-013-2006: 681 to 683 are the three patterns of till or diamicton. */
  test('tells kinds of till apart by the pattern that they are drawn in', async () => {
    const ground = column(
      await lasOf('hole\n 0 - 6 150\nstrata\n 0 - 2 till\n - 4 sand till\n - 6 clay till\n'),
      'FGDC',
    );
    expect([ground.get(1), ground.get(3), ground.get(5)]).toEqual([681, 682, 683]);
  });

  test('gives the record’s uphole velocity in metres a minute', async () => {
    const file = await lasOf(log);
    const uphole = column(file, 'UPVEL').get(10) ?? Number.NaN;
    expect(uphole / 60).toBeCloseTo(valueIn(log, 'drilling.2.uphole-velocity') ?? Number.NaN, 4);
  });

  test('keeps a colon and an accent of a name out of the way', async () => {
    const { head } = await lasOf('well Pré: 1\nowner Ségolène\nhole\n 0 - 4 150\n');
    expect(head.get('WELL')).toBe('Pre 1');
    expect(head.get('COMP')).toBe('Segolene');
  });

  test('is not made of a log without anything against depth, and says so', async () => {
    const made = await lasFormat.make(recordOf('well A\n'), contextOf('well A\n'));
    expect(made).toEqual({ files: [], left: ['The log has nothing against depth that LAS could carry.'] });
  });

  test.each(sampleLogs)('of %s has one number for each curve in each row', async (_, text) => {
    const { files } = await lasFormat.make(recordOf(text), contextOf(text));
    if (files.length === 0) return expect(recordOf(text).log.strata).toEqual([]);
    const { curves, rows, head } = readLas(String(files[0]?.content));
    expect(rows.length).toBeGreaterThan(1);
    for (const row of rows) {
      expect(row).toHaveLength(curves.length);
      expect(row.every(Number.isFinite)).toBe(true);
    }
    expect(rows.at(-1)?.[0]).toBeCloseTo(Number(head.get('STOP')), 6);
  });
});

describe('the step', () => {
  test('is the coarsest that has a row at every edge', () => {
    expect(stepFor([0, 3, 12])).toBe(1);
    expect(stepFor([0, 3.5, 12])).toBe(0.5);
    expect(stepFor([0, 0.3048, 12])).toBe(0.01);
    expect(fitsEveryEdge([0, 0.3048, 12], 0.01)).toBe(false);
  });

  test('never makes more than a hundred thousand rows of a well of 10 km', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 10_000, noNaN: true }), { minLength: 2 }), (edges) => {
        expect((Math.max(...edges) - Math.min(...edges)) / stepFor(edges)).toBeLessThanOrEqual(100_000);
      }),
    );
  });
});
