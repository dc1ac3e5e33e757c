import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import {
  applyChange,
  editSince,
  lineTextOf,
  type TextChange,
  textOf,
  type Unchanged,
  unchangedAfter,
} from '../../server/lsp/documents.ts';

const piece = fc.constantFrom('a', 'clay', '\n', '\r\n', '\r', ' ', '😀', '0 - 3');
const text = fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join(''));
const place = fc.record({ line: fc.integer({ min: -1, max: 9 }), character: fc.integer({ min: -1, max: 12 }) });
const change: fc.Arbitrary<TextChange> = fc.oneof(
  fc.record({ range: fc.record({ start: place, end: place }), text }),
  fc.record({ text }),
);

type Place = { line: number; character: number };

/** The library miscounts its lines after a change outside the text, so it is asked about places inside. */
const nearby = ({ line, character }: Place, lineCount: number): Place => ({
  line: Math.abs(line) % lineCount,
  character: Math.abs(character),
});

const inOrder = ({ range, text: inserted }: TextChange, lineCount: number) => {
  if (range === undefined) return { text: inserted };
  const start = nearby(range.start, lineCount);
  const end = nearby(range.end, lineCount);
  const swapped = end.line < start.line || (end.line === start.line && end.character < start.character);
  return { range: swapped ? { start: end, end: start } : { start, end }, text: inserted };
};
describe('changes of a text', () => {
  test('a text and its lines are the same', () => {
    fc.assert(
      fc.property(text, (original) => {
        const { lines, ends } = lineTextOf(original);
        expect(textOf({ lines, ends })).toBe(original);
        expect(lines).toEqual(original.split(/\r\n|\n|\r/));
        expect(ends).toHaveLength(lines.length);
      }),
    );
  });

  // The general library vscode-languageserver-textdocument keeps the whole text and is asked for the same.
  test('give what a document of the protocol gives', () => {
    fc.assert(
      fc.property(text, fc.array(change, { maxLength: 5 }), (original, changes) => {
        let known = lineTextOf(original);
        let other = TextDocument.create('file:///a', 'drillhand', 1, original);
        for (const each of changes) {
          const inside = inOrder(each, known.lines.length);
          known = applyChange(known, inside).text;
          const whole = TextDocument.update(other, [inside], other.version + 1).getText();
          other = TextDocument.create('file:///a', 'drillhand', 1, whole);
          expect(textOf(known)).toBe(whole);
          expect(known.lines).toHaveLength(other.lineCount);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('name the lines that are new, one by one and together', () => {
    fc.assert(
      fc.property(text, fc.array(change, { minLength: 1, maxLength: 6 }), (original, changes) => {
        const old = lineTextOf(original);
        let now = old;
        let unchanged: Unchanged | null = null;
        for (const each of changes) {
          const { text: next, edit } = applyChange(now, each);
          const rebuilt = [
            ...now.lines.slice(0, edit.first),
            ...edit.inserted,
            ...now.lines.slice(edit.first + edit.removed),
          ];
          expect(rebuilt).toEqual(next.lines);
          unchanged = unchangedAfter(unchanged, edit, now.lines.length);
          now = next;
        }
        if (unchanged === null) return;
        const { first, removed, inserted } = editSince(unchanged, old.lines.length, now.lines);
        expect([...old.lines.slice(0, first), ...inserted, ...old.lines.slice(first + removed)]).toEqual(now.lines);
      }),
      { numRuns: 2000 },
    );
  });

  test('a change of one character names one line', () => {
    const { edit } = applyChange(lineTextOf('a\nb\nc'), {
      range: { start: { line: 1, character: 1 }, end: { line: 1, character: 1 } },
      text: 'x',
    });
    expect(edit).toEqual({ first: 1, removed: 1, inserted: ['bx'] });
  });

  test('two hundred thousand pasted lines are taken in', () => {
    const { text: pasted } = applyChange(lineTextOf('a\n'), {
      range: { start: { line: 1, character: 0 }, end: { line: 1, character: 0 } },
      text: 'clay\n'.repeat(200_000),
    });
    expect(pasted.lines).toHaveLength(200_002);
  });

  test('places that are no numbers are moved inside', () => {
    const odd = { line: Number.NaN, character: Number.POSITIVE_INFINITY };
    const { text: now } = applyChange(lineTextOf('ab\ncd'), { range: { start: odd, end: odd }, text: 'x' });
    expect(textOf(now)).toHaveLength(6);
  });
});
