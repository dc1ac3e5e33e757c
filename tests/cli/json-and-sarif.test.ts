import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';
import { faultsAgainstSchema } from './json-schema.ts';
import { overlapping, sound } from './logs.ts';

/** OASIS, SARIF Version 2.1.0 (Errata 01), the schema that goes with the standard. */
const sarifSchema = JSON.parse(readFileSync(new URL('sarif-schema-2.1.0.json', import.meta.url), 'utf8'));

const files = { 'a b/ü.well': overlapping, 'clean.well': sound };

const report = async (format: string) =>
  JSON.parse((await drillhand(['check', 'a b/ü.well', 'clean.well', '--format', format], files)).output);

describe('JSON', () => {
  test('one entry a file, positions from 0 as in the language server protocol', async () => {
    const [first, second] = await report('json');
    expect(second).toEqual({ file: 'clean.well', findings: [] });
    expect(first.file).toBe('a b/ü.well');
    expect(first.findings).toEqual([
      {
        rule: 'interval-overlap',
        severity: 'error',
        message: expect.stringContaining('4'),
        range: { start: { line: 2, character: 2 }, end: { line: 2, character: expect.any(Number) } },
        related: [{ message: expect.any(String), range: expect.objectContaining({ end: expect.anything() }) }],
      },
    ]);
  });

  test('is a list even where no file could be read', async () => {
    expect((await drillhand(['check', 'gone', '--format', 'json'])).output).toBe('[]\n');
  });
});

describe('SARIF', () => {
  test('fits the schema of the standard', async () => {
    expect(await faultsAgainstSchema(sarifSchema, await report('sarif'))).toEqual([]);
  });

  test('the schema finds a fault where there is one', async () => {
    const log = await report('sarif');
    log.runs[0].results[0].level = 'fatal';
    expect(await faultsAgainstSchema(sarifSchema, log)).not.toEqual([]);
  });

  test('places count from 1, names are URIs, and the result points to its rule', async () => {
    const [run] = (await report('sarif')).runs;
    const [result] = run.results;
    const { artifactLocation, region } = result.locations[0].physicalLocation;
    expect(artifactLocation.uri).toBe('a%20b/%C3%BC.well');
    expect(region).toMatchObject({ startLine: 3, startColumn: 3, endLine: 3 });
    expect(run.tool.driver.rules[result.ruleIndex].id).toBe('interval-overlap');
    expect(result.relatedLocations).toHaveLength(1);
  });
});
