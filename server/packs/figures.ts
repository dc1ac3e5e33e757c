import type { Clause } from './clause.ts';
import type { Case, Counting, Limit, LimitName, Pack } from './limits.ts';
import type { When } from './when.ts';

/** Exact by definition (NIST SP 811): metres to an inch and a foot. */
export const inch = 0.0254;
export const foot = 0.3048;
export const hour = 3600;

/** Kilograms of water in a US gallon to those of cement in a bag of 94 lb: 3.785411784 / (94 × 0.45359237). */
const gallonToBag = 3.785411784 / (94 * 0.45359237);

/** Water to cement by mass of so many US gallons to a bag of 94 lb. */
export const gallonsToBag = (gallons: number): number => Math.round(gallons * gallonToBag * 1e4) / 1e4;

export const notice = 'A help for checking, not the law: read the current text of your code and ask the authority.';

/** Makes the clauses of one text. */
export const clausesOf =
  (source: string, known: Clause['known'], date: string | null) =>
  (text: string, section: string | null = null, more: Partial<Pick<Clause, 'uncertain' | 'address'>> = {}): Clause => ({
    text,
    section,
    source,
    known,
    date,
    uncertain: null,
    address: null,
    ...more,
  });

/** A limit; `unit` is that of the SI value. */
export const limit = (value: number, unit: string, clause: Clause, counted: Counting | null = null): Limit => ({
  value,
  unit,
  ...clause,
  counted,
});

/** A limit that counts only where the log says so. */
export const given = (name: LimitName, when: When, asked: Limit): Case => ({ limit: name, when, ...asked });

/** What a pack leaves out. */
export const nothingMore: Omit<Pack, 'id' | 'title' | 'notice' | 'limits'> = {
  state: 'current',
  cases: [],
  record: [],
  due: [],
  testReadings: null,
  distances: [],
  numbers: [],
  reminders: [],
};
