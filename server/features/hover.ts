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

/** What stands there, of which a place has one. */
const ofPlace: readonly HoverSource[] = [
  hoverTerm,
  hoverAmount,
  hoverDash,
  hoverItem,
  hoverStranger,
  hoverPack,
  hoverAllow,
];

function firstOf(sources: readonly HoverSource[], place: HoverPlace): HoverPart | null {
  for (const source of sources) {
    const part = source(place);
    if (part !== null) return part;
  }
  return null;
}

/** What a keyword takes is told below what was worked out for its line. */
function partsOf(place: HoverPlace): readonly HoverPart[] {
  const keyword = hoverKeyword(place);
  const first = keyword === null ? firstOf(ofPlace, place) : null;
  return [first, hoverFigures(place), keyword, hoverFindings(place)].filter((part) => part !== null);
}

const narrowest = (parts: readonly HoverPart[]): Columns =>
  parts.reduce((best, part) => (part.end - part.start < best.end - best.start ? part : best), parts[0] as Columns);

/** What is known of the place: the term, the value in both systems, the keyword, the figures, the findings; null for none. */
export function hover(snapshot: Snapshot, position: Position): Hover | null {
  const found = lineAt(snapshot, position);
  if (found === null) return null;
  const place: HoverPlace = { snapshot, line: found.line, at: found.at };
  const parts = partsOf(place);
  if (parts.length === 0) return null;
  const { start, end } = narrowest(parts);
  return {
    span: spanAt(found.at.line, { start, end }),
    markdown: parts.map((part) => part.markdown).join('\n\n---\n\n'),
  };
}
