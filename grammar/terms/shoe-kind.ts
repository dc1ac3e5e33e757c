import { common, from, list } from './build.ts';

const said = from(common);

export const shoeKind = list('shoe-kind', 'Casing shoes', [
  said('drive shoe', 'ds|driveshoe|drive', 'A hardened ring at the foot of driven casing.'),
  said('float shoe', 'float', 'A shoe with a valve that keeps fluid from coming up the casing.'),
  said('guide shoe', 'guide', 'A rounded foot that leads the casing down the hole.'),
  said(
    'ring shoe',
    'ring bit|shoe bit|casing bit|casing shoe',
    'A cutting ring at the foot of turned or hammered casing.',
  ),
  said('cement shoe', 'cementing shoe|grout shoe', 'A shoe through which grout is pumped.'),
  said(
    'shale trap',
    'cement basket|formation packer|shale packer',
    'A collar near the foot that keeps grout from falling past it.',
  ),
  said('coupling', 'collar', 'A plain coupling at the foot in place of a shoe.'),
  said('no shoe', 'none|without shoe', 'The foot is bare.'),
]);
