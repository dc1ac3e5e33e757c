/** What a reviewer needs in order to check a figure by hand. All texts are plain text, in SI unless they say otherwise. */
export interface Formula {
  /** The formula's name in the trade's words. */
  readonly name: string;
  /** The formula in symbols, with the meaning of each symbol. */
  readonly text: string;
  /** Where it is published, or that it is derived, remembered, or common practice without a source. */
  readonly source: string;
  /** Where the formula holds, or null where it holds for every positive number. */
  readonly range: string | null;
  /** What the figure must not be trusted for, where work can hurt someone or the figure misleads; else null. */
  readonly caution: string | null;
}

/** A figure, or the reason why there is none. */
export type Outcome<T = number> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

export function known<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function refused(why: string): { readonly ok: false; readonly why: string } {
  return { ok: false, why };
}
