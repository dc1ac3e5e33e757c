import type { Cut, Moment, PipeString } from './log.ts';

/** When something was measured: its date where one is written, and its line. */
export interface When {
  readonly moment: Moment | null;
  readonly line: number;
}

/** Compares two moments as far as both are written; null where they cannot be told apart. */
export function order(a: Moment | null, b: Moment | null): number | null {
  if (!a?.date || !b?.date) return null;
  if (a.date !== b.date) return a.date < b.date ? -1 : 1;
  if (!a.time || !b.time || a.time === b.time) return 0;
  return a.time < b.time ? -1 : 1;
}

/** True where a cut counts: from its date on; on the lines below it where a date is missing. */
function isDone(cut: Cut, { moment, line }: When): boolean {
  const ordered = order(cut.date, moment);
  return ordered === null ? line > cut.line : ordered <= 0;
}

/** True where a string was in the well at that time: set by then, and not yet pulled. */
function stands({ set, pulled, temporary }: PipeString, { moment }: When): boolean {
  if ((order(set, moment) ?? -1) > 0) return false;
  if (pulled === null) return !temporary;
  return (order(pulled, moment) ?? -1) > 0;
}

/** Top of a string at a time, metres below ground (above is negative); null where the notes do not say. */
export function topOf(string: PipeString, when: When): number | null {
  const done = string.cuts.filter((cut) => isDone(cut, when)).at(-1);
  if (done) return done.to?.value ?? null;
  return string.cuts[0]?.from?.value ?? string.interval.top?.value ?? null;
}

const outsideOf = ({ size }: PipeString): number => size.outsideDiameter ?? Number.POSITIVE_INFINITY;

/** Strings that come up as far as any does; a casing whose top is not known is taken to. */
function comeUp(strings: readonly PipeString[], when: When): PipeString[] {
  const tops = strings.map((string) => topOf(string, when) ?? Number.POSITIVE_INFINITY);
  const surface = Math.max(0, Math.min(...tops));
  return strings.filter((string, at) => {
    const top = tops[at] ?? Number.POSITIVE_INFINITY;
    return Number.isFinite(top) ? top <= surface : string.kind === 'casing';
  });
}

/** The innermost string that reaches the surface at a time; of strings as narrow, the one written last. */
export function innermost(strings: readonly PipeString[], when: When): PipeString | null {
  const standing = comeUp(
    strings.filter((string) => stands(string, when)),
    when,
  );
  return standing.reduce<PipeString | null>(
    (inner, string) => (inner === null || outsideOf(string) <= outsideOf(inner) ? string : inner),
    null,
  );
}

/** Top of the innermost string at a time, metres below ground (above is negative); null where that is not known. */
export function topOfCasing(strings: readonly PipeString[], when: When): number | null {
  const string = innermost(strings, when);
  return string ? topOf(string, when) : null;
}
