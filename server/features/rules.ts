import { folderRules } from '../rules/folder/index.ts';
import type { FolderExample } from '../rules/folder/rule.ts';
import { rules } from '../rules/index.generated.ts';
import type { Example, RuleWords } from '../rules/rule.ts';

/** A rule of a log or of the folder, its examples as texts. */
export interface KnownRule extends RuleWords {
  readonly flaggedTexts: readonly string[];
  readonly silentTexts: readonly string[];
}

const textOf = ({ text }: Example): string => text;

/** The logs of a folder one below the other, each under its name. */
const textOfFolder = (example: FolderExample): string =>
  Object.entries(example)
    .map(([name, text]) => `# ${name}\n${text}`)
    .join('\n\n');

const known: readonly KnownRule[] = [
  ...rules.map((rule) => ({
    ...rule,
    flaggedTexts: rule.flagged.map(textOf),
    silentTexts: rule.silent.map(textOf),
  })),
  ...folderRules.map((rule) => ({
    ...rule,
    flaggedTexts: rule.flagged.map(textOfFolder),
    silentTexts: rule.silent.map(textOfFolder),
  })),
];

const byId = new Map(known.map((rule) => [rule.id, rule]));

/** The rule of that id. */
export const ruleById = (id: string): KnownRule | undefined => byId.get(id);
