import { distanceBetween } from '../calculations/place/distance.ts';
import type { FolderWell, Neighbour } from '../rules/folder/well.ts';

/** Degrees of latitude that a cell of the grid spans: about 1.1 km. */
const cell = 0.01;
const metresOfDegree = 111_000;

type Place = NonNullable<FolderWell['place']>;

const row = (latitude: number): number => Math.floor(latitude / cell);
const column = (longitude: number): number => Math.floor(longitude / cell);

/** Cells on either side that a reach may touch; towards the poles a degree of longitude is shorter. */
function cellsAround({ latitude }: Place, metres: number): { rows: number; columns: number } {
  const rows = Math.ceil(metres / metresOfDegree / cell);
  return { rows, columns: Math.ceil(rows / Math.max(0.05, Math.cos((latitude * Math.PI) / 180))) };
}

function gridOf(wells: readonly FolderWell[]): ReadonlyMap<string, FolderWell[]> {
  const grid = new Map<string, FolderWell[]>();
  for (const well of wells) {
    if (well.place === null) continue;
    const key = `${row(well.place.latitude)} ${column(well.place.longitude)}`;
    const held = grid.get(key);
    if (held) held.push(well);
    else grid.set(key, [well]);
  }
  return grid;
}

/** Finds the wells near a well among many, without looking at each. */
export function neighboursAmong(wells: readonly FolderWell[]): (well: FolderWell, metres: number) => Neighbour[] {
  let grid: ReadonlyMap<string, FolderWell[]> | null = null;
  return (well, metres) => {
    const { place } = well;
    if (place === null) return [];
    grid ??= gridOf(wells);
    const { rows, columns } = cellsAround(place, metres);
    const found: Neighbour[] = [];
    for (let down = -rows; down <= rows; down++)
      for (let across = -columns; across <= columns; across++)
        for (const other of grid.get(`${row(place.latitude) + down} ${column(place.longitude) + across}`) ?? []) {
          const apart = other === well || other.place === null ? null : distanceBetween(place, other.place);
          if (apart !== null && apart <= metres) found.push({ well: other, metres: apart });
        }
    return found.sort((a, b) => a.metres - b.metres);
  };
}
