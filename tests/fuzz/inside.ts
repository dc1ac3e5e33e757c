import type { Columns, Span } from '../../grammar/span.ts';
import type { Snapshot } from '../../server/analysis/snapshot.ts';

const isColumns = (value: object): value is Columns =>
  'start' in value && 'end' in value && typeof value.start === 'number' && typeof value.end === 'number';

const hasLine = (value: object): value is Span => 'line' in value && typeof value.line === 'number';

const fits = ({ start, end }: Columns, length: number): boolean => 0 <= start && start <= end && end <= length;

/** Every stretch within some data that does not lie inside the text. Stretches without a line lie on line `line`. */
export function outside(data: unknown, lines: readonly string[], line: number | null = null): string[] {
  if (typeof data !== 'object' || data === null) return [];
  const own: string[] = [];
  if (isColumns(data)) {
    const at = hasLine(data) ? data.line : line;
    const text = at === null ? undefined : lines[at];
    if (text === undefined || !fits(data, text.length))
      own.push(JSON.stringify({ at, start: data.start, end: data.end }));
  }
  return [...own, ...Object.values(data).flatMap((child) => outside(child, lines, line))];
}

/** The stretches of a whole analysis that do not lie inside its text. */
export function outsideOf({ tree, lines, log, record, findings }: Snapshot): string[] {
  const ofTree = tree.lines.flatMap(({ text: _, ...line }, number) => outside(line, lines, number));
  const ofFixes = findings.flatMap((finding) => finding.fixes?.() ?? []);
  const { log: _, ...figures } = record;
  const ofLines = record.figures.flatMap((figure) => figure.lines).filter((number) => lines[number] === undefined);
  return [
    ...ofTree,
    ...outside(log, lines),
    ...outside(figures, lines),
    ...outside(findings, lines),
    ...outside(ofFixes, lines),
    ...ofLines.map((number) => `figure of line ${number}`),
  ];
}

/** Numbers of the record that are none. */
export function noNumbers({ record }: Snapshot): string[] {
  return record.figures.filter(({ value }) => value !== null && !Number.isFinite(value)).map(({ id }) => id);
}
