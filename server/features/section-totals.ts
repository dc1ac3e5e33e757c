import * as l10n from '@vscode/l10n';
import type { Snapshot } from '../analysis/snapshot.ts';
import { penetrationRate } from '../calculations/index.ts';
import type { Drilling, Fill, PipeString } from '../model/log.ts';
import { plainText, show } from '../record/display.ts';
import { kindText } from '../rules/strings.ts';
import { figureText } from './figure-words.ts';
import { figureOfId } from './figures.ts';
import type { Section } from './sections.ts';

interface Entry {
  readonly line: number;
}

/** Where in a list in the order of the file the first entry at or below a line stands. */
function firstFrom(entries: readonly Entry[], line: number): number {
  let [low, high] = [0, entries.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((entries[middle]?.line ?? 0) < line) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The entries that stand in a section. */
const within = <T extends Entry>(entries: readonly T[], { first, last }: Section): readonly T[] =>
  entries.slice(firstFrom(entries, first), firstFrom(entries, last + 1));

type Totals = (snapshot: Snapshot, section: Section) => readonly (string | null)[];

const shownDepth = (metres: number | null, { log }: Snapshot): string | null =>
  metres === null ? null : plainText(metres, 'length', log.units);

function deepest(entries: readonly { readonly interval: PipeString['interval'] }[]): number | null {
  let most: number | null = null;
  for (const { interval } of entries) {
    const bottom = interval.bottom?.value ?? null;
    if (bottom !== null && (most === null || bottom > most)) most = bottom;
  }
  return most;
}

const textOf = (snapshot: Snapshot, id: string, words: (text: string) => string): string | null => {
  const figure = figureOfId(snapshot.record, id);
  return figure === null ? null : words(figureText(figure));
};

const to = (depth: string | null): string | null => (depth === null ? null : l10n.t('down to {0}', depth));

const ofStrata: Totals = (snapshot, section) => {
  const strata = within(snapshot.log.strata, section);
  const count = strata.length === 1 ? l10n.t('1 layer') : l10n.t('{0} layers', strata.length);
  return [count, to(shownDepth(deepest(strata), snapshot))];
};

const ofHole: Totals = (snapshot, section) => [to(shownDepth(deepest(within(snapshot.log.hole, section)), snapshot))];

/** Placed against required, of one fill of a string; null where neither is known. */
function fillText(snapshot: Snapshot, string: PipeString, fill: Fill): string | null {
  const id = `casing.${string.number}.${fill.kind}.${fill.number}`;
  const placed = textOf(snapshot, `${id}.placed-volume`, (text) => l10n.t('{0} placed', text));
  const required =
    textOf(snapshot, `${id}.required-volume`, (text) => l10n.t('{0} required', text)) ??
    textOf(snapshot, `${id}.volume`, (text) => l10n.t('{0} of annulus', text));
  const parts = [placed, required].filter((part) => part !== null);
  return parts.length === 0 ? null : `${kindText(fill)} ${parts.join(', ')}`;
}

const ofString: Totals = (snapshot, { first }) => {
  const string = snapshot.log.strings.find(({ line }) => line === first);
  if (string === undefined) return [];
  return [
    textOf(snapshot, `casing.${string.number}.length`, (text) => l10n.t('{0} long', text)),
    ...string.fills.map((fill) => fillText(snapshot, string, fill)),
  ];
};

const ofWater: Totals = (snapshot, section) => {
  const { found, levels } = snapshot.log.water;
  return [
    within(found, section).length === 0
      ? null
      : textOf(snapshot, 'water.found-rate', (text) => l10n.t('{0} found', text)),
    within(levels, section).length === 0
      ? null
      : textOf(snapshot, 'water.static-level', (text) => l10n.t('static level {0}', text)),
  ];
};

/** Depth drilled and time taken of the lines that say both. */
function drilledOf({ intervals }: Drilling): { readonly metres: number; readonly seconds: number } {
  let [metres, seconds] = [0, 0];
  for (const { interval, time } of intervals) {
    const [top, bottom, taken] = [interval.top?.value ?? null, interval.bottom?.value ?? null, time?.value ?? null];
    if (top === null || bottom === null || taken === null) continue;
    metres += Math.abs(bottom - top);
    seconds += taken;
  }
  return { metres, seconds };
}

const ofDrilling: Totals = (snapshot, { first }) => {
  const head = snapshot.log.drilling.find(({ line }) => line === first);
  if (head === undefined) return [];
  const { units } = snapshot.log;
  const { metres, seconds } = drilledOf(head);
  const mean = seconds > 0 ? penetrationRate(metres, seconds) : null;
  return [
    metres > 0
      ? l10n.t('{0} drilled in {1}', plainText(metres, 'length', units), plainText(seconds, 'minutes', units))
      : null,
    mean?.ok ? l10n.t('{0} on average', show(mean.value, 'velocity', units).text) : null,
  ];
};

const ofTest: Totals = (snapshot, { first }) => {
  const test = snapshot.log.tests.find(({ line }) => line === first);
  if (test === undefined) return [];
  return [textOf(snapshot, `test.${test.number}.specific-capacity`, (text) => l10n.t('specific capacity {0}', text))];
};

const ofAbandonment: Totals = (snapshot, section) => {
  const sealed = snapshot.log.abandonments.flatMap(({ fills }) => within(fills, section));
  if (sealed.length === 0) return [];
  return [sealed.length === 1 ? l10n.t('1 stretch sealed') : l10n.t('{0} stretches sealed', sealed.length)];
};

const totals: Readonly<Record<string, Totals>> = {
  strata: ofStrata,
  hole: ofHole,
  casing: ofString,
  liner: ofString,
  screen: ofString,
  water: ofWater,
  drilling: ofDrilling,
  test: ofTest,
  abandonment: ofAbandonment,
};

/** What a section comes to, in words; empty where nothing of it is known. */
export const sectionTotals = (snapshot: Snapshot, section: Section): string =>
  (totals[section.id]?.(snapshot, section) ?? []).filter((part) => part !== null).join(' · ');
