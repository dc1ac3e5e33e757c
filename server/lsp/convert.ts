import {
  type CodeAction,
  CodeActionKind,
  type Command,
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  type Diagnostic,
  DiagnosticSeverity,
  DiagnosticTag,
  type DocumentSymbol,
  type FoldingRange,
  FoldingRangeKind,
  InsertTextFormat,
  MarkupKind,
  type Position as ProtocolPosition,
  type Range,
  type SelectionRange,
  SymbolKind,
  type TextEdit,
} from 'vscode-languageserver';
import type { Span } from '../../grammar/span.ts';
import type { Action } from '../features/code-actions.ts';
import type { Suggestion } from '../features/completion/suggestion.ts';
import type { Completion } from '../features/completion.ts';
import type { Outline } from '../features/document-symbols.ts';
import type { Fold } from '../features/folding-ranges.ts';
import type { Position } from '../features/position.ts';
import type { Stretch } from '../features/selection-ranges.ts';
import { type LineToken, tokenTypes } from '../features/semantic-tokens.ts';
import type { Edit, Finding, Severity } from '../rules/rule.ts';

export const fixAllKind = `${CodeActionKind.SourceFixAll}.drillhand`;

export const placeOf = ({ line, character }: ProtocolPosition): Position => ({ line, column: character });

export const positionOf = ({ line, column }: Position): ProtocolPosition => ({ line, character: column });

export const rangeOf = ({ line, start, end }: Span): Range => ({
  start: { line, character: start },
  end: { line, character: end },
});

export const markdown = (value: string) => ({ kind: MarkupKind.Markdown, value });

export const textEditOf = ({ span, text }: Edit): TextEdit => ({ range: rangeOf(span), newText: text });

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

const superfluous = new Set(['allow-silences-nothing']);

/** `link` is where the code leads, if anywhere. */
export function diagnosticOf(finding: Finding, uri: string, link: string | null = null): Diagnostic {
  const related = finding.related ?? [];
  return {
    range: rangeOf(finding.span),
    severity: severities[finding.severity],
    code: finding.rule,
    ...(link !== null && { codeDescription: { href: link } }),
    source: 'drillhand',
    message: finding.message,
    ...(superfluous.has(finding.rule) && { tags: [DiagnosticTag.Unnecessary] }),
    ...(related.length > 0 && {
      relatedInformation: related.map(({ file, message, span }) => ({
        location: { uri: file ?? uri, range: rangeOf(span) },
        message,
      })),
    }),
    data: { rule: finding.rule, limit: finding.limit ?? null },
  };
}

const sameRange = (a: Range, b: Range): boolean =>
  a.start.line === b.start.line &&
  a.start.character === b.start.character &&
  a.end.line === b.end.line &&
  a.end.character === b.end.character;

const answered = (finding: Finding, shown: readonly Diagnostic[]): Diagnostic[] =>
  shown.filter(({ code, range }) => code === finding.rule && sameRange(range, rangeOf(finding.span)));

export function codeActionOf(action: Action, uri: string, shown: readonly Diagnostic[]): CodeAction {
  const diagnostics = action.finding === null ? [] : answered(action.finding, shown);
  return {
    title: action.title,
    kind: action.kind === 'fix-all' ? fixAllKind : CodeActionKind.QuickFix,
    edit: { changes: { [uri]: action.edits.map(textEditOf) } },
    ...(action.preferred && { isPreferred: true }),
    ...(diagnostics.length > 0 && { diagnostics }),
  };
}

const completionKinds: Readonly<Record<Suggestion['kind'], CompletionItemKind>> = {
  keyword: CompletionItemKind.Keyword,
  template: CompletionItemKind.Snippet,
  term: CompletionItemKind.EnumMember,
  value: CompletionItemKind.Value,
  unit: CompletionItemKind.Unit,
  label: CompletionItemKind.Property,
  depth: CompletionItemKind.Value,
  size: CompletionItemKind.Value,
  date: CompletionItemKind.Value,
  pack: CompletionItemKind.Module,
  rule: CompletionItemKind.Reference,
};

/** A snippet without its stops, for an editor that has none. */
const flat = (snippet: string): string => snippet.replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\d/g, '');

/** What an editor can do with completions. */
export interface CompletionAbility {
  readonly snippets: boolean;
  readonly defaultRange: boolean;
  /** True where the editor knows VS Code's command that opens the list. */
  readonly asksAgain: boolean;
}

const openList: Command = { title: '', command: 'editor.action.triggerSuggest' };

/**
 * What an editor matches the typed word with, from the form on that begins so: an editor takes letters anywhere for a
 * match too, and would put a word in which they lie scattered before the short form that they are.
 */
function filterFor({ filter, words, from }: Suggestion, typed: string): string {
  const at = from === null && typed !== '' ? words.indexOf(` ${typed.toLowerCase()}`) : 0;
  return at > 0 ? filter.slice(at) : filter;
}

function completionItemOf(
  suggestion: Suggestion,
  at: number,
  { replace, typed }: Completion,
  able: CompletionAbility,
): CompletionItem {
  const { label, kind, detail, about, from } = suggestion;
  const filter = filterFor(suggestion, typed);
  const text = suggestion.snippet && !able.snippets ? flat(suggestion.insert) : suggestion.insert;
  const range = rangeOf(from === null ? replace : { ...replace, start: from });
  return {
    label,
    kind: completionKinds[kind],
    detail,
    sortText: String(at).padStart(4, '0'),
    ...(filter !== label && { filterText: filter }),
    ...(suggestion.snippet && able.snippets && { insertTextFormat: InsertTextFormat.Snippet }),
    ...(from === null && able.defaultRange ? { textEditText: text } : { textEdit: { range, newText: text } }),
    ...(about !== null && { data: about }),
    ...(suggestion.opens && able.asksAgain && { command: openList }),
  };
}

/** What is matched depends on what is typed, so that the list is asked for again with every letter. */
export function completionListOf(completion: Completion, able: CompletionAbility): CompletionList {
  const { replace, suggestions } = completion;
  return {
    isIncomplete: true,
    ...(able.defaultRange && { itemDefaults: { editRange: rangeOf(replace) } }),
    items: suggestions.map((suggestion, at) => completionItemOf(suggestion, at, completion, able)),
  };
}

const symbolKinds: Readonly<Record<Outline['kind'], SymbolKind>> = {
  file: SymbolKind.Property,
  section: SymbolKind.Namespace,
  string: SymbolKind.Class,
  part: SymbolKind.Field,
  layer: SymbolKind.Array,
  reading: SymbolKind.Number,
};

export function symbolOf(outline: Outline, lines: readonly string[]): DocumentSymbol {
  const selectionRange = rangeOf(outline.span);
  const end = { line: outline.last, character: lines[outline.last]?.length ?? 0 };
  return {
    name: outline.name || '?',
    detail: outline.detail,
    kind: symbolKinds[outline.kind],
    range: { start: selectionRange.start, end },
    selectionRange,
    children: outline.children.map((child) => symbolOf(child, lines)),
  };
}

export const foldingRangeOf = ({ first, last, kind }: Fold, summary: string): FoldingRange => ({
  startLine: first,
  endLine: last,
  kind: kind === 'comment' ? FoldingRangeKind.Comment : FoldingRangeKind.Region,
  ...(summary !== '' && { collapsedText: summary }),
});

export function selectionRangeOf(stretches: readonly Stretch[], at: ProtocolPosition): SelectionRange {
  const [widest, ...inner] = [...stretches].reverse();
  if (widest === undefined) return { range: { start: at, end: at } };
  const toRange = ({ first, last }: Stretch): Range => ({ start: positionOf(first), end: positionOf(last) });
  return inner.reduce<SelectionRange>((parent, each) => ({ range: toRange(each), parent }), { range: toRange(widest) });
}

/** Tokens as the protocol packs them: five numbers each, places counted from the token before. */
export function tokenNumbersOf(lines: readonly (readonly LineToken[])[], first: number): number[] {
  const data: number[] = [];
  let line = 0;
  let column = 0;
  lines.forEach((tokens, at) => {
    for (const { start, end, type } of tokens) {
      const down = first + at - line;
      data.push(down, down === 0 ? start - column : start, end - start, tokenTypes.indexOf(type), 0);
      line = first + at;
      column = start;
    }
  });
  return data;
}
