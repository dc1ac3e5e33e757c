import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analysis/index.ts';
import { recordText } from '../../server/export/record-text.ts';
import { hover } from '../../server/features/hover.ts';
import type { Figure } from '../../server/record/record.ts';
import { settings } from './fixture.ts';

const folder = new URL('../../samples/', import.meta.url);
const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.well'));

/** Markdown without its marks and hard breaks, so that it can be held against plain text. */
const plain = (markdown: string): string => markdown.replace(/\\(?=[\\`*_[\]#!|<>~&$@:.+=)-])/g, '').replace(/`/g, '');

/** What the sheet says of a figure, piece by piece. */
function piecesOf({ formula, source, inputs, text, otherText, caution, waitsFor, title }: Figure): string[] {
  const given = inputs.map(
    ({ name, text: shown, line }) => `${name} ${shown}${line === null ? '' : ` (line ${line + 1})`}`,
  );
  const results = waitsFor.length > 0 ? waitsFor : [text, otherText];
  return [title, formula, source, ...given, ...results, ...(caution === null ? [] : [caution])].filter(Boolean);
}

describe('hover and the calculation sheet', () => {
  test.each(names)('%s: every figure of the sheet is told on its line, with the same sum', (name) => {
    const lines = readFileSync(new URL(name, folder), 'utf8').split('\n');
    const snapshot = analyse(lines, settings, 1);
    const sheet = recordText(snapshot.record);
    const told = new Map<number, string>();
    const missing = snapshot.record.figures.flatMap((figure) => {
      const line = figure.span?.line ?? figure.lines[0] ?? 0;
      const column = (lines[line] ?? '').search(/\S/);
      const text = told.get(line) ?? plain(hover(snapshot, { line, column })?.markdown ?? '');
      told.set(line, text);
      return piecesOf(figure).flatMap((piece) =>
        text.includes(piece.replace(/\s+/g, ' ')) ? [] : [`${figure.id}: ${piece}`],
      );
    });
    expect(missing).toEqual([]);
    for (const { id } of snapshot.record.figures) expect(sheet).toContain(`    ${id}\n`);
  });
});
