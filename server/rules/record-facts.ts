import { rowById } from '../../grammar/table.ts';
import type { Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { RecordFact } from '../packs/requirements.ts';
import { isPermanent } from '../record/strings/standing.ts';
import { isSeal } from './strings.ts';

/** Where a fact is written: among the header lines, under the last string, or in a section at the end. */
type Where = 'header' | 'string' | 'end';

export interface FactToHold {
  readonly isHeld: (log: WellLog) => boolean;
  readonly where: Where;
  /** The line or lines to write, with `?` for what is not known; null where the notation has no `?` for it. */
  readonly lines: string | null;
}

const header = (keyword: string): FactToHold => ({
  isHeld: (log) => Object.hasOwn(log.header, keyword),
  where: 'header',
  lines: `${keyword}  ?`,
});

const inHeader = (isHeld: FactToHold['isHeld'], lines: string | null): FactToHold => ({
  isHeld,
  where: 'header',
  lines,
});
const atEnd = (isHeld: FactToHold['isHeld'], lines: string | null): FactToHold => ({
  isHeld,
  where: 'end',
  lines,
});

const isInMetres = ({ place }: WellLog): boolean => place?.utm != null;

/** How each fact that a pack may ask for is found and written. */
export const factsToHold: Readonly<Record<RecordFact, FactToHold>> = {
  well: header('well'),
  owner: header('owner'),
  place: inHeader((log) => log.place !== null || Object.hasOwn(log.header, 'location'), 'place  ?'),
  'place-in-degrees': inHeader((log) => log.place !== null && !isInMetres(log), 'place  ?'),
  contractor: header('contractor'),
  technician: header('technician'),
  licence: header('licence'),
  tag: header('tag'),
  permit: header('permit'),
  use: inHeader((log) => log.uses.length > 0, null),
  began: inHeader((log) => log.began !== null, 'began  ?'),
  finished: inHeader((log) => log.finished !== null, 'finished  ?'),
  hole: atEnd((log) => log.hole.length > 0, 'hole\n  0 - ?  ?'),
  strata: atEnd((log) => log.strata.length > 0, 'strata\n  0 - ?  ?'),
  casing: atEnd((log) => log.strings.length > 0, 'casing  ? - ?  ?'),
  seal: {
    isHeld: ({ strings }) =>
      !strings.some(isPermanent) || strings.some(({ fills, driven }) => driven || fills.some(isSeal)),
    where: 'string',
    lines: '  seal  ? - ?  ?',
  },
  'water-level': atEnd((log) => log.water.levels.length > 0 || log.water.flowing.length > 0, 'water\n  level  ?'),
  test: atEnd((log) => log.tests.length > 0, 'test  ?'),
  disinfection: atEnd((log) => log.disinfections.length > 0, 'disinfection  ?'),
  pump: atEnd((log) => log.pumps.length > 0, null),
};

const isHeader = (row: string | null): boolean => row !== null && rowById(row).where === 'file';

const lastWhere = (tree: Tree, fits: (line: number) => boolean): number => {
  for (let line = tree.lines.length - 1; line > 0; line--) if (fits(line)) return line;
  return 0;
};

const isWritten = ({ lines }: Tree, line: number): boolean => lines[line]?.text.trim() !== '';

/** The line after which a fact is written: the last of the header, the last string's own, or the last of the file. */
export function lineForFact({ where }: FactToHold, log: WellLog, tree: Tree): number {
  if (where === 'header') return lastWhere(tree, (line) => isHeader(tree.lines[line]?.row ?? null));
  const string = where === 'string' ? log.strings.findLast(isPermanent) : undefined;
  return string ? string.line : lastWhere(tree, (line) => isWritten(tree, line));
}
