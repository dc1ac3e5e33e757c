import { common, from, list } from './build.ts';

const wentworth = from('Wentworth scale');
const said = from(common);

export const grainSize = list('grain-size', 'Grain size', [
  wentworth('fine', 'fn|fne', 'Small for its kind; of sand, 0.125 to 0.25 mm.'),
  wentworth('medium', 'med|md|mdm|medum', 'Middling for its kind; of sand, 0.25 to 0.5 mm.'),
  wentworth('coarse', 'crs|cse|crse|cors|co|course|coars', 'Large for its kind; of sand, 0.5 to 1 mm.'),
  wentworth('very fine', 'vf|vfn|very fine grained|vfg', 'Very small for its kind; of sand, 0.063 to 0.125 mm.'),
  wentworth('very coarse', 'vcrs|vc|vcg|very coarse grained', 'Very large for its kind; of sand, 1 to 2 mm.'),
  said('fine grained', 'fg|fine grain|fn grd', 'With small grains.'),
  said('medium grained', 'medium grain', 'With middling grains.'),
  said('coarse grained', 'cg|coarse grain|large grain|large grained', 'With large grains.'),
  said('small', 'sml', 'Of small stones.'),
  said('large', 'lg|lrg|lge|big', 'Of large stones.'),
  said('finer', '', 'Smaller than in the interval above.'),
  said('coarser', '', 'Larger than in the interval above.'),
  said('slot', '', 'Of a size for the screen slot whose number stands before it.'),
  said('mealy', 'meal', 'Like meal.'),
  said('sugary', 'sucrosic|sucrossic|saccharoidal|sugar', 'With grains like sugar.'),
  said('granular', 'grainy', 'With plain grains.'),
]);
