import type { Tree } from '../../grammar/tree.ts';
import type { Finding } from '../rules/rule.ts';
import { failureOf, unreadTree } from './fallback.ts';
import type { Settings, Snapshot } from './snapshot.ts';
import type { Stages } from './stages.ts';
import { versionOf } from './version.ts';

/** Lines `first` to `first + removed` gave way to `inserted`; counted from 0. */
export interface LineEdit {
  readonly first: number;
  readonly removed: number;
  readonly inserted: readonly string[];
}

export interface Analysis {
  /** Everything that is known of a text. Never throws. */
  readonly analyse: (lines: readonly string[], settings: Settings, version: number) => Snapshot;
  /** As `analyse` for the text after an edit, with what did not change taken from the version before. Never throws. */
  readonly update: (previous: Snapshot, edit: LineEdit, settings: Settings, version: number) => Snapshot;
}

interface Read {
  readonly tree: Tree;
  readonly failures: readonly Finding[];
}

function read({ parse }: Stages, lines: readonly string[]): Read {
  try {
    return { tree: parse(lines), failures: [] };
  } catch (error) {
    return { tree: unreadTree(lines), failures: [failureOf('reading the lines', error)] };
  }
}

function readAgain(stages: Stages, before: Tree, edit: LineEdit, lines: readonly string[]): Read {
  try {
    return { tree: stages.reparse(before, edit.first, edit.removed, edit.inserted), failures: [] };
  } catch (error) {
    const whole = read(stages, lines);
    return { ...whole, failures: [failureOf('reading the changed lines', error), ...whole.failures] };
  }
}

const edited = (lines: readonly string[], { first, removed, inserted }: LineEdit): readonly string[] => [
  ...lines.slice(0, first),
  ...inserted,
  ...lines.slice(first + removed),
];

/** The analysis that these stages make. */
export const analysisOf = (stages: Stages): Analysis => ({
  analyse: (lines, settings, version) => versionOf(stages, { version, lines, ...read(stages, lines) }, settings),
  update: (previous, edit, settings, version) => {
    const lines = edited(previous.lines, edit);
    return versionOf(stages, { version, lines, ...readAgain(stages, previous.tree, edit, lines) }, settings);
  },
});
