import type { RuleContext } from './rule.ts';

/** The values of the record's figures by their ids, SI; null for one that waits for a fact. */
export const figureValues = ({ record }: RuleContext): ReadonlyMap<string, number | null> =>
  new Map(record.figures.map(({ id, value }) => [id, value]));
