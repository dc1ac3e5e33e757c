import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';

const sample = readFileSync(new URL('../../samples/kestrel-hollow.well', import.meta.url), 'utf8');
const files = { 'k.well': sample };

describe('export', () => {
  test.each([
    ['json', /^\{\n {2}"log"/],
    ['gwml', /^<\?xml version="1.0" encoding="UTF-8"\?>\n<gwml2w:GW_Well /],
    ['las', /^~Version/],
    ['geojson', /^\{\n {2}"type": "FeatureCollection"/],
  ])('writes %s to standard output or to a file, the same both times', async (format, start) => {
    const printed = await drillhand(['export', 'k.well', '--format', format, '-o', '-'], files);
    expect(printed.code).toBe(0);
    expect(printed.output).toMatch(start);
    const written = await drillhand(['export', 'k.well', '--format', format, '-o', 'out.x'], files);
    expect(new TextDecoder().decode(written.files.get('out.x'))).toBe(printed.output);
  });

  test('writes each table of a log into a folder', async () => {
    const { code, files: after } = await drillhand(['export', 'k.well', '--format', 'csv', '-o', 'tables'], files);
    expect(code).toBe(0);
    expect([...after.keys()]).toEqual(expect.arrayContaining(['tables/strata.csv', 'tables/figures.csv']));
    const one = await drillhand(['export', 'k.well', '--format', 'csv', '--table', 'strata', '-o', '-'], files);
    expect(one.output).toBe(new TextDecoder().decode(after.get('tables/strata.csv')));
  });

  test('gives a log back, to the letter, out of its JSON', async () => {
    const json = (await drillhand(['export', 'k.well', '--format', 'json', '-o', '-'], files)).output;
    const back = await drillhand(['export', 'k.json', '--format', 'notation', '-o', '-'], { 'k.json': json });
    expect(back).toMatchObject({ code: 0, output: sample, errors: '' });
    const las = await drillhand(['export', 'k.json', '--format', 'las', '-o', '-'], { 'k.json': json });
    expect(las.output).toBe((await drillhand(['export', 'k.well', '--format', 'las', '-o', '-'], files)).output);
  });

  test('says where a JSON record says other things than its lines', async () => {
    const json = (await drillhand(['export', 'k.well', '--format', 'json', '-o', '-'], files)).output;
    const changed = json.replace('"totalDepth": 61', '"totalDepth": 62');
    expect(changed).not.toBe(json);
    const { errors, output } = await drillhand(['export', 'k.json', '--format', 'notation', '-o', '-'], {
      'k.json': changed,
    });
    expect(errors).toBe('k.json: note: what its "log" says is not what its "source" lines say; the lines were taken\n');
    expect(output).toBe(sample);
  });

  test('says what a format could not carry', async () => {
    const { errors } = await drillhand(['export', 'k.well', '--format', 'geojson', '-o', '-'], files);
    expect(errors).toMatch(/^k\.well: note: /);
  });

  test.each([
    [['k.well', '-o', 'x'], /say which format/],
    [['k.well', '--format', 'xls', '-o', 'x'], /--format takes .*"xls" is none of them/],
    [['k.well', '--format', 'las'], /say where it goes/],
    [['k.well', '--format', 'csv'], /say where the files go: -o FOLDER/],
    [['k.well', '--format', 'csv', '-o', '-'], /several files do not go to standard output/],
    [['k.well', '--format', 'csv', '--table', 'stratum', '-o', '-'], /there is no table "stratum"/],
    [['k.well', '--format', 'las', '--table', 'strata', '-o', '-'], /--table goes with/],
    [['k.well', '--format', 'notation', '-o', '-'], /is a log already/],
    [['k.well', '--format', 'las', '-o', 'k.well'], /is the log itself/],
    [['bad.json', '--format', 'las', '-o', '-'], /bad\.json is no record .*it is not JSON/],
  ])('%j is refused with a word on what to do', async (args, message) => {
    const { code, errors, output } = await drillhand(['export', ...args], { ...files, 'bad.json': '{' });
    expect(code).toBe(2);
    expect(errors).toMatch(message);
    expect(output).toBe('');
  });
});
