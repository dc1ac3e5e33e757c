/** What the preview's page and the extension say to each other. Lines count from 0. */

export type ToPage =
  | { readonly type: 'show'; readonly html: string }
  | { readonly type: 'trouble'; readonly message: string }
  | { readonly type: 'cursor'; readonly line: number; readonly scrollIntoView: boolean };

export type FromPage = { readonly type: 'ready' } | { readonly type: 'reveal'; readonly line: number };

/** What the page leaves behind for the panel that is set up in its place after a reload. */
export interface KeptState {
  readonly uri: string;
  readonly scrollTop: number;
}
