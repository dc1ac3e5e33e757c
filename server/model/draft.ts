import type { Line } from '../../grammar/tree.ts';
import type { When } from './casing-top.ts';
import type {
  Abandonment,
  Depth,
  Drilling,
  FileUnits,
  Interval,
  Moment,
  ObservedWell,
  PipeString,
  Test,
  WellLog,
} from './log.ts';
import type { Fact, Reading } from './remembered.ts';
import { type Setting, settingOf } from './setting.ts';
import type { Bearings } from './settle.ts';
import { bearingsAt, entryFrom, type Survey } from './survey.ts';

/** A log as far as its lines have been taken in, and what the next line belongs to. */
export interface Draft {
  readonly log: WellLog;
  readonly survey: Survey;
  readonly setting: Setting;
  /** Settings for levels from the top of the casing. */
  readonly fromTop: Setting;
  /** Keywords of the file that have their value; a second value does not count. */
  readonly said: Set<string>;
  /** The bases of the last intervals, by section or by what hangs on one. */
  readonly bases: Map<string, Base>;
  string: PipeString | null;
  drilling: Drilling | null;
  test: Test | null;
  observed: ObservedWell | null;
  abandonment: Abandonment | null;
}

/** The base of the last interval of a section, as far as it has been read. */
export interface Base {
  depth: Depth | null;
}

/** A line to be taken in. */
export interface Place {
  readonly line: Line;
  readonly number: number;
}

const emptyLog = (units: FileUnits, totalDepth: number | null): WellLog => ({
  units,
  packs: [],
  header: {},
  uses: [],
  status: null,
  place: null,
  ground: null,
  began: null,
  finished: null,
  reported: null,
  distances: [],
  shifts: [],
  existing: [],
  photos: [],
  notes: [],
  hole: [],
  strata: [],
  drilling: [],
  strings: [],
  water: { found: [], levels: [], gas: [], quality: [], flowing: [] },
  tests: [],
  disinfections: [],
  developments: [],
  hydrofractures: [],
  pumps: [],
  caps: [],
  abandonments: [],
  questions: [],
  totalDepth,
});

export const draftOf = (units: FileUnits, survey: Survey): Draft => ({
  log: emptyLog(units, survey.bottom),
  survey,
  setting: settingOf(units, 'bgs'),
  fromTop: settingOf(units, 'toc'),
  said: new Set(),
  bases: new Map(),
  string: null,
  drilling: null,
  test: null,
  observed: null,
  abandonment: null,
});

/** A log that says nothing. */
export const blankLog = (units: FileUnits): WellLog => emptyLog(units, null);

const dateOf = (entry: object | null): Moment | null =>
  entry !== null && 'date' in entry ? ((entry as { date: Moment | null }).date ?? null) : null;

const whenOf = <T extends object | null>({ entry, number }: Fact<T>): When => ({ moment: dateOf(entry), line: number });

const nowhere: Bearings = { bottom: null, casingTop: null };

const entryOf = <T extends object | null>(draft: Draft, fact: Fact<T>): T =>
  entryFrom(fact, fact.waits ? bearingsAt(draft.survey, whenOf(fact)) : nowhere);

/** What a line says, with its depths settled by the bearings at its own date. */
export const look = <T extends object | null>(draft: Draft, place: Place, reading: Reading<T>): T =>
  entryOf(draft, reading(place.line, place.number, draft.setting, null));

/** As `look`, for a line that becomes part of the log: what it leaves open is noted. */
export function take<T extends object | null>(
  draft: Draft,
  { line, number }: Place,
  reading: Reading<T>,
  above: Depth | null = null,
): T {
  const fact = reading(line, number, draft.setting, above);
  noteQuestions(draft, fact);
  return entryOf(draft, fact);
}

export function noteQuestions(draft: Draft, { questions }: Fact<unknown>): void {
  for (const question of questions) draft.log.questions.push(question);
}

/** The base of the last interval under a name. */
export function baseOf(draft: Draft, name: string): Base {
  const known = draft.bases.get(name);
  if (known) return known;
  const base = { depth: null };
  draft.bases.set(name, base);
  return base;
}

const beginsWithDash = ({ depths }: Line): boolean => depths?.kind === 'interval' && depths.from === null;

/** As `take`, with the base of the last interval under a name for a top where the line begins with the dash. */
export function takeBelow<T extends { interval: Interval | null }>(
  draft: Draft,
  place: Place,
  reading: Reading<T>,
  name: string,
): T {
  const base = baseOf(draft, name);
  const entry = take(draft, place, reading, beginsWithDash(place.line) ? base.depth : null);
  base.depth = entry.interval?.bottom ?? base.depth;
  return entry;
}

/** True for a keyword alone on its line. */
export const isBare = ({ line }: Place): boolean => line.depths === null && line.items.length === 0;
