import type { FileUnits, Span, TextField } from '../../model/log.ts';
import type { AllowedLines } from '../allows.ts';

/** What the rules of a folder look at of one log. Lengths are metres; what the log lacks is null. */
export interface FolderWell {
  /** Its path or address, by which findings are told apart. */
  readonly file: string;
  /** What messages call it. */
  readonly name: string;
  readonly units: FileUnits;
  readonly id: TextField | null;
  readonly tag: TextField | null;
  /** Degrees, north and east positive. */
  readonly place: { readonly latitude: number; readonly longitude: number; readonly span: Span } | null;
  /** Ids of the terms that the log gives as its uses and its status. */
  readonly kinds: readonly string[];
  /** True where the log goes on from a hole that was there before. */
  readonly continues: boolean;
  /** Height of the ground over the datum named; null for the datum where none is. */
  readonly ground: { readonly elevation: number; readonly datum: string | null } | null;
  /** The static level, below ground. */
  readonly level: { readonly depth: number; readonly span: Span } | null;
  readonly allowed: readonly AllowedLines[];
}

/** A well near another, and how far away in metres. */
export interface Neighbour {
  readonly well: FolderWell;
  readonly metres: number;
}
