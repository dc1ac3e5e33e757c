import type { Line, Tree } from '../../grammar/tree.ts';
import { topOfCasing, type When } from './casing-top.ts';
import { bottomFact } from './hole.ts';
import type { PipeString } from './log.ts';
import type { Fact } from './remembered.ts';
import type { Setting } from './setting.ts';
import { type Bearings, settled } from './settle.ts';
import { cutFact, opensString, stringFacts } from './strings.ts';

/** What must be known of a whole log before its depths can be: strings with their cuts, and the bottom of the hole. */
export interface Survey {
  readonly strings: readonly PipeString[];
  /** Deepest base logged under `hole`, metres; null where there is none. */
  readonly bottom: number | null;
}

function surveyStrings(tree: Tree, setting: Setting): PipeString[] {
  const strings: PipeString[] = [];
  tree.lines.forEach((line, number) => {
    const kind = opensString(line, strings.length > 0);
    if (kind) strings.push({ ...stringFacts[kind](line, number, setting, null).entry, cuts: [] });
    else if (line.row === 'cut') strings.at(-1)?.cuts.push(cutFact(line, number, setting, null).entry);
  });
  return strings;
}

const isHoleLine = ({ row, depths }: Line): boolean => (row === 'hole.line' || row === 'hole') && depths !== null;

function deepest(tree: Tree, setting: Setting, bearings: Bearings): number | null {
  let bottom: number | null = null;
  tree.lines.forEach((line, number) => {
    if (!isHoleLine(line)) return;
    const fact = bottomFact(line, number, setting, null);
    const depth = entryFrom(fact, bearings).bottom?.value ?? null;
    if (depth !== null && (bottom === null || depth > bottom)) bottom = depth;
  });
  return bottom;
}

/** What a line says, with the depths that wait for the rest of the log. */
export const entryFrom = <T extends object | null>({ entry, waits }: Fact<T>, bearings: Bearings): T =>
  waits && entry !== null ? settled(entry, bearings) : entry;

export function surveyOf(tree: Tree, setting: Setting): Survey {
  const strings = surveyStrings(tree, setting);
  const casingTop = topOfCasing(strings, { moment: null, line: tree.lines.length });
  return { strings, bottom: deepest(tree, setting, { bottom: null, casingTop }) };
}

/** The bearings for what was measured at a time. */
export const bearingsAt = ({ strings, bottom }: Survey, when: When): Bearings => ({
  bottom,
  casingTop: topOfCasing(strings, when),
});
