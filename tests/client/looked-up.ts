import { readFileSync } from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';
import { table } from '../../grammar/table.ts';
import { templates } from '../../grammar/templates.ts';
import { termLists } from '../../grammar/terms/index.ts';
import { units } from '../../grammar/units.ts';
import { analyse } from '../../server/analysis/index.ts';
import { columnIds, columnTitle } from '../../server/drawing/index.ts';
import { exportFormats } from '../../server/export/formats.ts';
import { figureTexts } from '../../server/features/figure-texts.ts';
import { limitTable } from '../../server/packs/limit-names.ts';
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

const root = path.join(import.meta.dirname, '../..');

/** The samples, and what the rules are tried on. */
const logs = [
  ...globSync(['samples/**/*.well'], { cwd: root }).map((file) => readFileSync(path.join(root, file), 'utf8')),
  ...rules.flatMap(({ flagged, silent }) => [...flagged, ...silent].map(({ text }) => text.replace(/\[\[|\]\]/g, ''))),
];

/** The formulas of every figure in those logs. */
const formulas = logs.flatMap((text) =>
  analyse(text.split(/\r?\n/), { packs: [], severities: {}, today: null }, 1).record.figures.map(
    ({ formula }) => formula,
  ),
);

const slots = table.flatMap((row) => row.slots);

/** Texts that stand in English in data of the server and are looked up where they are shown. */
export const lookedUp: readonly string[] = [
  ...[...rules, ...folderRules].flatMap(ofRule),
  ...table.map(({ doc }) => doc),
  ...table.filter(({ where }) => where === 'file').map(({ id }) => id),
  ...slots.flatMap(({ slot, doc }) => [slot.replaceAll('-', ' '), doc]),
  ...templates.map(({ title }) => title),
  ...termLists.map(({ title }) => title),
  ...units.map(({ name }) => name),
  ...columnIds.map(columnTitle),
  ...exportFormats.map(({ title }) => title),
  ...Object.values(limitTable).map(({ meaning }) => meaning),
  ...figureTexts,
  ...formulas,
].filter((text) => text !== undefined);
