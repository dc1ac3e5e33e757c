import * as l10n from '@vscode/l10n';
import { type Span, spanAt } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Edit, Finding, Fix } from '../rules/rule.ts';
import { keptColumns } from './refactorings/change.ts';

/** A change that the editor offers. */
export interface Action {
  readonly title: string;
  readonly kind: 'quickfix' | 'fix-all';
  readonly preferred: boolean;
  readonly edits: readonly Edit[];
  /** The finding that it answers; null for what answers many. */
  readonly finding: Finding | null;
}

/** Lines and columns from a first place to a last one. */
export interface Selection {
  readonly first: { readonly line: number; readonly column: number };
  readonly last: { readonly line: number; readonly column: number };
}

const isTouched = ({ span }: Finding, { first, last }: Selection): boolean => {
  const begins = span.line < last.line || (span.line === last.line && span.start <= last.column);
  const ends = span.line > first.line || (span.line === first.line && span.end >= first.column);
  return begins && ends;
};

const fixesOf = (finding: Finding): readonly Fix[] => finding.fixes?.() ?? [];

const isReplacement = ({ span, text }: Edit): boolean => span.end > span.start && text !== '' && !text.includes('\n');

/** A line put in above, which moves nothing of the line itself. */
const isLineAbove = ({ span, text }: Edit): boolean => span.end === 0 && text.endsWith('\n');

/** Blanks that keep the columns of a line whose values are written over; none where words are put in or taken out. */
function blanksOf(line: number, lines: readonly string[], edits: readonly Edit[]): readonly Edit[] {
  const here = edits.filter((edit) => edit.span.line === line && !isLineAbove(edit));
  if (!here.every(isReplacement)) return [];
  const pieces = here.map(({ span, text }) => ({ ...span, text }));
  return keptColumns(lines[line] ?? '', pieces).map(({ text, ...columns }) => ({ span: spanAt(line, columns), text }));
}

/** The edits of a fix with what keeps the columns of the lines that it changes. */
function inColumns({ lines }: Snapshot, edits: readonly Edit[]): readonly Edit[] {
  const changed = new Set(edits.map(({ span }) => span.line));
  return [...edits, ...[...changed].flatMap((line) => blanksOf(line, lines, edits))];
}

const quickFixes = (snapshot: Snapshot, finding: Finding): readonly Action[] =>
  fixesOf(finding).map(({ title, preferred, edits }) => ({
    title,
    kind: 'quickfix',
    preferred,
    edits: inColumns(snapshot, edits),
    finding,
  }));

const endOf = (text: string): number => text.trimEnd().length;

function allowEdit({ lines, tree }: Snapshot, { rule, span }: Finding): Edit {
  const text = lines[span.line] ?? '';
  const wanted = `# allow ${rule}: ?`;
  if (tree.lines[span.line]?.comment === null && !text.includes('#') && text.trim() !== '') {
    const end = endOf(text);
    return { span: spanAt(span.line, { start: end, end: text.length }), text: `  ${wanted}` };
  }
  const indent = /^\s*/.exec(text)?.[0] ?? '';
  return { span: spanAt(span.line, { start: 0, end: 0 }), text: `${indent}${wanted}\n` };
}

/** Silences the rule on this line; the reason is left open as a question. */
const allowAction = (snapshot: Snapshot, finding: Finding): Action => ({
  title: l10n.t('Allow {0} on this line (give the reason)', finding.rule),
  kind: 'quickfix',
  preferred: false,
  edits: [allowEdit(snapshot, finding)],
  finding,
});

const isAboutAllow = ({ rule }: Finding): boolean => rule.startsWith('allow-');

const overlap = (a: Span, b: Span): boolean =>
  a.line === b.line && ((a.start < b.end && b.start < a.end) || (a.start === b.start && a.end === b.end));

const fitsBeside = (edits: readonly Edit[], held: readonly Edit[]): boolean =>
  !edits.some((edit) => held.some((other) => overlap(edit.span, other.span)));

/** The safe fixes of every finding, those left out that would write over another. */
export function safeEdits(snapshot: Snapshot): readonly Edit[] {
  const byLine = new Map<number, Edit[]>();
  const edits: Edit[] = [];
  for (const finding of snapshot.findings) {
    const safe = fixesOf(finding).filter((fix) => fix.safe);
    const fix = safe.find(({ preferred }) => preferred) ?? safe[0];
    if (fix === undefined || !fix.edits.every((edit) => fitsBeside([edit], byLine.get(edit.span.line) ?? []))) continue;
    edits.push(...fix.edits);
    for (const edit of fix.edits) byLine.set(edit.span.line, [...(byLine.get(edit.span.line) ?? []), edit]);
  }
  return edits;
}

/** The fixes of the findings that a selection touches; for each rule also the way to silence it there. */
export function quickFixActions(snapshot: Snapshot, selection: Selection): readonly Action[] {
  const touched = snapshot.findings.filter((finding) => isTouched(finding, selection));
  const allowed = touched.filter((finding) => !isAboutAllow(finding));
  return [
    ...touched.flatMap((finding) => quickFixes(snapshot, finding)),
    ...allowed.map((finding) => allowAction(snapshot, finding)),
  ];
}

/** Every safe fix of the file as one change; null where there is none. */
export function fixAllAction(snapshot: Snapshot): Action | null {
  const edits = safeEdits(snapshot);
  if (edits.length === 0) return null;
  return { title: l10n.t('Make every safe fix'), kind: 'fix-all', preferred: false, edits, finding: null };
}
