import type { DrilledInterval, Interval, WellLog } from '../../model/log.ts';
import type { Record as WellRecord } from '../../record/record.ts';

/** A value that holds from `top` down to `bottom`, metres below ground. */
export interface Stretch {
  readonly top: number;
  readonly bottom: number;
  readonly value: number;
}

/** One curve against depth. */
export interface Track {
  /** As the curve is called in the file; letters only, at most eight. */
  readonly mnemonic: string;
  readonly unit: string;
  readonly title: string;
  readonly stretches: readonly Stretch[];
}

function stretchOf({ top, bottom }: Interval, value: number | null | undefined): Stretch[] {
  const from = top?.value ?? null;
  const to = bottom?.value ?? null;
  if (from === null || to === null || value === null || value === undefined || !(to > from)) return [];
  return [{ top: from, bottom: to, value }];
}

interface Numbered {
  readonly number: number;
  readonly line: DrilledInterval;
}

const drilledLines = ({ drilling }: WellLog): Numbered[] =>
  drilling.flatMap(({ intervals }) => intervals).map((line, at) => ({ number: at + 1, line }));

const drilledTrack = (
  drilled: readonly Numbered[],
  about: Omit<Track, 'stretches'>,
  valueAt: (drilled: Numbered) => number | null,
): Track => ({
  ...about,
  stretches: drilled.flatMap((each) => stretchOf(each.line.interval, valueAt(each))),
});

const scaled = (value: number | null, by: number): number | null => (value === null ? null : value * by);

/** The tracks that the log has something for: rates, flush, diameters and the ground's pattern number, each by depth. */
export function tracksOf(record: WellRecord): Track[] {
  const { log } = record;
  const drilled = drilledLines(log);
  const figures = new Map(record.figures.map(({ id, value }) => [id, value]));
  const figure = (id: string): number | null => figures.get(id) ?? null;
  const tracks: Track[] = [
    drilledTrack(drilled, { mnemonic: 'ROP', unit: 'M/HR', title: 'penetration rate' }, ({ number }) =>
      scaled(figure(`drilling.${number}.penetration-rate`), 3600),
    ),
    drilledTrack(drilled, { mnemonic: 'UPVEL', unit: 'M/MIN', title: 'uphole velocity' }, ({ number }) =>
      scaled(figure(`drilling.${number}.uphole-velocity`), 60),
    ),
    drilledTrack(drilled, { mnemonic: 'FLUSH', unit: 'L/S', title: 'flush rate' }, ({ line }) =>
      scaled(line.flushRate?.value ?? null, 1000),
    ),
    {
      mnemonic: 'HOLED',
      unit: 'MM',
      title: 'diameter of the hole',
      stretches: log.hole.flatMap((each) => stretchOf(each.interval, scaled(each.diameter?.value ?? null, 1000))),
    },
    {
      mnemonic: 'FGDC',
      unit: '',
      title: 'ground by pattern number of FGDC-STD-013-2006',
      stretches: log.strata.flatMap((each) => stretchOf(each.interval, each.ground?.fgdc)),
    },
  ];
  return tracks.filter(({ stretches }) => stretches.length > 0);
}
