import { common, from, list } from './build.ts';

const said = from(common);

export const flush = list('flush', 'Flushes', [
  said('air', 'dry air|compressed air', 'Air alone lifts the cuttings.'),
  said(
    'air+water',
    'air and water|air water|air with water|water injection|air & water|air + water',
    'Air with water injected.',
  ),
  said('mist', 'air mist|misting', 'Air with a fine spray of water.'),
  said('foam', 'soap|air foam|stiff foam|foaming agent', 'Air with water and a foaming agent.'),
  said('mud', 'drilling mud|drilling fluid', 'A thickened fluid that lifts the cuttings and holds the wall.'),
  said('bentonite mud', 'gel|bentonite fluid|gel mud', 'Mud thickened with bentonite.'),
  said('polymer mud', 'polymer|polymer fluid', 'Mud thickened with a polymer.'),
  said('salt mud', '', 'Mud mixed with salt water.'),
  said('water', 'clear water|fresh water|wtr', 'Water alone.'),
  said('no flush', 'none|dry|nothing', 'Nothing is circulated.'),
]);
