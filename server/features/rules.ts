import { rules } from '../rules/index.generated.ts';
import type { Rule } from '../rules/rule.ts';

const byId = new Map(rules.map((rule) => [rule.id, rule]));

/** The rule of that id. */
export const ruleById = (id: string): Rule | undefined => byId.get(id);
