import * as z from 'zod';

/** What a pack says, in the words of its code, with where it stands and whether that text was read. */
export const clause = {
  /** As the code words it, such as `12 in`. */
  text: z.string(),
  /** Section within the source; null where it was not noted. */
  section: z.string().nullable().default(null),
  /** The code, or `common practice, no source`. */
  source: z.string(),
  known: z.enum(['read', 'remembered', 'common practice']),
  /** The text's date, where it has one. */
  date: z.string().nullable(),
  /** What of the reading is not certain; null where nothing is. */
  uncertain: z.string().nullable().default(null),
  /** Public address of the section; null where none is certain. */
  address: z
    .url({ protocol: /^https?$/ })
    .nullable()
    .default(null),
};

export const Clause = z.strictObject(clause);
export type Clause = z.infer<typeof Clause>;
