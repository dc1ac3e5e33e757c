/** Questions that are answered by looking; one who asks more often is worth a list. */
const fewQuestions = 4;

interface Known<T> {
  asked: number;
  list: ReadonlyMap<number, readonly T[]> | null;
}

function listOf<T>(all: readonly T[], lineOf: (each: T) => number | undefined): ReadonlyMap<number, readonly T[]> {
  const list = new Map<number, T[]>();
  for (const each of all) {
    const line = lineOf(each);
    if (line === undefined) continue;
    const there = list.get(line);
    if (there === undefined) list.set(line, [each]);
    else there.push(each);
  }
  return list;
}

function foundIn<T>(all: readonly T[], lineOf: (each: T) => number | undefined, line: number): readonly T[] {
  const found: T[] = [];
  for (const each of all) if (lineOf(each) === line) found.push(each);
  return found;
}

const none: readonly never[] = [];

/**
 * Finds the things of a log or a record by their line, in the order in which they stand there. Whoever points at one
 * place asks a few times of each version of a text; whoever goes through the whole text asks for every line.
 */
export function byLine<K extends object, T>(
  all: (of: K) => readonly T[],
  lineOf: (each: T) => number | undefined,
): (of: K, line: number) => readonly T[] {
  const known = new WeakMap<K, Known<T>>();
  return (of, line) => {
    let held = known.get(of);
    if (held === undefined) {
      held = { asked: 0, list: null };
      known.set(of, held);
    }
    held.asked += 1;
    if (held.asked > fewQuestions) held.list ??= listOf(all(of), lineOf);
    return held.list === null ? foundIn(all(of), lineOf, line) : (held.list.get(line) ?? none);
  };
}
