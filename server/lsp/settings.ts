import * as l10n from '@vscode/l10n';
import type { Settings } from '../analysis/snapshot.ts';
import { type Shows, showsAll } from '../features/shows.ts';
import { packTrouble } from '../folder/own-packs.ts';
import { type RuleChoices, type RuleLevel, ruleIds, ruleLevels, severitiesOf } from '../folder/rule-choices.ts';
import type { OwnPacks } from '../packs/own-packs.ts';
import { didYouMean } from '../rules/messages.ts';
import { nearNames } from '../rules/near-names.ts';
import type { Beside } from './folder-files.ts';

/** What a user may set in the editor; the rest is added when a log is analysed. */
export interface UserSettings {
  readonly packs: readonly string[];
  readonly rules: RuleChoices;
  readonly shows: Shows;
  /** What is wrong in the settings, for the user. */
  readonly troubles: readonly string[];
}

export const defaultSettings: UserSettings = { packs: [], rules: {}, shows: showsAll, troubles: [] };

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const levels: ReadonlySet<unknown> = new Set(ruleLevels);

const isLevel = (entry: [string, unknown]): entry is [string, RuleLevel] => levels.has(entry[1]);

const packsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((each) => typeof each === 'string') : [];

const choicesOf = (value: unknown): RuleChoices =>
  isObject(value) ? Object.fromEntries(Object.entries(value).filter(isLevel)) : {};

type Wording = (where: string, name: string) => string;

const noRule: Wording = (where, name) => l10n.t('{0}: there is no rule "{1}"', where, name);
const noSeverity: Wording = (where, name) => l10n.t('{0}: there is no severity "{1}"', where, name);
const noSetting: Wording = (where, name) => l10n.t('{0}: there is no setting "{1}"', where, name);

const unknownName = (worded: Wording, where: string, name: string, known: readonly string[]): string[] =>
  known.includes(name) ? [] : [`${worded(where, name)}${didYouMean(nearNames(name, known))}`];

function levelTroubles(severity: unknown): string[] {
  const where = 'drillhand.rules.severity';
  if (severity === undefined || severity === null) return [];
  if (!isObject(severity)) return [l10n.t('{0}: expected rules by their ids', where)];
  return Object.entries(severity).flatMap(([id, level]) => [
    ...unknownName(noRule, where, id, ruleIds),
    ...unknownName(noSeverity, `${where}, ${id}`, String(level), ruleLevels),
  ]);
}

const troublesOf = (rules: Record<string, unknown>): string[] => [
  ...Object.keys(rules).flatMap((key) => unknownName(noSetting, 'drillhand.rules', key, ['packs', 'severity'])),
  ...levelTroubles(rules.severity),
];

/** What is wrong with the packs that the settings name; `own` are those of the workspace. */
export const packTroubles = ({ packs }: UserSettings, own: OwnPacks): string[] =>
  packs.flatMap((id) => {
    const trouble = packTrouble(id, own);
    return trouble === null ? [] : [l10n.t('{0}: {1}', 'drillhand.rules.packs', trouble)];
  });

function showsOf({ inlayHints, codeLens }: Record<string, unknown>): Shows {
  const hints = isObject(inlayHints) ? inlayHints : {};
  const isOn = (kind: keyof Shows['inlayHints']): boolean => hints[kind] !== false;
  return {
    inlayHints: {
      thickness: isOn('thickness'),
      units: isOn('units'),
      requiredVolume: isOn('requiredVolume'),
      penetrationRate: isOn('penetrationRate'),
    },
    codeLens: !isObject(codeLens) || codeLens.totals !== false,
  };
}

/** Settings from what the editor sent as its `drillhand` section; what cannot be read counts as not set. */
export function readSettings(section: unknown): UserSettings {
  const told = isObject(section) ? section : {};
  const rules = isObject(told.rules) ? told.rules : {};
  return {
    packs: packsOf(rules.packs),
    rules: choicesOf(rules.severity),
    shows: showsOf(told),
    troubles: troublesOf(rules),
  };
}

/**
 * What a log is analysed with. What the folder's `drillhand.json` says comes before what the editor's settings say, so
 * that the editor and the command line find the same; on what the file leaves open, the settings speak.
 */
export function settingsFor(user: UserSettings, { settings, own }: Beside, today: string): Settings {
  return {
    packs: settings.packs ?? user.packs,
    severities: severitiesOf({ ...user.rules, ...settings.rules }),
    today,
    own,
  };
}

/** True where two settings say the same. */
export const sameSettings = (a: Settings, b: Settings): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** Today on the wall calendar of this machine, as YYYY-MM-DD. */
export function todayHere(now: Date = new Date()): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
