import { common, from, list } from './build.ts';

const d2488 = from('ASTM D2488');
const said = from(common);

export const sorting = list('sorting', 'Sorting and cleanness', [
  d2488('well graded', 'wg|well grdd|wl grdd', 'With a wide spread of grain sizes.'),
  d2488(
    'poorly graded',
    'pg|prly grdd|poorly grdd|uniformly graded',
    'Mostly of one grain size, or with sizes missing.',
  ),
  d2488('gap graded', '', 'With a middle range of grain sizes missing.'),
  said('well sorted', 'ws|wl srtd|sorted|srtd', 'Of about one grain size.'),
  said('poorly sorted', 'ps|unsorted|prly srtd', 'Of many grain sizes.'),
  said('uniform', 'unif', 'Alike throughout.'),
  said('clean', 'cln', 'With hardly any fines.'),
  said('dirty', 'drty', 'With fines that colour the water.'),
  said('good', 'gd', 'Of good quality for its use, in the words of the drill floor.'),
  said('graded', 'grdd', 'With a spread of grain sizes.'),
]);
