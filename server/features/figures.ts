import { remembered } from '../../grammar/remembered.ts';
import type { Figure, Record as WellRecord } from '../record/record.ts';

const figuresById = remembered(
  ({ figures }: WellRecord): ReadonlyMap<string, Figure> => new Map(figures.map((figure) => [figure.id, figure])),
);

/** The figure of that id, where its value is known. */
export function figureOfId(record: WellRecord, id: string): Figure | null {
  const figure = figuresById(record).get(id);
  return figure === undefined || figure.value === null ? null : figure;
}

/** The line that a figure is shown at. */
const homeOf = ({ span, lines }: Figure): number | undefined => span?.line ?? lines[0];

const figuresByLine = remembered(({ figures }: WellRecord): ReadonlyMap<number, readonly Figure[]> => {
  const byLine = new Map<number, Figure[]>();
  for (const figure of figures) {
    const home = homeOf(figure);
    if (home === undefined) continue;
    const there = byLine.get(home);
    if (there === undefined) byLine.set(home, [figure]);
    else there.push(figure);
  }
  return byLine;
});

/** The figures that are shown at a line, those that wait for a fact too. */
export const figuresAt = (record: WellRecord, line: number): readonly Figure[] => figuresByLine(record).get(line) ?? [];
