import { Buffer } from 'node:buffer';
import { readFileSync } from 'node:fs';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';
import { faultsAgainstSchema } from './json-schema.ts';
import { sound } from './logs.ts';

const sample = readFileSync(new URL('../../samples/kestrel-hollow.well', import.meta.url), 'utf8');
const files = { 'k.well': sample };

const hostile = 'well <script>alert("x")</script> & co\nstrata\n  0 - 3 <b>clay</b> ; <img src=x onerror=alert(1)>\n';

describe('record', () => {
  test('JSON has the figures in SI, each with its lines', async () => {
    const { output } = await drillhand(['record', 'k.well', '--format', 'json'], files);
    const { figures } = JSON.parse(output);
    const figure = (id: string) => figures.find((each: { id: string }) => each.id === id);
    // A ring of 254 mm round 168.3 mm over 7.2 m holds pi/4 (0.254² − 0.1683²) 7.2 m³.
    expect(figure('casing.1.grout.1.annulus-volume')).toMatchObject({
      unit: 'm3',
      lines: expect.arrayContaining([26]),
    });
    expect(figure('casing.1.grout.1.annulus-volume').value).toBeCloseTo(
      (Math.PI / 4) * (0.254 ** 2 - 0.1683 ** 2) * 7.2,
      9,
    );
    expect(figure('water.static-level')).toMatchObject({ value: 5.2, unit: 'm' });
  });

  test('JSON fits the schema that the program prints', async () => {
    const schema = JSON.parse((await drillhand(['schema', 'record'])).output);
    const { output } = await drillhand(['record', 'k.well', '--format', 'json'], files);
    expect(await faultsAgainstSchema(schema, JSON.parse(output))).toEqual([]);
    expect(await faultsAgainstSchema(schema, { ...JSON.parse(output), figures: 3 })).not.toEqual([]);
  });

  test('the text has the log, the figures and the questions', async () => {
    const { output } = await drillhand(['record', '-'], {}, { input: `${sample}\ncasing 0 - ? pvc 114.3\n` });
    expect(output).toMatch(/^The checks and figures are a help, not the law/);
    expect(output).toMatch(/\nRecord of KH-04\n=+\n/);
    expect(output).toMatch(/silty clay, brown, stiff, some gravel/i);
    expect(output).toContain('0.205 m³ (54.1 US gal)');
    expect(output).toMatch(/Questions for the crew\n-+\n\n {2}line \d+: /);
  });

  test('the page stands alone and takes no orders from the log', async () => {
    const { output } = await drillhand(['record', '-', '--format', 'html'], {}, { input: hostile });
    expect(output).toMatch(/^<!doctype html>/);
    expect(output).not.toMatch(/<(script|img|b|a|link|iframe|object)[\s>]/i);
    expect(output).toContain('&lt;script&gt;');
  });
});

describe('draw', () => {
  test('writes SVG to a file, and the same to standard output', async () => {
    const toFile = await drillhand(['draw', 'k.well', '-o', 'k.svg'], files);
    const svg = Buffer.from(toFile.files.get('k.svg') ?? []).toString('utf8');
    expect(toFile).toMatchObject({ code: 0, output: '', errors: '' });
    expect(XMLValidator.validate(svg)).toBe(true);
    expect(svg).toContain('<svg');
    expect((await drillhand(['draw', 'k.well', '-o', '-'], files)).output).toBe(svg);
  });

  test('a hostile log stays a drawing', async () => {
    const { output } = await drillhand(['draw', '-', '-o', '-'], {}, { input: hostile });
    expect(XMLValidator.validate(output)).toBe(true);
    expect(output).not.toMatch(/<script|<img|<b>/);
  });

  test('never writes over the log', async () => {
    const { code, errors, files: after } = await drillhand(['draw', 'a.well', '-o', './a.well'], { 'a.well': sound });
    expect({ code, errors }).toEqual({
      code: 2,
      errors: 'drillhand: a drawing is written as .svg, .png, .pdf, .html; "./a.well" ends in none of them\n',
    });
    expect(after.has('./a.well')).toBe(false);
  });

  test('what cannot be written is told', async () => {
    const { code, errors } = await drillhand(['draw', 'k.well', '-o', 'k.svg'], files, { writeError: 'ENOSPC' });
    expect({ code, errors }).toEqual({ code: 2, errors: 'drillhand: k.svg: not written: the disk is full\n' });
  });
});

describe('rules and schema', () => {
  test('every rule is listed and can be told in full', async () => {
    const { output } = await drillhand(['rules']);
    const ids = output
      .trimEnd()
      .split('\n')
      .map((line) => line.split(' ')[0] ?? '');
    expect(ids).toContain('missing-shoe');
    for (const id of ids) {
      const { code, output: told } = await drillhand(['rules', id]);
      expect(code).toBe(0);
      expect(told).toMatch(new RegExp(`^${id} \\(.*\\)\\n[\\s\\S]*Why: .*\\n[\\s\\S]*To mend: .*\\n[\\s\\S]*Source: `));
    }
  });

  test('the schema of a pack takes the shape of a pack and no other', async () => {
    const schema = JSON.parse((await drillhand(['schema', 'pack'])).output);
    const pack = { id: 'fen', title: 'Fen', notice: 'A help, not the law.', limits: {} };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(await faultsAgainstSchema(schema, pack)).toEqual([]);
    expect(await faultsAgainstSchema(schema, { ...pack, title: 3 })).not.toEqual([]);
  });
});
