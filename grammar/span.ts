/** A stretch of one line: columns in UTF-16 units from 0, the end exclusive. */
export interface Columns {
  readonly start: number;
  readonly end: number;
}

/** A stretch of one line of a document; lines count from 0. */
export interface Span extends Columns {
  readonly line: number;
}

export const spanAt = (line: number, { start, end }: Columns): Span => ({ line, start, end });
