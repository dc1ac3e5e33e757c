import * as l10n from '@vscode/l10n';
import type { TextField } from '../../model/log.ts';
import type { Related } from '../rule.ts';
import type { FolderReport } from './rule.ts';
import type { FolderWell } from './well.ts';

/** Other places that a finding shows at most. */
const mostShown = 5;

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

/** Wells by a text of theirs, in any letter case; only those that share it. */
function sharing(wells: readonly FolderWell[], textOf: (well: FolderWell) => TextField | null): FolderWell[][] {
  const groups = new Map<string, FolderWell[]>();
  for (const well of wells) {
    const text = textOf(well);
    if (text === null) continue;
    const group = groups.get(plain(text.text));
    if (group) group.push(well);
    else groups.set(plain(text.text), [well]);
  }
  return [...groups.values()].filter(({ length }) => length > 1);
}

/** `b.well`, `b.well and c.well`, `b.well and 7 more`. */
function namesText(wells: readonly FolderWell[]): string {
  const [first, second] = wells;
  if (second === undefined) return first?.name ?? '';
  return wells.length === 2
    ? l10n.t('{0} and {1}', first?.name ?? '', second.name)
    : l10n.t('{0} and {1} more', first?.name ?? '', wells.length - 1);
}

/** One report for each well whose text others have too; `words` gets the text and the others' names. */
export function reportsOfSame(
  wells: readonly FolderWell[],
  textOf: (well: FolderWell) => TextField | null,
  words: (text: string, others: string) => string,
): FolderReport[] {
  const reportOf = (well: FolderWell, group: readonly FolderWell[]): FolderReport[] => {
    const text = textOf(well);
    const others = group.filter((each) => each !== well);
    if (text === null) return [];
    const related = others.slice(0, mostShown).flatMap((each): Related[] => {
      const there = textOf(each);
      if (there === null) return [];
      return [{ file: each.file, span: there.span, message: l10n.t('{0} in {1}', there.text, each.name) }];
    });
    return [{ file: well.file, span: text.span, message: words(text.text, namesText(others)), related }];
  };
  return sharing(wells, textOf).flatMap((group) => group.flatMap((well) => reportOf(well, group)));
}
