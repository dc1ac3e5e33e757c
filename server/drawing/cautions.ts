import type { Figure } from '../record/record.ts';

/** A caution, with the titles of the figures that it goes with. */
export interface Caution {
  readonly text: string;
  readonly figures: readonly string[];
  readonly line: number | null;
}

/** The cautions of all figures, each once, in the order in which they are first met. */
export function cautionsOf(figures: readonly Figure[]): Caution[] {
  const cautions = new Map<string, Caution>();
  for (const { caution, title, lines } of figures) {
    if (caution === null) continue;
    const before = cautions.get(caution);
    const titles = before?.figures ?? [];
    cautions.set(caution, {
      text: caution,
      line: before?.line ?? lines[0] ?? null,
      figures: titles.includes(title) ? titles : [...titles, title],
    });
  }
  return [...cautions.values()];
}

/** What every record says of itself. */
export const helpNotLaw = 'The checks and figures are a help, not the law: local codes and licensed practice decide.';
