/** The number of single-letter changes between two words, neighbours swapped counting one. */
export function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const changed = (last[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      let cost = Math.min((last[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1, changed);
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        cost = Math.min(cost, (before[column - 2] ?? 0) + 1);
      current.push(cost);
    }
    before = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

/** The words spelled nearly like one, nearest first: none in a word of three letters (but `least`), one slip in a short word, two in a long one. */
export function nearWords(word: string, known: readonly string[], least = 0): string[] {
  const limit = Math.max(least, word.length < 4 ? 0 : word.length < 8 ? 1 : 2);
  return known
    .map((each) => ({ each, far: Math.abs(each.length - word.length) > limit ? limit + 1 : distance(word, each) }))
    .filter(({ far }) => far <= limit)
    .sort((a, b) => a.far - b.far)
    .map(({ each }) => each);
}
