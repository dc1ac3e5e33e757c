import * as l10n from '@vscode/l10n';
import { lengthText } from '../../messages.ts';
import type { FolderReport, FolderRule } from '../rule.ts';
import type { FolderWell, Neighbour } from '../well.ts';

/** Metres within which two wells stand at one place. */
const onePlace = 1;

/** What a log may be so that a second well at its place is no fault: one took the other's place, or is the other. */
const takesTurns: ReadonlySet<string> = new Set([
  'replacement',
  'deepened',
  'altered',
  'abandoned',
  'abandoned-unsealed',
  'destroyed',
]);
/** Wells of a nest share one hole, or stand side by side. */
const nested: ReadonlySet<string> = new Set(['monitoring', 'observation', 'test', 'test-hole', 'remediation']);

const isAny = (well: FolderWell, kinds: ReadonlySet<string>): boolean => well.kinds.some((kind) => kinds.has(kind));

const isSaid = (a: FolderWell, b: FolderWell): boolean =>
  a.continues || b.continues || isAny(a, takesTurns) || isAny(b, takesTurns) || (isAny(a, nested) && isAny(b, nested));

const samePlace = (other: string): string =>
  l10n.t(
    'this well stands at the very place of {0}; correct one place, or say what the wells are to each other (status replacement or abandoned, use monitoring for a nest)',
    other,
  );

const nearPlace = (apart: string, other: string): string =>
  l10n.t(
    'this well stands {0} from {1}; correct one place, or say what the wells are to each other (status replacement or abandoned, use monitoring for a nest)',
    apart,
    other,
  );

function reportOf({ file, place, units }: FolderWell, { well, metres }: Neighbour): FolderReport[] {
  if (place === null || well.place === null) return [];
  const apart = lengthText(Math.round(metres * 10) / 10, units);
  return [
    {
      file,
      span: place.span,
      message: metres < 0.1 ? samePlace(well.name) : nearPlace(apart, well.name),
      related: [{ file: well.file, span: well.place.span, message: l10n.t('place of {0}', well.name) }],
    },
  ];
}

/** Two wells of a folder at one place. */
export const rule: FolderRule = {
  id: 'place-twice',
  severity: 'warning',
  title: 'Two wells of the folder at one place',
  why: 'A place copied from another log puts the well where it is not: on the map, in the records, and for whoever looks for it.',
  mend: 'Measure the place again, or put `?`. Wells of a nest and wells that replace each other are let pass where their use or status says so.',
  source: 'within 1 m (common practice, no source)',
  flagged: [
    { 'a.well': '[[place 44.5310 -78.2064 NAD83]]', 'b.well': '[[place 44.531000 -78.206400 NAD83]]\nuse domestic' },
    { 'a.well': '[[place utm 17N 722000 4934500]]', 'b.well': '[[place utm 17N 722000.5 4934500]]' },
  ],
  silent: [
    { 'a.well': 'place 44.5310 -78.2064', 'b.well': 'place 44.5312 -78.2064' },
    { 'a.well': 'place 44.5310 -78.2064\nstatus abandoned', 'b.well': 'place 44.5310 -78.2064\nstatus new' },
    { 'a.well': 'place 44.5310 -78.2064\nuse monitoring', 'b.well': 'place 44.5310 -78.2064\nuse monitoring' },
    { 'a.well': 'place ?', 'b.well': 'place ?' },
  ],
  check: ({ wells, near }) =>
    wells.flatMap((well) => {
      const other = near(well, onePlace).find((each) => !isSaid(well, each.well));
      return other ? reportOf(well, other) : [];
    }),
};
