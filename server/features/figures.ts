import { remembered } from '../../grammar/remembered.ts';
import type { Figure, Record as WellRecord } from '../record/record.ts';
import { byLine } from './by-line.ts';

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

/** The figures that are shown at a line, those that wait for a fact too. */
export const figuresAt = byLine(({ figures }: WellRecord): readonly Figure[] => figures, homeOf);
