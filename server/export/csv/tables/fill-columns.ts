import type { Fill } from '../../../model/log.ts';
import { type Column, depth, interval, measure, period, remarkAndLine, text, word } from '../column.ts';

/** Columns of what was placed: grout, seal, pack, plug. */
export const fillColumns: readonly Column<Fill>[] = [
  text('kind', (row) => row.kind),
  ...interval<Fill>((row) => row.interval),
  ...depth<Fill>((row) => row.depth),
  word('material', (row) => row.material),
  ...measure<Fill>('volume', 'm3', (row) => row.volume),
  text('bags', (row) => row.bags?.count?.written),
  ...measure<Fill>('bag_mass', 'kg', (row) => row.bags?.massEach),
  ...measure<Fill>('mass', 'kg', (row) => row.mass),
  ...measure<Fill>('water_cement_ratio', '1', (row) => row.waterCement),
  ...measure<Fill>('water', 'L', (row) => row.water),
  ...measure<Fill>('density', 'kg_per_m3', (row) => row.density),
  ...measure<Fill>('solids', '1', (row) => row.solids),
  ...measure<Fill>('bentonite', '1', (row) => row.bentonite),
  ...measure<Fill>('montmorillonite', '1', (row) => row.montmorillonite),
  word('placement', (row) => row.placement),
  ...depth<Fill>((row) => row.pipeFoot, 'pipe_foot'),
  ...measure<Fill>('pressure', 'kPa', (row) => row.pressure),
  ...period<Fill>('placed', (row) => row.placed),
  ...depth<Fill>((row) => row.plugInside, 'plug_inside'),
  ...measure<Fill>('returned', 'm3', (row) => row.returned),
  ...measure<Fill>('top_up', 'm3', (row) => row.topUp),
  ...depth<Fill>((row) => row.settled, 'settled'),
  text('grading', (row) => (row.grading ? `${row.grading.coarse}/${row.grading.fine}` : null)),
  ...measure<Fill>('grain', 'mm', (row) => row.grain),
  ...remarkAndLine<Fill>(),
];
