import { clausesOf, foot, given, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('California Department of Water Resources, Bulletins 74-81 and 74-90', 'read', null);

export const california: Pack = {
  ...nothingMore,
  id: 'california-b74',
  title: 'California, Bulletins 74-81 and 74-90',
  notice,
  limits: {
    'oversize-least': limit(4 * inch, 'm', says('4 in wider than the casing'), 'over outside'),
    'chip-share-most': limit(0.2, '1', says('bentonite chips smaller than a fifth of the thickness of the annulus')),
  },
  cases: [
    given('seal-depth-least', { use: ['domestic'] }, limit(20 * foot, 'm', says('20 ft for a domestic well'))),
    given('seal-depth-least', { use: ['public-supply'] }, limit(50 * foot, 'm', says('50 ft for a community well'))),
  ],
};
