import { spanAt } from '../../grammar/span.ts';
import type { Line, Tree } from '../../grammar/tree.ts';
import type { AllowUse, Finding } from './rule.ts';

/** An allow of one rule, with the lines that it speaks for: its own first, then the one that it stands above. */
interface Allowed {
  readonly use: { -readonly [K in keyof AllowUse]: AllowUse[K] };
  readonly lines: readonly number[];
}

const saysNothingElse = (line: Line): boolean =>
  line.keyword === null && line.depths === null && line.items.length === 0;

/** The first line after `from` that is not itself only an allow. */
function lineBelow(lines: readonly Line[], from: number): number {
  let below = from + 1;
  for (let line = lines[below]; line?.allow && saysNothingElse(line); line = lines[below]) below += 1;
  return below;
}

function allowsOf({ lines }: Tree, isKnown: (id: string) => boolean, isOff: (id: string) => boolean): Allowed[] {
  const all: Allowed[] = [];
  lines.forEach(({ allow }, line) => {
    if (!allow) return;
    for (const { id, ...columns } of allow.rules) {
      const use = { span: spanAt(line, columns), id, known: isKnown(id), off: isOff(id), silenced: 0 };
      all.push({ use, lines: [line, lineBelow(lines, line)] });
    }
  });
  return all;
}

/** A rule that an `# allow` names, with the lines that it speaks for. */
export interface AllowedLines {
  readonly rule: string;
  readonly lines: readonly number[];
}

/** Where allows name a rule of these ids. */
export const allowedLines = (tree: Tree, ids: ReadonlySet<string>): readonly AllowedLines[] =>
  allowsOf(
    tree,
    (id) => ids.has(id),
    () => false,
  ).flatMap(({ use, lines }) => (use.known ? [{ rule: use.id, lines }] : []));

const place = (rule: string, line: number): string => `${line} ${rule}`;

/**
 * Takes out the findings that an `# allow` on their line, or on the line above, speaks for. An allow beside something
 * speaks for the line below only where it has nothing to silence on its own.
 */
export function applyAllows(
  tree: Tree,
  findings: readonly Finding[],
  isKnown: (id: string) => boolean,
  isOff: (id: string) => boolean,
): { readonly kept: readonly Finding[]; readonly uses: readonly AllowUse[] } {
  const allows = allowsOf(tree, isKnown, isOff);
  if (allows.length === 0) return { kept: findings, uses: [] };
  const found = new Map<string, number>();
  for (const { rule, span } of findings)
    found.set(place(rule, span.line), (found.get(place(rule, span.line)) ?? 0) + 1);
  const silent = new Set<string>();
  for (const { use, lines } of allows) {
    const places = lines.map((line) => place(use.id, line));
    const silenced = places.find((each) => found.has(each));
    if (silenced === undefined) continue;
    use.silenced = found.get(silenced) ?? 0;
    silent.add(silenced);
  }
  const kept = findings.filter(({ rule, span }) => !silent.has(place(rule, span.line)));
  return { kept, uses: allows.map(({ use }) => use) };
}
