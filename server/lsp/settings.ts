import type { Settings } from '../analysis/snapshot.ts';
import { type Shows, showsAll } from '../features/shows.ts';
import type { Severity } from '../rules/rule.ts';

/** What a user may set; today's date is added when a log is analysed. */
export interface UserSettings extends Omit<Settings, 'today'> {
  readonly shows: Shows;
}

export const defaultSettings: UserSettings = { packs: [], severities: {}, shows: showsAll };

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const levels: ReadonlySet<unknown> = new Set<Severity | 'off'>(['error', 'warning', 'information', 'hint', 'off']);

const isLevel = (entry: [string, unknown]): entry is [string, Severity | 'off'] => levels.has(entry[1]);

const packsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((each) => typeof each === 'string') : [];

const severitiesOf = (value: unknown): UserSettings['severities'] =>
  isObject(value) ? Object.fromEntries(Object.entries(value).filter(isLevel)) : {};

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
  return { packs: packsOf(rules.packs), severities: severitiesOf(rules.severity), shows: showsOf(told) };
}

/** True where two settings say the same. */
export const sameSettings = (a: UserSettings, b: UserSettings): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Today on the wall calendar of this machine, as YYYY-MM-DD. */
export function todayHere(now: Date = new Date()): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
