import * as z from 'zod';
import { type RuleChoices, ruleIds, ruleLevels } from './rule-choices.ts';

/** Name of the file that holds a folder's settings. */
export const settingsFile = 'drillhand.json';

/** What a `drillhand.json` may say; what it leaves out is null. */
export const FolderSettings = z.strictObject({
  /** Packs to check against beside those that a log names. */
  packs: z.array(z.string()).nullable().default(null),
  rules: z.partialRecord(z.enum(ruleIds), z.enum(ruleLevels)).nullable().default(null),
});

export interface FolderSettings {
  readonly packs: readonly string[] | null;
  readonly rules: RuleChoices | null;
}

export const noFolderSettings: FolderSettings = { packs: null, rules: null };
