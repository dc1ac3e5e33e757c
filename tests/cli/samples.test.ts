import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseText } from '../../server/cli/engine.ts';
import { formatText } from '../../server/features/format.ts';

const folder = new URL('../../samples/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');

const names = readdirSync(folder)
  .filter((file) => file.endsWith('.well'))
  .map((file) => file.replace('.well', ''));

const check = (name: string) => analyseText(read(name), { packs: [], today: '2026-12-31' });

/** The rules that the page lists under a well's heading. */
const promised = (page: string, name: string): string[] => {
  const section = page.split(/^### /m).find((each) => each.startsWith(`${name}\n`)) ?? '';
  return [...section.matchAll(/^- `([\w-]+)`:/gm)].map((match) => match[1] ?? '').sort();
};

describe('the careful logs', () => {
  test('there are at least seven, each with a twin from the field', () => {
    expect(names.length).toBeGreaterThanOrEqual(7);
    expect(readdirSync(new URL('field/', folder)).sort()).toEqual(names.map((name) => `${name}.well`).sort());
  });

  test.each(names)('%s is formatted', (name) => {
    const text = read(`${name}.well`);
    expect(formatText(text)).toBe(text);
  });

  test.each(names)('%s is quiet', (name) => {
    const { findings } = check(`${name}.well`);
    const loud = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
    expect(loud.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
  });

  test.each(names)('%s names packs, place, dates and owner', (name) => {
    const { log } = check(`${name}.well`);
    expect(log.packs.map(({ text }) => text)).toEqual(['general']);
    expect([log.place, log.ground, log.began, log.finished, log.header.owner]).not.toContain(null);
    expect(log.questions).toEqual([]);
  });
});

describe('the twins from the field', () => {
  const page = read('README.md');

  test.each(names)('%s: the page lists exactly the rules that report something', (name) => {
    const found = new Set(check(`field/${name}.well`).findings.map(({ rule }) => rule));
    expect([...found].sort()).toEqual(promised(page, name));
  });

  test.each(names)('%s is the same well as its careful twin', (name) => {
    expect(check(`field/${name}.well`).log.header.well?.text).toBe(check(`${name}.well`).log.header.well?.text);
  });
});
