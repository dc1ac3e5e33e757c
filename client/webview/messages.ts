/** What the preview's page and the extension say to each other. Lines count from 0. */

/** A section as it is to be shown; `html` is null where it is the one that is shown already. */
export interface ShownSection {
  readonly id: string;
  readonly html: string | null;
}

export interface ShownColumn {
  readonly id: string;
  readonly title: string;
  readonly shown: boolean;
}

/** A drawing to be made a picture of; sizes in pixels. */
export interface PictureOrder {
  readonly id: number;
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

export type ToPage =
  | { readonly type: 'show'; readonly sections: readonly ShownSection[]; readonly columns: readonly ShownColumn[] }
  | { readonly type: 'trouble'; readonly message: string }
  | { readonly type: 'cursor'; readonly line: number; readonly scrollIntoView: boolean }
  | { readonly type: 'tied'; readonly tied: boolean }
  | { readonly type: 'scroll'; readonly line: number }
  | ({ readonly type: 'picture' } & PictureOrder);

/** What the page asks of the drawing: columns switched off, and the width in mm that there is for it. */
export interface Wishes {
  readonly hidden: readonly string[];
  readonly widthMm: number;
}

export type FromPage =
  | ({ readonly type: 'ready'; readonly tied: boolean | null } & Wishes)
  | ({ readonly type: 'wishes' } & Wishes)
  | { readonly type: 'reveal'; readonly line: number }
  | { readonly type: 'tied'; readonly tied: boolean }
  | { readonly type: 'scrolled'; readonly line: number }
  | { readonly type: 'export' }
  | { readonly type: 'pictured'; readonly id: number; readonly png: Uint8Array | null };

/** What the page leaves behind for the panel that is set up in its place after a reload. */
export interface KeptState {
  readonly uri: string;
  readonly scrollTop: number;
  readonly drawingLeft: number;
  readonly zoom: number;
  readonly hidden: readonly string[];
  /** Null where the setting decides. */
  readonly tied: boolean | null;
}
