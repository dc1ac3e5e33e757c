import type { Figure, Record as WellRecord } from '../record/record.ts';

const byIdOf = new WeakMap<WellRecord, ReadonlyMap<string, Figure>>();

function figuresById(record: WellRecord): ReadonlyMap<string, Figure> {
  const known = byIdOf.get(record);
  if (known !== undefined) return known;
  const byId = new Map(record.figures.map((figure) => [figure.id, figure]));
  byIdOf.set(record, byId);
  return byId;
}

/** The figure of that id, where its value is known. */
export function figureOfId(record: WellRecord, id: string): Figure | null {
  const figure = figuresById(record).get(id);
  return figure === undefined || figure.value === null ? null : figure;
}

const byLineOf = new WeakMap<WellRecord, ReadonlyMap<number, readonly Figure[]>>();

/** The line that a figure is shown at. */
const homeOf = ({ span, lines }: Figure): number | undefined => span?.line ?? lines[0];

function figuresByLine(record: WellRecord): ReadonlyMap<number, readonly Figure[]> {
  const known = byLineOf.get(record);
  if (known !== undefined) return known;
  const byLine = new Map<number, Figure[]>();
  for (const figure of record.figures) {
    const home = homeOf(figure);
    if (home === undefined) continue;
    const there = byLine.get(home);
    if (there === undefined) byLine.set(home, [figure]);
    else there.push(figure);
  }
  byLineOf.set(record, byLine);
  return byLine;
}

/** The figures that are shown at a line, those that wait for a fact too. */
export const figuresAt = (record: WellRecord, line: number): readonly Figure[] => figuresByLine(record).get(line) ?? [];
