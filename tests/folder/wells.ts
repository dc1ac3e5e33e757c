import { analyse } from '../../server/analysis/index.ts';
import type { Snapshot } from '../../server/analysis/snapshot.ts';
import { folderWellOf } from '../../server/folder/folder-well.ts';
import type { FolderWell } from '../../server/rules/folder/well.ts';

/** The day on which the logs of these tests are read. */
export const today = '2026-12-31';

export const snapshotOf = (text: string): Snapshot =>
  analyse(text.split('\n'), { packs: [], severities: {}, today }, 1);

/** The logs of a folder, by file name, as its rules see them. */
export const wellsOf = (texts: Readonly<Record<string, string>>): FolderWell[] =>
  Object.entries(texts).map(([name, text]) => folderWellOf(snapshotOf(text), name, name));
