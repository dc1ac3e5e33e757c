import type { Columns } from './span.ts';
import type { Quantity } from './tree.ts';

/** A quantity of which nothing is known but where it stands: what is known is put in its place. */
export const emptyQuantity = (at: Columns): Quantity => ({
  kind: 'quantity',
  number: null,
  high: null,
  unit: null,
  unitAt: null,
  decimals: 0,
  form: 'plain',
  approximate: false,
  doubtful: false,
  bound: null,
  plus: false,
  minus: false,
  td: false,
  datum: null,
  figure: '?',
  start: at.start,
  end: at.end,
});
