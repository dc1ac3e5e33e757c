import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../server/analysis/index.ts';
import type { Settings, Snapshot } from '../../server/analysis/snapshot.ts';
import { fixAllAction, quickFixActions } from '../../server/features/code-actions.ts';
import { complete } from '../../server/features/completion.ts';
import { describeSuggestion } from '../../server/features/completion-docs.ts';
import { documentHighlights } from '../../server/features/document-highlights.ts';
import { documentSymbols, type Outline } from '../../server/features/document-symbols.ts';
import { foldingRanges } from '../../server/features/folding-ranges.ts';
import { formatEdits } from '../../server/features/format.ts';
import { hover } from '../../server/features/hover.ts';
import type { Position } from '../../server/features/position.ts';
import { selectionRanges } from '../../server/features/selection-ranges.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { lineTextOf } from '../../server/lsp/documents.ts';
import { outside } from './inside.ts';
import { file } from './material.ts';
import { files, patience } from './runs.ts';

const settings: Settings = { packs: [], severities: {}, today: '2026-06-01' };

const position: fc.Arbitrary<Position> = fc.oneof(
  { arbitrary: fc.record({ line: fc.nat({ max: 60 }), column: fc.nat({ max: 60 }) }), weight: 9 },
  { arbitrary: fc.record({ line: fc.integer(), column: fc.integer() }), weight: 1 },
);

const atPlace = (snapshot: Snapshot, at: Position): unknown[] => [
  hover(snapshot, at),
  complete(snapshot, at)?.replace,
  quickFixActions(snapshot, { first: at, last: at }).map(({ edits }) => edits),
  documentHighlights(snapshot, at),
];

const ofFile = (snapshot: Snapshot): unknown[] => [
  documentSymbols(snapshot),
  formatEdits(snapshot),
  fixAllAction(snapshot)?.edits,
];

const tokenFaults = (snapshot: Snapshot): string[] =>
  semanticTokens(snapshot, 0, snapshot.lines.length - 1).flatMap((tokens, line) => [
    ...outside(tokens, snapshot.lines, line),
    ...tokens.flatMap(({ start }, at) =>
      at > 0 && start < (tokens[at - 1]?.end ?? 0) ? [`tokens of ${line} overlap`] : [],
    ),
  ]);

const outlineFaults = (outlines: readonly Outline[], lineCount: number): string[] =>
  outlines.flatMap(({ name, span, last, children }) => [
    ...(name !== '' && span.line <= last && last < lineCount ? [] : [`outline ${name}`]),
    ...outlineFaults(children, lineCount),
  ]);

const stretchFaults = (snapshot: Snapshot, at: Position): string[] =>
  selectionRanges(snapshot, at).flatMap(({ first, last }) =>
    first.line <= last.line && last.line < snapshot.lines.length ? [] : ['selection'],
  );

const foldFaults = (snapshot: Snapshot): string[] =>
  foldingRanges(snapshot).flatMap(({ first, last }) => (first < last && last < snapshot.lines.length ? [] : ['fold']));

test(`${files} files: every feature anywhere answers, with places inside the text`, patience, () => {
  fc.assert(
    fc.property(file, fc.array(position, { minLength: 5, maxLength: 5 }), (text, positions) => {
      const snapshot = analyse(lineTextOf(text).lines, settings, 1);
      const told = [...positions.flatMap((at) => atPlace(snapshot, at)), ...ofFile(snapshot)];
      expect(outside(told, snapshot.lines)).toEqual([]);
      expect(tokenFaults(snapshot)).toEqual([]);
      expect(outlineFaults(documentSymbols(snapshot), snapshot.lines.length)).toEqual([]);
      expect(foldFaults(snapshot)).toEqual([]);
      expect(positions.flatMap((at) => stretchFaults(snapshot, at))).toEqual([]);
    }),
    { numRuns: files },
  );
});

test('what is suggested replaces a stretch that holds the cursor, and every suggestion has its words', patience, () => {
  fc.assert(
    fc.property(file, position, (text, at) => {
      const snapshot = analyse(lineTextOf(text).lines, settings, 1);
      const completion = complete(snapshot, at);
      if (completion === null) return;
      const { replace, suggestions } = completion;
      for (const { from, label, about } of suggestions) {
        expect(label).not.toBe('');
        expect(from ?? replace.start).toBeLessThanOrEqual(replace.end);
        expect(about === null || describeSuggestion(about) !== null).toBe(true);
      }
    }),
    { numRuns: Math.ceil(files / 5) },
  );
});
