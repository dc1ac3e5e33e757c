import type { Snapshot } from '../analysis/snapshot.ts';
import type { FileUnits, PipeString, Test, WellLog } from '../model/log.ts';
import { daysLeft } from '../record/index.ts';
import type { DueDate, Record as WellRecord } from '../record/record.ts';
import { staticLevelOf } from '../record/water/static-level.ts';
import type { Finding, Severity } from '../rules/rule.ts';
import { figureValue, saidText } from './folder-well.ts';

/** A string of a well in a summary. Depths are metres below ground, the diameter metres; unknown is null. */
export interface StringSummary {
  readonly kind: PipeString['kind'];
  readonly top: number | null;
  readonly bottom: number | null;
  readonly outside: number | null;
}

/** What must be sent in next, and by when; `left` counts days from today, null where nobody said what day it is. */
export interface NextDue {
  readonly what: DueDate['what'];
  readonly pack: string;
  readonly day: string;
  readonly left: number | null;
}

export type FindingCounts = Readonly<Record<Severity, number>>;

/** Where a rate of water comes from: a pumping test, what was found while drilling, or what flows out by itself. */
export type YieldBasis = 'tested' | 'found' | 'flowing';

/** A geodetic datum: its id among the terms, and its name. */
export interface Datum {
  readonly id: string;
  readonly name: string;
}

/** A well in a few figures. SI units; what the log lacks is null. */
export interface WellSummary {
  readonly units: FileUnits;
  readonly id: string | null;
  readonly location: string | null;
  readonly owner: string | null;
  /** Degrees on the datum named; null for the datum where none is. */
  readonly place: { readonly latitude: number; readonly longitude: number; readonly datum: Datum | null } | null;
  readonly depth: number | null;
  readonly strings: readonly StringSummary[];
  /** Metres below ground. */
  readonly level: { readonly depth: number; readonly date: string | null } | null;
  /** m3/s. */
  readonly yield: { readonly rate: number; readonly basis: YieldBasis } | null;
  readonly finished: string | null;
  readonly findings: FindingCounts;
  readonly due: NextDue | null;
}

export const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

export const countsOf = (findings: readonly Finding[]): FindingCounts => {
  const counts = { error: 0, warning: 0, information: 0, hint: 0 };
  for (const { severity } of findings) counts[severity] += 1;
  return counts;
};

const stringOf = ({ kind, interval, size }: PipeString): StringSummary => ({
  kind,
  top: interval.top?.value ?? null,
  bottom: interval.bottom?.value ?? null,
  outside: size.outsideDiameter,
});

const pulledOut = ({ temporary, pulled }: PipeString): boolean => temporary || pulled !== null;

function placeOf({ log: { place }, figures }: WellRecord): WellSummary['place'] {
  const latitude = figureValue(figures, 'place.latitude');
  const longitude = figureValue(figures, 'place.longitude');
  if (place === null || latitude === null || longitude === null) return null;
  const { datum } = place;
  return { latitude, longitude, datum: datum && { id: datum.id, name: datum.name } };
}

function levelOf(log: WellLog): WellSummary['level'] {
  const found = staticLevelOf(log);
  return found?.level?.value == null ? null : { depth: found.level.value, date: found.date?.date ?? null };
}

const greatest = (rates: readonly (number | null | undefined)[]): number | null =>
  rates.reduce<number | null>((most, rate) => (rate != null && (most === null || rate > most) ? rate : most), null);

const rateOfTest = ({ rate, phases }: Test): number | null =>
  greatest([rate?.value, ...phases.filter(({ kind }) => kind === 'pumping').map((phase) => phase.rate?.value)]);

/** The rate of the last test, else what was found while drilling, else what flows out. */
function yieldOf({ log, figures }: WellRecord): WellSummary['yield'] {
  const known: readonly (readonly [YieldBasis, number | null])[] = [
    ['tested', log.tests.map(rateOfTest).findLast((rate) => rate !== null) ?? null],
    ['found', figureValue(figures, 'water.found-rate')],
    ['flowing', greatest(log.water.flowing.map(({ rate }) => rate?.value))],
  ];
  for (const [basis, rate] of known) if (rate !== null) return { rate, basis };
  return null;
}

function dueOf(due: readonly DueDate[], today: string | null): NextDue | null {
  const open = due.filter(({ sent }) => sent === null);
  const [next] = [...open].sort((a, b) => (a.due < b.due ? -1 : 1));
  if (!next) return null;
  return {
    what: next.what,
    pack: next.pack,
    day: next.due,
    left: today === null ? null : daysLeft(next, today),
  };
}

/** Counts of findings added up. */
export const countsTogether = (a: FindingCounts, b: FindingCounts): FindingCounts => ({
  error: a.error + b.error,
  warning: a.warning + b.warning,
  information: a.information + b.information,
  hint: a.hint + b.hint,
});

/** A well in a few figures; `findings` are those of its log, and of the folder where they are known. */
export function summaryOf({ log, record }: Snapshot, findings: readonly Finding[], today: string | null): WellSummary {
  return {
    units: log.units,
    id: saidText(log, 'well')?.text ?? null,
    location: saidText(log, 'location')?.text ?? null,
    owner: saidText(log, 'owner')?.text ?? null,
    place: placeOf(record),
    depth: record.log.totalDepth,
    strings: log.strings.filter((string) => !pulledOut(string)).map(stringOf),
    level: levelOf(log),
    yield: yieldOf(record),
    finished: log.finished?.valid ? log.finished.date : null,
    findings: countsOf(findings),
    due: dueOf(record.due, today),
  };
}
