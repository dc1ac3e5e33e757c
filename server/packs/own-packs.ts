import type { Pack } from './limits.ts';

/** A pack of the workspace that could not be read. */
export interface UnreadPack {
  readonly id: string;
  /** Its file, the place of the fault in it, and what is wrong. */
  readonly why: string;
}

/** The packs that a workspace adds to those of the program. */
export interface OwnPacks {
  /** Of two with the same id the first counts. */
  readonly packs: readonly Pack[];
  readonly unread: readonly UnreadPack[];
}

export const noOwnPacks: OwnPacks = { packs: [], unread: [] };
