import { median, timed } from './clock.ts';
import type { Contender } from './contenders/contender.ts';
import { editPlace, letters, type WrittenLog } from './logs.ts';

/** Medians in milliseconds; null where a contender was left out. */
export interface Times {
  readonly full: number;
  readonly edit: number;
  readonly findings: number;
}

const editsPerRound = 10;

async function oneRound(contender: Contender, text: string, size: number) {
  const { ms: full, value } = await timed(() => contender.open(text));
  const place = editPlace(text, size);
  const edits: number[] = [];
  for (let at = 0; at < editsPerRound; at += 1)
    edits.push((await timed(() => value.checked.edit(place, letters[at % 2] ?? 'm'))).ms);
  return { full, edit: median(edits), findings: value.findings };
}

/** Times every contender on one log, turn by turn, so that what else the machine does falls on all of them. */
export async function timesOf(
  contenders: readonly Contender[],
  log: WrittenLog,
  size: number,
  rounds: number,
): Promise<Map<Contender, Times>> {
  const taken = new Map(contenders.map((each) => [each, [] as Times[]]));
  for (let round = 0; round < rounds; round += 1)
    for (const [contender, times] of taken) times.push(await oneRound(contender, log[contender.notation], size));
  return new Map(
    [...taken].map(([contender, times]) => [
      contender,
      {
        full: median(times.map(({ full }) => full)),
        edit: median(times.map(({ edit }) => edit)),
        findings: times[0]?.findings ?? 0,
      },
    ]),
  );
}
