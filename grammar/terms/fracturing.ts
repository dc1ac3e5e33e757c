import { common, from, list } from './build.ts';

const said = from(common);

export const fracturing = list('fracturing', 'Fracturing', [
  said('fractured', 'frac|frctd|fracd|fract|fx|fxd|frct', 'With natural breaks.'),
  said('highly fractured', 'very fractured', 'With many natural breaks.'),
  said('slightly fractured', '', 'With few natural breaks.'),
  said('unfractured', '', 'With no natural breaks.'),
  said('fractures', 'fracture|fracs|fractures present', 'Natural breaks met here.'),
  said('broken', 'brkn|brk|bkn|broke|broken up', 'In pieces.'),
  said('jointed', 'jtd', 'With breaks in regular sets.'),
  said('fissured', 'fiss|fissures|fissure', 'With open cracks.'),
  said('cracked', 'cracks|crack', 'With cracks.'),
  said('shattered', '', 'Broken to small pieces.'),
  said('sheared', 'shear', 'Broken along a plane that moved.'),
  said('faulted', 'fault|fault zone', 'Cut by a break that moved.'),
  said('slickensided', 'slickensides', 'With polished planes of movement.'),
  said('massive', 'mass|msv', 'Without breaks or bedding.'),
  said('vuggy', 'vug|vugs|vugular', 'With small natural hollows.'),
  said('porous', 'por|porus', 'With open pores.'),
  said('honeycombed', 'honeycomb|honey combed', 'Full of small holes.'),
  said('karstic', 'karst', 'With hollows that water dissolved.'),
  said('crushed', 'crshd', 'Broken small.'),
  said('blocky', 'blky', 'Breaking into blocks.'),
]);
