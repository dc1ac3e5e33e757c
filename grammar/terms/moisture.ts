import { common, from, list } from './build.ts';

const d2488 = from('ASTM D2488');
const said = from(common);

export const moisture = list('moisture', 'Moisture', [
  d2488('dry', 'dr|dri', 'Without moisture to the touch.'),
  d2488('moist', 'mst|mois', 'Damp, with no water to be seen.'),
  d2488('wet', '', 'With free water to be seen.'),
  said('damp', 'dmp', 'Slightly moist.'),
  said('saturated', 'sat|satd', 'With all pores full of water.'),
  said('water bearing', 'wb|wtr brg|water bear|waterbearing|wtr bearing|w b', 'Giving water to the hole.'),
  said('water', 'wtr|encountered water|watery|wat', 'Water met here.'),
  said('salt water', 'salty water', 'Salt water met here.'),
  said('fresh water', '', 'Fresh water met here.'),
  said('making water', '', 'Giving water as it is drilled.'),
  said('seep', 'seepage|seeping|seeps', 'A little water comes in.'),
  said('permeable', 'perm', 'Letting water through.'),
  said('impermeable', 'imperm|impervious', 'Not letting water through.'),
  said('artesian', '', 'With water under pressure.'),
]);
