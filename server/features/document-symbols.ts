import type { Span } from '../../grammar/span.ts';
import { isStringSection, rowById } from '../../grammar/table.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { type Section, sectionsOf } from './sections.ts';

/** One entry of the outline. `last` is the last line that it covers; it covers `span.line` to there. */
export interface Outline {
  readonly name: string;
  readonly detail: string;
  readonly kind: 'file' | 'section' | 'string' | 'part' | 'layer' | 'reading';
  readonly span: Span;
  readonly last: number;
  readonly children: readonly Outline[];
}

const longestName = 120;

const oddBlanks = /\s{2}|[^\S ]/;

const short = (text: string): string => {
  const plain = (oddBlanks.test(text) ? text.replace(/\s+/g, ' ') : text).trim();
  return plain.length > longestName ? `${plain.slice(0, longestName)}…` : plain;
};

const textSpan = ({ text }: Line, number: number): Span => {
  const end = text.trimEnd().length;
  return { line: number, start: Math.min(Math.max(0, text.search(/\S/)), end), end };
};

const depthsText = (line: Line): string =>
  line.depths === null ? '' : short(line.text.slice(line.depths.start, line.depths.end));

const itemsEnd = (line: Line): number => line.items.at(-1)?.end ?? line.depths?.end ?? line.keyword?.end ?? 0;

const itemsText = (line: Line): string => {
  const start = line.depths?.end ?? line.keyword?.end ?? 0;
  return short(line.text.slice(start, Math.max(start, itemsEnd(line))));
};

const kindOf = (line: Line): Outline['kind'] => {
  if (line.row === 'strata.line') return 'layer';
  return line.row !== null && rowById(line.row).where === 'depth-line' ? 'reading' : 'part';
};

const materialOf = (line: Line): string | null => {
  const described = line.items.find((item) => item.value.kind === 'description')?.value;
  return described?.kind === 'description' ? (described.description.principal?.name ?? null) : null;
};

const none: readonly Outline[] = [];

function partOf(line: Line, number: number): Outline {
  const name = line.keyword?.written ?? materialOf(line) ?? (itemsText(line) || '?');
  const detail =
    line.keyword === null ? depthsText(line) : [depthsText(line), itemsText(line)].filter(Boolean).join(' ');
  return { name: short(name), detail, kind: kindOf(line), span: textSpan(line, number), last: number, children: none };
}

function sectionOutline({ id, first, last }: Section, lines: readonly Line[]): Outline | null {
  const line = lines[first];
  if (line === undefined) return null;
  const children: Outline[] = [];
  for (let number = first + 1; number <= last; number += 1) {
    const child = lines[number];
    if (child !== undefined && child.row !== null && rowById(child.row).of.length > 0)
      children.push(partOf(child, number));
  }
  const kind = isStringSection(id) ? 'string' : 'section';
  const detail = [depthsText(line), itemsText(line)].filter(Boolean).join(' ');
  return { name: id, detail: short(detail), kind, span: textSpan(line, first), last, children };
}

const covered = (sections: readonly Section[], number: number): boolean => {
  const before = sections.findLast(({ first }) => first <= number);
  return before !== undefined && number <= before.last;
};

const standsAlone = (line: Line): boolean =>
  line.keyword !== null && line.row !== null && rowById(line.row).where !== 'section' && line.section !== line.row;

function loneOutline(line: Line, number: number): Outline {
  const keyword = line.keyword;
  const end = Math.max(keyword?.end ?? 0, line.text.trimEnd().length);
  const detail = short(line.text.slice(keyword?.end ?? 0, end));
  return { name: line.row ?? '', detail, kind: 'file', span: textSpan(line, number), last: number, children: [] };
}

/** The outline of a log: its head and one-line entries, its sections and strings with what stands in them. */
export function documentSymbols({ tree }: Snapshot): readonly Outline[] {
  const sections = sectionsOf(tree);
  const outlines = sections.flatMap((section) => sectionOutline(section, tree.lines) ?? []);
  const lone = tree.lines.flatMap((line, number) =>
    standsAlone(line) && !(covered(sections, number) && rowById(line.row ?? '').of.length > 0)
      ? [loneOutline(line, number)]
      : [],
  );
  return [...outlines, ...lone].sort((a, b) => a.span.line - b.span.line);
}
