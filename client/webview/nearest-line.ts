/** Of the lines that the page shows something of, the one that stands for `line`: itself, or the nearest above it. */
export function nearestLine(lines: readonly number[], line: number): number | null {
  const above = lines.filter((each) => each <= line);
  const [first, ...rest] = above.length > 0 ? above : lines;
  if (first === undefined) return null;
  return rest.reduce((best, each) => (above.length > 0 ? Math.max(best, each) : Math.min(best, each)), first);
}
