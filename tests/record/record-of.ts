import { parseText } from '../../grammar/index.ts';
import { buildLog } from '../../server/model/index.ts';
import { limitsFor } from '../../server/packs/index.ts';
import { computeRecord } from '../../server/record/index.ts';
import type { Figure, FillRecord, Record as WellRecord } from '../../server/record/record.ts';

/** The record of a log, checked against the packs that it names. */
export function recordOf(text: string): WellRecord {
  const log = buildLog(parseText(text));
  return computeRecord(log, limitsFor(log.packs.map((pack) => pack.text)).limits);
}

/** The figure of that id; fails with the ids that there are. */
export function figureIn(record: WellRecord, id: string): Figure {
  const found = record.figures.find((figure) => figure.id === id);
  if (!found) throw new Error(`no figure ${id}; there are ${record.figures.map((figure) => figure.id).join(', ')}`);
  return found;
}

/** The value of a figure of a log, SI. */
export const valueIn = (text: string, id: string): number | null => figureIn(recordOf(text), id).value;

/** The first fill of a log. */
export function fillIn(text: string): FillRecord {
  const [fill] = recordOf(text).fills;
  if (!fill) throw new Error('the log has no fill');
  return fill;
}

/** The area of a circle of that diameter, for checks by hand. */
export const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
