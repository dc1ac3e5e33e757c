import type { Record as WellRecord } from '../record/record.ts';

/** The value of a figure in SI; null where there is none or it waits for a fact. */
export const figureValue = ({ figures }: WellRecord, id: string): number | null =>
  figures.find((figure) => figure.id === id)?.value ?? null;
