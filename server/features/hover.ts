import type { Columns } from '../../grammar/span.ts';
import { type Span, spanAt } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { hoverAllow } from './hover/allow.ts';
import { hoverAmount } from './hover/amount.ts';
import { hoverDash } from './hover/dash.ts';
import { hoverFigures } from './hover/figures.ts';
import { hoverFindings } from './hover/findings.ts';
import { hoverItem } from './hover/item.ts';
import { hoverKeyword } from './hover/keyword.ts';
import { hoverPack } from './hover/pack.ts';
import type { HoverPart, HoverPlace, HoverSource } from './hover/source.ts';
import { hoverStranger } from './hover/stranger.ts';
import { hoverTerm } from './hover/term.ts';
import { lineAt, type Position } from './position.ts';

/** Markdown about what stands under the cursor. */
export interface Hover {
  readonly span: Span;
  readonly markdown: string;
}

const sources: readonly HoverSource[] = [
  hoverTerm,
  hoverStranger,
  hoverAmount,
  hoverDash,
  hoverItem,
  hoverFigures,
  hoverKeyword,
  hoverPack,
  hoverAllow,
  hoverFindings,
];

const narrowest = (parts: readonly HoverPart[]): Columns =>
  parts.reduce((best, part) => (part.end - part.start < best.end - best.start ? part : best), parts[0] as Columns);

/** What is known of the place: the term, the value in both systems, the keyword, the figures, the findings; null for none. */
export function hover(snapshot: Snapshot, position: Position): Hover | null {
  const found = lineAt(snapshot, position);
  if (found === null) return null;
  const place: HoverPlace = { snapshot, line: found.line, at: found.at };
  const parts: HoverPart[] = [];
  for (const source of sources) {
    const part = source(place);
    if (part !== null) parts.push(part);
  }
  if (parts.length === 0) return null;
  const { start, end } = narrowest(parts);
  return {
    span: spanAt(found.at.line, { start, end }),
    markdown: parts.map((part) => part.markdown).join('\n\n---\n\n'),
  };
}
