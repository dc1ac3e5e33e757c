import { describe, expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';

const log = 'well KH-04\nowner ?\nstrata\n  0 - 3.8 clay\n  - 6? sand *loose*\n';

describe('drillhand questions', () => {
  test('prints the list as text', async () => {
    const { code, output } = await drillhand(['questions', 'a.well'], { 'a.well': log });
    expect(code).toBe(0);
    expect(output).toContain('Questions for the crew: KH-04\n');
    expect(output).toContain('2. Strata, 3.8 – 6? m\n   Written: - 6? sand *loose*  (line 5)\n');
  });

  test('as Markdown, with what the log says kept as it is', async () => {
    const { output } = await drillhand(['questions', 'a.well', '--format', 'markdown'], {
      'a.well': log.replace('KH-04', '*KH* <b>'),
    });
    expect(output).toContain('# Questions for the crew: \\*KH\\* \\<b\\>\n');
    expect(output).toContain('## Down the hole\n\n2. **Strata, 3.8 – 6? m**');
    expect(output).toContain('written: `- 6? sand *loose*` (line 5)');
  });

  test('as JSON, with lines from 0', async () => {
    const { output } = await drillhand(['questions', 'a.well', '--format=json'], { 'a.well': log });
    const { well, questions } = JSON.parse(output) as { well: string; questions: { written: { line: number } }[] };
    expect(well).toBe('KH-04');
    expect(questions.map(({ written }) => written.line)).toEqual([1, 4]);
  });

  test('says so where nothing is open', async () => {
    const { code, output } = await drillhand(['questions', 'a.well'], { 'a.well': 'well KH-04\n' });
    expect(code).toBe(0);
    expect(output).toContain('Nothing in this log is left open for the crew.');
    const marked = await drillhand(['questions', 'a.well', '--format=markdown'], { 'a.well': 'well KH-04\n' });
    expect(marked.output).toContain('Nothing in this log is left open for the crew.');
  });

  test('asks what a pack given with --rules wants to know', async () => {
    const { output } = await drillhand(['questions', 'a.well', '--rules', 'texas-16-76'], {
      'a.well': 'well KH-04\nfinished 2026-05-06\n',
    });
    expect(output).toContain('The record lacks');
  });

  test('wants one file', async () => {
    expect((await drillhand(['questions'], {})).code).toBe(2);
  });
});
