import { type Span, spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { lineAt, type Position, touches } from './position.ts';

const saysSomething = (line: Line): boolean => line.keyword !== null || line.depths !== null || line.items.length > 0;

/** The line that an allow speaks for: its own, or the next that says something where it stands alone. */
export function lineAllowed({ tree }: Snapshot, number: number): number | null {
  const isAlone = (at: number): boolean => {
    const line = tree.lines[at];
    return line?.allow != null && !saysSomething(line);
  };
  let at = number;
  while (isAlone(at)) at += 1;
  return at < tree.lines.length ? at : null;
}

/** The rule that an `# allow` names under the cursor. */
export function allowedRuleAt(line: Line, column: number): { start: number; end: number; id: string } | null {
  return line.allow?.rules.find((rule) => touches(rule, column)) ?? null;
}

/** The line below that the `# allow` under the cursor silences a rule on; none for one that speaks for its own line. */
export function allowDefinition(snapshot: Snapshot, position: Position): Span | null {
  const found = lineAt(snapshot, position);
  if (found === null || allowedRuleAt(found.line, found.at.column) === null) return null;
  const number = lineAllowed(snapshot, found.at.line);
  const text = number === null ? null : (snapshot.lines[number] ?? '');
  if (number === null || text === null || number === found.at.line) return null;
  const start = Math.min(text.length - text.trimStart().length, text.trimEnd().length);
  return spanAt(number, { start, end: Math.max(start, text.trimEnd().length) });
}
