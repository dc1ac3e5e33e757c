import { from, list } from './build.ts';

const d2488 = from('ASTM D2488');

export const grainShape = list('grain-shape', 'Grain shape', [
  d2488('angular', 'ang|anglr', 'With sharp edges and rough faces.'),
  d2488('subangular', 'subang|sub angular|sbang', 'Like angular, with edges a little rounded.'),
  d2488('subrounded', 'subrnd|sub rounded|sbrnd', 'With flat faces and well rounded edges.'),
  d2488('rounded', 'rnd|rndd|round', 'With smooth curved faces and no edges.'),
  d2488('well rounded', 'wrnd', 'Rounded all over.'),
  d2488('flat', '', 'Wide against its thickness.'),
  d2488('elongated', 'elong', 'Long against its width.'),
]);
