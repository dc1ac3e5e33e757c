import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseLines } from '../../grammar/index.ts';
import { meaningOf } from '../../grammar/write.ts';
import { analyse } from '../../server/analysis/index.ts';
import type { Settings, Snapshot } from '../../server/analysis/snapshot.ts';
import { allowDefinition } from '../../server/features/allowed-lines.ts';
import { fixAllAction, quickFixActions } from '../../server/features/code-actions.ts';
import { codeLenses } from '../../server/features/code-lenses.ts';
import { complete } from '../../server/features/completion.ts';
import { describeSuggestion } from '../../server/features/completion-docs.ts';
import { contactDefinition, contactReferences } from '../../server/features/contacts.ts';
import { documentHighlights } from '../../server/features/document-highlights.ts';
import { documentLinks } from '../../server/features/document-links.ts';
import { documentSymbols, type Outline } from '../../server/features/document-symbols.ts';
import { foldingRanges, foldSummary } from '../../server/features/folding-ranges.ts';
import { formatEdits } from '../../server/features/format.ts';
import { hover } from '../../server/features/hover.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { nextItem } from '../../server/features/next-item.ts';
import { onEnter } from '../../server/features/on-type.ts';
import { pastedRows } from '../../server/features/paste.ts';
import type { Position } from '../../server/features/position.ts';
import { refactoringChanges, refactorings } from '../../server/features/refactorings.ts';
import { selectionRanges } from '../../server/features/selection-ranges.ts';
import { semanticTokens } from '../../server/features/semantic-tokens.ts';
import { showsAll } from '../../server/features/shows.ts';
import { signatureHelp } from '../../server/features/signature-help.ts';
import { wellIdAt } from '../../server/features/well-id.ts';
import { wellSymbols } from '../../server/features/well-symbols.ts';
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
  contactDefinition(snapshot, at),
  contactReferences(snapshot, at, true),
  allowDefinition(snapshot, at),
  wellIdAt(snapshot, at)?.span,
  onEnter(snapshot, at),
  nextItem(snapshot, { line: at.line, start: at.column, end: at.column }, null)?.edits,
];

const ofFile = (snapshot: Snapshot): unknown[] => [
  documentSymbols(snapshot),
  formatEdits(snapshot),
  fixAllAction(snapshot)?.edits,
  codeLenses(snapshot),
  documentLinks(snapshot),
  wellSymbols(snapshot),
];

const isInside = ({ line, column }: Position, { lines }: Snapshot): boolean =>
  line >= 0 && line < lines.length && column >= 0 && column <= (lines[line]?.length ?? -1);

const hintFaults = (snapshot: Snapshot): string[] =>
  inlayHints(snapshot, 0, snapshot.lines.length, showsAll.inlayHints).flatMap((hint) =>
    isInside(hint, snapshot) && hint.text !== '' ? [] : [`hint ${hint.text}`],
  );

const helpFaults = (snapshot: Snapshot, at: Position): string[] => {
  const help = signatureHelp(snapshot, at);
  if (help === null) return [];
  const { label, parameters, active } = help;
  const outsideLabel = parameters.filter(({ start, end }) => label.slice(start, end) === '');
  return outsideLabel.length === 0 && active < parameters.length ? [] : [`help ${label}`];
};

const refactoringFaults = (snapshot: Snapshot, at: Position): string[] => {
  const selection = { first: at, last: at };
  return refactorings(snapshot, selection, true).flatMap(({ id, name, title }) => {
    const changes = refactoringChanges(snapshot, selection, id, name);
    const isFine = changes.every(({ first, last }) => isInside(first, snapshot) && isInside(last, snapshot));
    return isFine && title !== '' ? [] : [`${id} ${name}`];
  });
};

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
  foldingRanges(snapshot).flatMap((fold) => {
    const { first, last } = fold;
    const isFine = first < last && last < snapshot.lines.length && foldSummary(snapshot, fold) !== 'undefined';
    return isFine ? [] : ['fold'];
  });

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
      expect(hintFaults(snapshot)).toEqual([]);
      expect(positions.flatMap((at) => helpFaults(snapshot, at))).toEqual([]);
      expect(refactoringFaults(snapshot, positions[0] ?? { line: 0, column: 0 })).toEqual([]);
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

/** A dash alone is taken away behind Enter, and a top that says the dash again is taken back; what else a line says stays. */
const isTidied = (text: string): boolean => /^\s*[-–—]\s*$|^\s*[-–—]\s+[\d.]+\s*[-–—]/.test(text);

const meaningsOf = (lines: readonly string[]): readonly string[] =>
  parseLines(lines).lines.map((line) =>
    meaningOf({ ...line, problems: line.problems.filter(({ code }) => code !== 'interval-without-dash') }),
  );

test('what Enter tidies says the same', patience, () => {
  fc.assert(
    fc.property(file, position, (text, at) => {
      const { lines } = lineTextOf(text);
      const after = [...lines];
      for (const edit of onEnter(analyse(lines, settings, 1), at)) {
        const line = after[edit.span.line] ?? '';
        after[edit.span.line] = line.slice(0, edit.span.start) + edit.text + line.slice(edit.span.end);
      }
      const [before, tidied] = [meaningsOf(lines), meaningsOf(after)];
      for (const [number, line] of lines.entries()) if (!isTidied(line)) expect(tidied[number]).toBe(before[number]);
    }),
    { numRuns: files },
  );
});

test('pasting anything anywhere is answered', patience, () => {
  fc.assert(
    fc.property(file, position, fc.string({ maxLength: 200 }), (text, at, rows) => {
      const pasted = pastedRows(analyse(lineTextOf(text).lines, settings, 1), at, rows.replaceAll(' ', '\t'));
      expect(pasted === null || pasted.lines > 0).toBe(true);
    }),
    { numRuns: Math.ceil(files / 5) },
  );
});
