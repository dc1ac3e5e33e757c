import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { snippetOf, templates } from '../../grammar/templates.ts';

/** The text that a template leaves where nobody fills it in: question marks, and the first of each choice. */
const leftOpen = (snippet: string): string =>
  snippet
    .replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$[1-9]/g, '?')
    .replace('$0', '');

/** A template that only waits for its first words. */
const waitsForWords = new Set(['strata']);

describe('whole sections', () => {
  for (const template of templates)
    for (const system of ['metric', 'us'] as const)
      test(`${template.title}, ${system}: every line is read, whatever is left open`, () => {
        const { lines } = parseText(`units ft in gal-us\ncasing 0 - 9\n${leftOpen(snippetOf(template, system))}`);
        const problems = lines.flatMap((line) => line.problems.map(({ code, written }) => `${code} ${written}`));
        expect(problems).toEqual([]);
        expect(waitsForWords.has(template.row) || lines.some(({ row }) => row === template.row)).toBe(true);
      });
});
