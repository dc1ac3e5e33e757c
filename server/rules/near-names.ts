import { distance } from 'fastest-levenshtein';

const mistakesAllowed = (name: string): number => Math.max(1, Math.floor(name.length / 3));

/** The known names within a third of the letters of `name`, nearest first, at most `most` of them. */
export function nearNames(name: string, known: Iterable<string>, most = 3): readonly string[] {
  const written = name.toLowerCase();
  const near: { name: string; mistakes: number }[] = [];
  for (const each of known) {
    if (Math.abs(each.length - written.length) > mistakesAllowed(written)) continue;
    const mistakes = distance(written, each.toLowerCase());
    if (mistakes <= mistakesAllowed(written)) near.push({ name: each, mistakes });
  }
  return near
    .sort((a, b) => a.mistakes - b.mistakes || (a.name < b.name ? -1 : 1))
    .slice(0, most)
    .map((each) => each.name);
}
