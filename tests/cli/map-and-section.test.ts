import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';

const log = (name: string, easting: number, ground: number | null) =>
  [
    `well ${name}`,
    `place utm 17N ${easting} 4900000 NAD83`,
    ...(ground === null ? [] : [`ground ${ground} m`]),
    'hole',
    '  0 - 20 152',
    'strata',
    '  0 - 4 clay',
    '  - 20 limestone',
    '',
  ].join('\n');

const files = { 'logs/a.well': log('A-1', 600_000, 100), 'logs/b.well': log('B-2', 600_400, 95) };
const written = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

describe('map', () => {
  test('of a folder goes into a file, with every well', async () => {
    const { code, files: after } = await drillhand(['map', 'logs', '-o', 'map.svg'], files);
    const svg = written(after.get('map.svg'));
    expect(code).toBe(0);
    expect(XMLValidator.validate(svg)).toBe(true);
    expect(svg).toContain('>A-1</text>');
    expect(svg).toContain('>B-2</text>');
  });

  test('says where it would go if it were told', async () => {
    const { code, errors } = await drillhand(['map', 'logs'], files);
    expect(code).toBe(2);
    expect(errors).toContain('-o FILE.svg');
  });

  test('never over one of the logs', async () => {
    const { code, files: after } = await drillhand(['map', 'logs', '-o', 'logs/b.well'], files);
    expect(code).toBe(2);
    expect(written(after.get('logs/b.well'))).toBe(files['logs/b.well']);
  });
});

describe('section', () => {
  test('hangs the wells by their grounds, and joins only when asked', async () => {
    const run = async (...more: string[]) =>
      (await drillhand(['section', 'logs/a.well', 'logs/b.well', '-o', '-', ...more], files)).output;
    expect(XMLValidator.validate(await run())).toBe(true);
    expect(await run()).not.toContain('class="dh-join"');
    expect(await run('--join')).toContain('class="dh-join"');
  });

  test('needs two logs, and one ground elevation', async () => {
    const one = await drillhand(['section', 'logs/a.well', '-o', 's.svg'], files);
    expect([one.code, one.errors]).toEqual([2, expect.stringContaining('two logs at least')]);
    const flat = { 'a.well': log('A-1', 600_000, null), 'b.well': log('B-2', 600_400, null) };
    const none = await drillhand(['section', 'a.well', 'b.well', '-o', 's.svg'], flat);
    expect([none.code, none.errors]).toEqual([2, expect.stringContaining('"ground" line')]);
  });
});
