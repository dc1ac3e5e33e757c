import type { Measure, Moment, Phase, Test } from './log.ts';

const day = 86_400;

/** Seconds since midnight of HH:MM or HH:MM:SS. */
function secondsOfDay(time: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = time.split(':').map(Number);
  return hours * 3600 + minutes * 60 + seconds;
}

const daysBetween = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / (day * 1000);

/**
 * Seconds from the start of a test to a time of day; one without a date is the next after `notBefore` seconds on the
 * clock. Null where the start has no time of day.
 */
export function secondsSinceStart(test: Test, clock: Moment, notBefore: number): number | null {
  const start = test.start?.from;
  if (!start?.time || !clock.time) return null;
  const within = secondsOfDay(clock.time) - secondsOfDay(start.time);
  if (start.date && clock.date) return within + day * daysBetween(start.date, clock.date);
  return within + day * Math.max(0, Math.ceil((notBefore - within) / day));
}

/** Elapsed time reckoned from a time of day: `written` and its place are those of the time. */
export const elapsedMeasure = (seconds: number, clock: Moment): Measure => ({
  value: seconds,
  high: null,
  number: seconds / 60,
  unit: 'min',
  unitWritten: false,
  decimals: 0,
  bound: null,
  written: clock.time ?? '',
  approximate: clock.approximate,
  doubtful: clock.doubtful,
  span: clock.span,
});

/** Elapsed seconds of the last reading while pumping; null where there is none. */
export function lastPumping(phases: readonly Phase[]): number | null {
  const readings = phases.filter(({ kind }) => kind === 'pumping').flatMap((phase) => phase.readings);
  return readings.at(-1)?.elapsed?.value ?? null;
}

/** Seconds on the pumping clock of the last reading of all. */
export function lastOnPumpingClock(phases: readonly Phase[]): number {
  const phase = phases.findLast(({ readings }) => readings.length > 0);
  const elapsed = phase?.readings.at(-1)?.elapsed?.value ?? 0;
  return phase?.kind === 'recovery' ? elapsed + (phase.stop ?? 0) : elapsed;
}
