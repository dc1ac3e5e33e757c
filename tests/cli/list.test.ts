import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { drillhand, messages } from './fake-world.ts';

const shallow = [
  'well KH-10',
  'owner =1+1',
  'place 44.6128 -78.3042 WGS84',
  'rules montana-36-21',
  'finished 2026-12-01',
  'hole',
  '  0 - 20 152',
  'casing +0.5 - 7.2 steel 168.3 x 6.4 driven',
  '  shoe 7.2 drive shoe',
  'water',
  '  level +1.5 2026-12-02',
  'test pump 40 L/min, 2026-12-02 08:00',
  '',
].join('\n');
const deep = 'well KH-2\nplace 44.5310 -78.2064 NAD27\nowner Heron Spring\nhole\n  0 - 91.4 152\n';
const bare = 'strata\n  4 - 2 clay\n';
const files = { 'wells/a.well': shallow, 'wells/b.well': deep, 'wells/c.well': bare };

const list = (...args: string[]) => drillhand(['list', 'wells', ...args], files);

const idsOf = (json: string): (string | null)[] => JSON.parse(json).map(({ id }: { id: string | null }) => id);

const ids = async (...args: string[]) => idsOf((await list('--format', 'json', ...args)).output);

describe('the list for people', () => {
  test('lines up, with "?" for what is not known', async () => {
    const { code, output, errors } = await list();
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    const [head = '', ...rows] = output.trimEnd().split('\n');
    const at = (title: string): number => head.indexOf(title);
    expect(rows.map((row) => row.slice(at('strings')).split(/ {2,}/)[0])).toEqual([
      'casing to 7.2 m, 168.3 mm',
      '?',
      '?',
    ]);
    expect(rows.map((row) => row.slice(at('findings'), at('due')).trim())).toEqual([
      expect.stringMatching(/warning/),
      'no findings',
      '1 error',
    ]);
    expect(rows[0]).toContain('+1.5 m');
    expect(rows[0]).toContain('40.0 L/min');
    expect(rows[0]).toContain('record 2027-01-30 (30 days left)');
    expect(rows[1]).toMatch(/^KH-2 .* 91\.4 m /);
  });

  test('cannot steer the terminal', async () => {
    const { output } = await drillhand(['list', 'a.well'], { 'a.well': 'well \u001b[2JKH\u202e\n' });
    for (const steering of ['\u001b', '\u202e']) expect(output).not.toContain(steering);
  });

  test('goes on past a log that cannot be read, and ends with 2', async () => {
    const { code, output, errors } = await drillhand(['list', 'wells', 'gone.well'], files);
    expect(code).toBe(2);
    expect(messages(errors)).toBe(1);
    expect(output).toContain('KH-2');
  });
});

describe('sort and filter', () => {
  test.each([
    ['by id, numbers as numbers', ['--sort', 'id'], ['KH-2', 'KH-10', null]],
    ['by depth, unknown last', ['--sort', 'depth'], ['KH-10', 'KH-2', null]],
    ['from the greatest down, unknown last', ['--sort', 'depth', '--reverse'], ['KH-2', 'KH-10', null]],
    ['deeper than', ['--filter', 'depth>60'], ['KH-2']],
    ['in another unit', ['--filter', 'depth<100ft'], ['KH-10']],
    ['a rate in gallons', ['--filter', 'yield >= 10 gpm-us'], ['KH-10']],
    ['a level above ground', ['--filter', 'level<0'], ['KH-10']],
    ['not known', ['--filter', 'id=?'], [null]],
    ['known', ['--filter', 'depth!=?'], ['KH-10', 'KH-2']],
    ['contains', ['--filter', 'owner~heron'], ['KH-2']],
    ['both', ['--filter', 'error=0', '--filter', 'depth<50'], ['KH-10']],
    ['days left', ['--filter', 'left<=30'], ['KH-10']],
  ])('%s', async (_, args, expected) => {
    expect(await ids(...args)).toEqual(expected);
  });

  test.each([
    [['--sort', 'dept'], '--sort: there is no key "dept"; did you mean "depth"'],
    [['--filter', 'dept>3'], '--filter: there is no key "dept"; did you mean "depth"'],
    [['--filter', 'depth'], '--filter takes KEY and a value'],
    [['--filter', 'depth>deep'], '--filter: depth is a number; "deep" is none'],
    [['--filter', 'depth>3 gpm-us'], '--filter: depth is counted in m; "gpm-us" is no unit for it'],
  ])('%j is told', async (args, message) => {
    const { code, errors, output } = await list(...args);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors.startsWith(`drillhand: ${message}`)).toBe(true);
    expect(messages(errors)).toBe(1);
  });
});

describe('CSV', () => {
  test('is read back by another program, with numbers as numbers and formulas made harmless and told', async () => {
    const { output, errors } = await list('--format', 'csv');
    const [row] = parse(output, { columns: true }) as Record<string, string>[];
    expect(row).toMatchObject({
      id: 'KH-10',
      owner: "'=1+1",
      depth_m: '20',
      level_m: '-1.5',
      yield_L_per_min: '40',
      left: '30',
    });
    expect(errors).toBe(
      'note: 1 cell begins with an apostrophe, so that no spreadsheet takes what was logged for a formula\n',
    );
  });

  test.each(['=1', '+1', '-x', '@SUM(1)'])('an owner %j is no formula', async (owner) => {
    const { output } = await drillhand(['list', 'a.well', '--format', 'csv'], { 'a.well': `owner ${owner}\n` });
    const [row] = parse(output, { columns: true }) as Record<string, string>[];
    expect(row?.owner).toBe(`'${owner}`);
  });
});

describe('GeoJSON by RFC 7946', () => {
  test('has longitude before latitude, and no geometry where there is no place on WGS 84', async () => {
    const { output, errors } = await list('--format', 'geojson');
    const { type, features } = JSON.parse(output);
    expect(type).toBe('FeatureCollection');
    expect(features.map(({ geometry }: { geometry: unknown }) => geometry)).toEqual([
      { type: 'Point', coordinates: [-78.3042, 44.6128] },
      null,
      null,
    ]);
    expect(features[1].properties).toMatchObject({ id: 'KH-2', datum: 'NAD27' });
    expect(errors.split('\n').filter((line) => line !== '')).toEqual([
      'note: 1 of 3 wells have no place and go in without geometry',
      'note: 1 of 3 wells are on a datum far from WGS 84 and go in without geometry',
    ]);
  });
});

describe('the page over all wells', () => {
  test('holds the table and the questions for each crew, and takes no orders from a log', async () => {
    const asking = 'well <script>alert(1)</script>\nhole\n  0 - ?  152\n';
    const { code, files: after } = await drillhand(['list', 'wells', '--format', 'html', '-o', 'out.html'], {
      ...files,
      'wells/d.well': asking,
    });
    const page = new TextDecoder().decode(after.get('out.html'));
    expect(code).toBe(0);
    expect(page).toMatch(/^<!doctype html>/);
    expect(page).toContain('<th scope="row">KH-10</th>');
    expect(page).toContain('Questions for the crew: &lt;script&gt;');
    expect(page).toContain('Log: wells/d.well.');
    expect(page).not.toMatch(/<(script|img|a|link|iframe|object)[\s>]/i);
  });

  test('is not written over a log', async () => {
    const { code, errors } = await drillhand(['list', 'wells', '--format', 'html', '-o', 'wells/a.well'], files);
    expect(code).toBe(2);
    expect(errors).toContain('wells/a.well is one of the logs');
  });
});

test('findings of the folder are counted with those of the log', async () => {
  const twice = { 'a.well': 'well KH-3\n', 'b.well': 'well KH-3\n' };
  const { output } = await drillhand(['list', 'a.well', 'b.well', '--format', 'json'], twice);
  expect(JSON.parse(output).map(({ findings }: { findings: { warning: number } }) => findings.warning)).toEqual([1, 1]);
});
