/** What the page that reviews field notes and the extension say to each other. */

export interface ReviewLine {
  readonly part: string;
  readonly text: string;
}

export interface ReviewEntry {
  readonly first: number;
  readonly source: readonly string[];
  readonly lines: readonly ReviewLine[];
  readonly status: 'understood' | 'partly' | 'not';
  readonly why: readonly string[];
}

export type Decision = 'open' | 'accepted' | 'refused';

/** What became of one entry on the page. */
export interface Reviewed {
  readonly decision: Decision;
  readonly lines: readonly ReviewLine[];
}

/** The page's own words, already in the reader's language; `{0}` and `{1}` are filled in by the page. */
export type Words = Readonly<Record<string, string>>;

export type ToReview =
  | {
      readonly type: 'show';
      readonly entries: readonly ReviewEntry[];
      readonly reviewed: readonly Reviewed[];
      readonly parts: readonly string[];
      readonly notes: readonly string[];
      readonly canInsert: boolean;
      readonly words: Words;
    }
  | { readonly type: 'looked'; readonly entry: number; readonly line: number; readonly says: string | null }
  | { readonly type: 'trouble'; readonly message: string };

export type FromReview =
  | { readonly type: 'ready' }
  | {
      readonly type: 'look';
      readonly entry: number;
      readonly line: number;
      readonly part: string;
      readonly text: string;
    }
  | { readonly type: 'kept'; readonly reviewed: readonly Reviewed[] }
  | { readonly type: 'write'; readonly to: 'file' | 'cursor'; readonly reviewed: readonly Reviewed[] };
