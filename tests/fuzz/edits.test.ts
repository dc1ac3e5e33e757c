import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse, update } from '../../server/analysis/index.ts';
import type { Settings, Snapshot } from '../../server/analysis/snapshot.ts';
import { applyChange, lineTextOf, type TextChange } from '../../server/lsp/documents.ts';
import { outsideOf } from './inside.ts';
import { beginning, fragment, line } from './material.ts';
import { edits, patience } from './runs.ts';

const settings: Settings = { packs: [], severities: {}, today: '2026-06-01' };
const editsInARow = 20;

/** A place as shares of the text, so that it falls inside whatever the text has become. */
const share = fc.double({ min: 0, max: 1, noNaN: true });

const inserted = fc.oneof(
  { arbitrary: fragment, weight: 4 },
  { arbitrary: fc.constantFrom('', '\n', '\r\n', '  '), weight: 3 },
  { arbitrary: fc.array(line, { minLength: 1, maxLength: 4 }).map((lines) => `${lines.join('\n')}\n`), weight: 2 },
);

const edit = fc.record({
  line: share,
  column: share,
  lines: fc.constantFrom(0, 0, 0, 1, 3),
  columns: fc.constantFrom(0, 0, 1, 4, 200),
  text: inserted,
});

type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

function changeOf({ line: at, column, lines, columns, text }: Edit, now: readonly string[]): TextChange {
  const number = Math.floor(at * (now.length - 1));
  const character = Math.round(column * (now[number]?.length ?? 0));
  const start = { line: number, character };
  return { range: { start, end: { line: number + lines, character: character + columns } }, text };
}

const plain = ({ findings }: Snapshot) => findings.map(({ fixes: _, ...finding }) => finding);

/** Data alone: some of it is read when it is first asked for, and a copy of that is of another class. */
const data = <T>(value: T): T => structuredClone(value);

const sameAs = (one: Snapshot, other: Snapshot): readonly string[] => {
  const parts: readonly (readonly [string, unknown, unknown])[] = [
    ['lines', one.lines, other.lines],
    ['tree', one.tree, other.tree],
    ['log', data(one.log), data(other.log)],
    ['record', data(one.record), data(other.record)],
    ['findings', plain(one), plain(other)],
  ];
  return parts.filter(([, a, b]) => !isDeepStrictEqual(a, b)).map(([name]) => name);
};

test(`${edits} edits: what is kept from before is what a full analysis gives`, patience, () => {
  let tried = 0;
  fc.assert(
    fc.property(
      beginning,
      fc.array(edit, { minLength: editsInARow, maxLength: editsInARow, size: 'max' }),
      (begun, row) => {
        let text = lineTextOf(begun);
        let kept = analyse(text.lines, settings, 0);
        for (const each of row) {
          const { text: next, edit: lineEdit } = applyChange(text, changeOf(each, text.lines));
          text = next;
          tried += 1;
          kept = update(kept, lineEdit, settings, tried);
          const full = analyse(text.lines, settings, tried);
          expect(sameAs(kept, full)).toEqual([]);
          expect(outsideOf(kept)).toEqual([]);
          expect(kept.findings.filter(({ rule }) => rule === 'internal-error')).toEqual([]);
        }
      },
    ),
    { numRuns: Math.ceil(edits / editsInARow) },
  );
  expect(tried).toBeGreaterThanOrEqual(edits);
});
