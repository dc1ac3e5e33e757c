import { clausesOf, foot, given, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Oregon OAR 690-210', 'read', null);

/** Ways in which cement comes up the annulus from the foot, with no pipe in it. */
const fromTheBottom = ['pressure', 'inside-string', 'displacement', 'braden-head'];

export const oregon: Pack = {
  ...nothingMore,
  id: 'oregon-690-210',
  title: 'Oregon, OAR 690-210',
  notice,
  limits: {
    'oversize-least': limit(4 * inch, 'm', says('4 in over the nominal diameter'), 'over nominal'),
    'rock-seat-least': limit(5 * foot, 'm', says('5 ft into solid rock')),
    'seal-depth-least': limit(13 * foot, 'm', says('13 ft')),
  },
  cases: [
    given(
      'oversize-least',
      { placement: fromTheBottom },
      limit(
        2 * inch,
        'm',
        says('2 in over the nominal diameter where cement is placed from the bottom'),
        'over nominal',
      ),
    ),
    given('seal-depth-least', { clay: false }, limit(18 * foot, 'm', says('18 ft without clay'))),
  ],
};
