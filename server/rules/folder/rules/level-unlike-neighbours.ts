import * as l10n from '@vscode/l10n';
import { depthText, lengthText } from '../../messages.ts';
import type { FolderContext, FolderReport, FolderRule } from '../rule.ts';
import type { FolderWell } from '../well.ts';

/** Metres within which wells are neighbours, and how many there must be. */
const reach = 1000;
const fewest = 3;
/** Metres over which a difference is told, and its least ratio to the neighbours' own spread. */
const least = 10;
const leastOfSpread = 3;

/** Height of the water over the datum of the ground; null where ground or level is not logged. */
const waterHeight = ({ ground, level }: FolderWell): number | null =>
  ground === null || level === null ? null : ground.elevation - level.depth;

function median(sorted: readonly number[]): number {
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)] ?? 0;
  return Number.isInteger(middle) ? ((sorted[middle - 1] ?? 0) + upper) / 2 : upper;
}

const inOrder = (numbers: readonly number[]): number[] => [...numbers].sort((a, b) => a - b);

/** Heights of the water in the wells around, over the same datum. */
const heightsAround = (well: FolderWell, { near }: FolderContext): readonly number[] =>
  near(well, reach)
    .filter((each) => each.well.ground?.datum === well.ground?.datum)
    .map((each) => waterHeight(each.well))
    .filter((height) => height !== null);

const below = (level: string, apart: string, wells: number): string =>
  l10n.t(
    'the static level of {0} stands {1} below that of {2} wells within {3} m, by elevation; look whether the level is from the top of the casing, the ground level is right, and the well had recovered',
    level,
    apart,
    wells,
    reach,
  );

const above: typeof below = (level, apart, wells) =>
  l10n.t(
    'the static level of {0} stands {1} above that of {2} wells within {3} m, by elevation; look whether the level is from the top of the casing, the ground level is right, and the well had recovered',
    level,
    apart,
    wells,
    reach,
  );

function reportOf(well: FolderWell, context: FolderContext): FolderReport[] {
  const height = waterHeight(well);
  if (height === null || well.level === null) return [];
  const around = heightsAround(well, context);
  if (around.length < fewest) return [];
  const usual = median(inOrder(around));
  const spread = median(inOrder(around.map((each) => Math.abs(each - usual))));
  const apart = Math.abs(height - usual);
  if (apart <= least || apart <= leastOfSpread * spread) return [];
  const { units } = well;
  return [
    {
      file: well.file,
      span: well.level.span,
      message: (height < usual ? below : above)(
        depthText(well.level.depth, units),
        lengthText(Math.round(apart * 10) / 10, units),
        around.length,
      ),
    },
  ];
}

const neighbours = {
  'b.well': 'place 44.5312 -78.2064\nground 229.0 m\nwater\n  level 4.9',
  'c.well': 'place 44.5308 -78.2064\nground 230.1 m\nwater\n  level 5.6',
  'd.well': 'place 44.5310 -78.2070\nground 231.0 m\nwater\n  level 7.1',
};

/** A static level far from those of the wells around. */
export const rule: FolderRule = {
  id: 'level-unlike-neighbours',
  severity: 'information',
  off: true,
  title: 'A static level far from its neighbours’, by elevation',
  why: 'Wells in one aquifer stand at much the same height above the sea. One that does not was measured from elsewhere, had not recovered, or draws from another layer.',
  mend: 'Look at the datum of the level, at the ground level and at the day of the reading. A well in another aquifer may well stand apart: allow it, and say so.',
  source:
    'over 10 m and three times the median deviation of at least three wells within 1 km (common practice, no source)',
  flagged: [{ 'a.well': 'place 44.5310 -78.2064\nground 229.7 m\nwater\n  level [[31.2]]', ...neighbours }],
  silent: [
    { 'a.well': 'place 44.5310 -78.2064\nground 229.7 m\nwater\n  level 5.2', ...neighbours },
    { 'a.well': 'place 44.5310 -78.2064\nwater\n  level 31.2', ...neighbours },
    { 'a.well': 'place 44.5610 -78.2064\nground 229.7 m\nwater\n  level 31.2', ...neighbours },
  ],
  check: (context) => context.wells.flatMap((well) => reportOf(well, context)),
};
