import { common, from, list } from './build.ts';

const said = from(common);

export const weathering = list('weathering', 'Weathering', [
  said('weathered', 'wthrd|weath|wthd|wea|wx|weatherd', 'Altered by air and water.'),
  said('highly weathered', '', 'Altered through most of the rock.'),
  said('slightly weathered', '', 'Altered along breaks only.'),
  said('unweathered', 'unwthrd', 'Not altered.'),
  said('fresh', 'frsh', 'Not altered.'),
  said('rotten', 'rott', 'Altered until it falls apart.'),
  said('decomposed', 'decomp', 'Altered to soil.'),
  said('oxidised', 'oxidized|ox|oxid|oxdzd', 'Rusted by air.'),
  said('unoxidised', 'unoxidized|unox', 'Not rusted.'),
  said('leached', 'lchd', 'With its lime washed out.'),
  said('unleached', '', 'With its lime still in it.'),
  said('altered', 'alt', 'Changed from what it was.'),
  said('stained', 'stnd|iron stained|iron stain', 'Coloured by something that water brought.'),
  said('reduced', '', 'Short of air, mostly grey or blue.'),
]);
