import type { Snapshot } from '../analysis/snapshot.ts';
import { daysLeft } from '../record/due.ts';
import type { DueDate } from '../record/record.ts';

/** What an editor shows of a whole log at a glance. */
export interface LogStatus {
  /** The packs that it is checked against. */
  readonly packs: readonly string[];
  /** What is to be sent in next and has not been sent: what it is, when, and how many days are left. */
  readonly due: { readonly what: DueDate['what']; readonly date: string; readonly days: number | null } | null;
}

const soonest = (dates: readonly DueDate[]): DueDate | undefined =>
  dates.filter(({ sent }) => sent === null).toSorted((a, b) => a.due.localeCompare(b.due))[0];

/** `today` is YYYY-MM-DD; null leaves the days out. */
export function logStatus({ limits, record }: Snapshot, today: string | null): LogStatus {
  const due = soonest(record.due);
  const days = due === undefined || today === null ? Number.NaN : daysLeft(due, today);
  return {
    packs: (limits.packs ?? []).map(({ id }) => id),
    due: due === undefined ? null : { what: due.what, date: due.due, days: Number.isNaN(days) ? null : days },
  };
}
