import { annulusVolume } from '../../calculations/geometry/annulus-volume.ts';
import type { WellLog } from '../../model/log.ts';
import type { Stretch } from '../intervals.ts';
import type { HoleWall } from './hole-walls.ts';
import { type Layer, layered, uncovered, within } from './layers.ts';
import { extentOf, nameOf, stringInDoubt } from './strings.ts';

/** What holds the water, or the plug, of a finished well along a stretch. */
export interface Wall {
  readonly diameter: number | null;
  readonly line: number;
  /** `hole`, or the string's name. */
  readonly name: string;
  readonly doubtful: boolean;
}

/** The open bore of a finished well from the top down: inside the narrowest string that was left, else the hole. */
export function openBore(log: WellLog, hole: readonly Layer<HoleWall>[]): Layer<Wall>[] {
  const left = log.strings.filter((string) => !string.temporary && string.pulled === null);
  const insides = left
    .flatMap((string): Layer<Wall>[] => {
      const extent = extentOf(string);
      const wall = {
        diameter: string.size.insideDiameter,
        line: string.line,
        name: nameOf(string),
        doubtful: stringInDoubt(string),
      };
      return extent ? [{ ...extent, of: wall }] : [];
    })
    .sort((a, b) => (a.of.diameter ?? 0) - (b.of.diameter ?? 0));
  const walls = hole.map(({ top, bottom, of }) => ({
    top,
    bottom,
    of: { diameter: of.diameter, line: of.line, name: 'hole', doubtful: of.doubtful },
  }));
  return layered<Wall>([...insides, ...walls]);
}

/** Volume of the bore along a stretch, m3; else the stretches whose diameter is missing. */
export type BoreVolume =
  | { readonly known: true; readonly volume: number; readonly walls: readonly Layer<Wall>[] }
  | { readonly known: false; readonly missing: readonly (Stretch & { readonly name: string })[] };

export function boreVolume(bore: readonly Layer<Wall>[], stretch: Stretch): BoreVolume {
  const walls = within(bore, stretch);
  const gaps = uncovered(bore, stretch).map((gap) => ({ ...gap, name: 'hole' }));
  const blank = walls.filter((wall) => wall.of.diameter === null).map((wall) => ({ ...wall, name: wall.of.name }));
  const missing = [...gaps, ...blank];
  if (missing.length > 0) return { known: false, missing };
  const volume = walls.reduce((sum, { top, bottom, of }) => sum + volumeOf(of, bottom - top), 0);
  return { known: true, volume, walls };
}

/** Volume inside a wall along a length, m3; none where its diameter is not known. */
export function volumeOf({ diameter }: Wall, length: number): number {
  const volume = annulusVolume(diameter ?? 0, 0, length);
  return volume.ok ? volume.value : 0;
}
