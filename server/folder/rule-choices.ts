import { folderRules } from '../rules/folder/index.ts';
import { rules } from '../rules/index.generated.ts';
import type { Severity } from '../rules/rule.ts';

/** What may be said of a rule: how strongly it speaks, `off`, or `on` for as strongly as it does by itself. */
export const ruleLevels = ['error', 'warning', 'information', 'hint', 'on', 'off'] as const;
export type RuleLevel = (typeof ruleLevels)[number];

export type RuleChoices = Readonly<Record<string, RuleLevel>>;

/** Every rule that can be set, of one log or of the folder, with its id, title, default severity and whether it starts off. */
export const settableRules = [...rules, ...folderRules];

const byId = new Map(settableRules.map((rule) => [rule.id, rule]));

export const ruleIds: readonly string[] = settableRules.map(({ id }) => id);

/** The severity that a choice comes to; null where the rule keeps its own. */
function severityOf(id: string, level: RuleLevel): Severity | 'off' | null {
  if (level !== 'on') return level;
  const rule = byId.get(id);
  return rule?.off ? rule.severity : null;
}

/** Choices as the rules take them. */
export const severitiesOf = (choices: RuleChoices): Readonly<Record<string, Severity | 'off'>> =>
  Object.fromEntries(
    Object.entries(choices).flatMap(([id, level]) => {
      const severity = severityOf(id, level);
      return severity === null ? [] : [[id, severity]];
    }),
  );
