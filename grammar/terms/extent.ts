import { common, from, list } from './build.ts';

const said = from(common);

export const extent = list('extent', 'Extents', [
  said('total', 'tot|all|full|complete|completely', 'All of it.'),
  said('partial', 'part|some|partly|partially', 'A part of it.'),
  said('none', 'no|nil', 'Nothing of it.'),
  said('slight', 'sli|slightly|minor', 'A little of it.'),
  said('most', 'mostly|nearly all', 'More than half of it.'),
  said('intermittent', 'on and off', 'At times.'),
]);
