import { table } from '../../grammar/table.ts';
import { figureTexts } from '../../server/features/figure-texts.ts';
import { folderRules } from '../../server/rules/folder/index.ts';
import { rules } from '../../server/rules/index.generated.ts';
import type { RuleWords } from '../../server/rules/rule.ts';

const ofRule = ({ title, why, mend, crew, unfixed }: RuleWords): (string | undefined)[] => [
  title,
  why,
  mend,
  crew,
  unfixed,
];

/** Texts that stand in English in data of the server and are looked up where they are shown. */
export const lookedUp: readonly string[] = [
  ...[...rules, ...folderRules].flatMap(ofRule),
  ...table.flatMap(({ doc, slots }) => [doc, ...slots.map((slot) => slot.doc)]),
  ...figureTexts,
].filter((text) => text !== undefined);
