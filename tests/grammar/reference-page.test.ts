import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseText, splitLines } from '../../grammar/index.ts';
import { keywords } from '../../grammar/table.ts';
import { analyse } from '../../server/analysis/index.ts';
import { formatText } from '../../server/features/format.ts';

const page = readFileSync(new URL('../../grammar/README.md', import.meta.url), 'utf8');

interface Block {
  readonly line: number;
  readonly text: string;
  /** The problem of reading that the page says it has. */
  readonly problem: string | null;
  /** The rule that the page says reports it. */
  readonly rule: string | null;
}

const blocks: readonly Block[] = [...page.matchAll(/^```well(?: (problem|rule)=([\w-]+))?\n([\s\S]*?)^```$/gm)].map(
  ({ index, 1: kind, 2: name = '', 3: text = '' }) => ({
    line: page.slice(0, index).split('\n').length,
    text,
    problem: kind === 'problem' ? name : null,
    rule: kind === 'rule' ? name : null,
  }),
);

const problemsOf = (text: string): string[] => [
  ...new Set(parseText(text).lines.flatMap((line) => line.problems.map(({ code }) => code))),
];

describe('the reference page', () => {
  test('every fence is a block that is read here, or names no language', () => {
    const fences = page.match(/^```\w.*$/gm) ?? [];
    expect(fences).toHaveLength(blocks.length);
    expect(blocks.length).toBeGreaterThan(40);
  });

  test.each(blocks)('line $line: the block has the problem that it says, and no other', ({ text, problem }) => {
    expect(problemsOf(text)).toEqual(problem === null ? [] : [problem]);
  });

  test.each(blocks.filter(({ problem }) => problem === null))(
    'line $line: formatting leaves it without problems',
    ({ text }) => {
      expect(problemsOf(formatText(text))).toEqual([]);
    },
  );

  test.each(blocks.filter(({ rule }) => rule !== null))(
    'line $line: the rule $rule reports the block',
    ({ text, rule }) => {
      const { findings } = analyse(splitLines(text), { packs: [], severities: {}, today: null }, 1);
      expect(findings.map((each) => each.rule)).toContain(rule);
    },
  );

  test('the hurried layers are those of the whole log', () => {
    const [whole, hurried] = blocks;
    const layers = formatText(hurried?.text ?? '').trimEnd();
    expect(layers).toMatch(/^strata\n/);
    expect(whole?.text).toContain(layers);
  });

  test('the whole log is the sample of that name', () => {
    const sample = readFileSync(new URL('../../samples/kestrel-hollow.well', import.meta.url), 'utf8');
    expect(blocks[0]?.text).toBe(sample);
  });

  test('the settled readings are numbered from 1 to 21, each with an example', () => {
    const [, readings = ''] = page.split(/^## Settled readings$/m);
    const numbered = (readings.split(/^## /m)[0] ?? '').split(/^\*\*(?=\d+\. )/m).slice(1);
    expect(numbered.map((each) => Number.parseInt(each, 10))).toEqual(Array.from({ length: 21 }, (_, at) => at + 1));
    for (const each of numbered) expect(each).toContain('```well');
  });

  test('every keyword is on the page', () => {
    for (const keyword of keywords) expect(page).toContain(`\`${keyword}\``);
  });

  test('every link within the page leads somewhere', () => {
    const headings = [...page.matchAll(/^#+ (.*)$/gm)].map(({ 1: text = '' }) =>
      text
        .toLowerCase()
        .replace(/[^\w\s-]/g, '')
        .replace(/\s/g, '-'),
    );
    for (const { 1: target = '' } of page.matchAll(/\]\(#([^)]*)\)/g)) expect(headings).toContain(target);
  });
});
