import { clausesOf, given, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const said = clausesOf('Quebec Q-2, r. 6, since replaced', 'read', null);

/** Rock under less than 5 m of loose ground. */
const shallowRock = { rock: ['any' as const], topOfRockAbove: 5 };

export const quebec: Pack = {
  ...nothingMore,
  id: 'quebec-q2-r6',
  title: 'Quebec, Q-2, r. 6 (replaced)',
  notice: `${notice} This text has been replaced: it tells how older wells were judged, and no well passes by it.`,
  state: 'replaced',
  limits: {
    'rock-seat-least': limit(0.6, 'm', said('60 cm into rock')),
    'native-seal-most': limit(0, 'm', said('no cuttings')),
    'test-time-least': limit(1800, 's', said('30 min')),
  },
  cases: [
    given('shoe-beyond', { rock: ['any'] }, limit(0, 'm', said('a drive shoe on wells in rock'))),
    given(
      'oversize-least',
      shallowRock,
      limit(0.1, 'm', said('10 cm over the nominal diameter where rock is shallower than 5 m'), 'over nominal'),
    ),
    given('casing-depth-least', shallowRock, limit(5, 'm', said('5 m where rock is shallower than 5 m'))),
  ],
};
