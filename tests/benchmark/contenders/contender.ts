import type { EditPlace, WrittenLog } from '../logs.ts';

/** A checker with one document open. Each returns how many findings there are. */
export interface Checked {
  /** Writes one letter over another and checks. */
  readonly edit: (place: EditPlace, letter: string) => Promise<number> | number;
}

/** Something that checks a record. */
export interface Contender {
  readonly name: string;
  /** The notation that it reads. */
  readonly notation: keyof WrittenLog;
  /** Opens and checks a text from nothing. */
  readonly open: (
    text: string,
  ) => Promise<{ checked: Checked; findings: number }> | { checked: Checked; findings: number };
}

/** The change of one letter, as the protocol has it. */
export const letterChange = ({ line, character }: EditPlace, text: string) => ({
  range: { start: { line, character }, end: { line, character: character + 1 } },
  text,
});
