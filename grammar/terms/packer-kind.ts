import { common, from, list } from './build.ts';

const said = from(common);

export const packerKind = list('packer-kind', 'Packers', [
  said('k packer', 'k|figure k|k type|fig k', 'A rubber-lipped collar that seals a telescoped screen to its casing.'),
  said('rubber', 'rubber packer|neoprene|neoprene packer|rubber seal', 'A seal of rubber.'),
  said('lead', 'lead packer|lead swaged|swaged lead', 'A lead ring that is swaged out against the casing.'),
  said('shale', 'shale packer|shale trap|formation packer', 'A seal against the rock below the casing.'),
  said('inflatable', 'inflatable packer|inflated', 'A rubber sleeve that is blown up in place.'),
  said('mechanical', 'mechanical packer|compression', 'A rubber sleeve that is squeezed out in place.'),
  said('swelling', 'hydrophilic', 'A seal that swells as it takes up water.'),
  said('burlap', 'burlap packer|hemp|canvas', 'A wrapping of cloth, in old wells.'),
  said('cement basket', 'basket', 'A petalled collar that carries grout.'),
]);
