import type { Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import type { OwnPacks } from '../packs/own-packs.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { Finding } from '../rules/rule.ts';
import type { Settings } from './snapshot.ts';

/** What the rules are given. The record is computed when it is first asked for. */
export interface Known {
  readonly tree: Tree;
  readonly log: WellLog;
  readonly record: () => WellRecord;
  readonly limits: Limits;
}

/** The stages from text to findings, each a pure function. */
export interface Stages {
  readonly parse: (lines: readonly string[]) => Tree;
  readonly reparse: (tree: Tree, first: number, removed: number, inserted: readonly string[]) => Tree;
  readonly build: (tree: Tree) => WellLog;
  /** Limits in force for the packs of these ids; `own` are those of the workspace. */
  readonly limits: (packs: readonly string[], own: OwnPacks) => Limits;
  readonly record: (log: WellLog, limits: Limits) => WellRecord;
  readonly rules: (known: Known, settings: Settings) => readonly Finding[];
}
