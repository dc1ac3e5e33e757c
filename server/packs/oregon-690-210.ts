import { clausesOf, foot, given, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Oregon OAR 690-210', 'read', null);

/** Wells into rock under loose ground. */
const intoRock = { address: 'https://oregon.public.law/rules/oar_690-210-0150' };

/** Ways in which cement comes up the annulus from the foot, with no pipe in it. */
const fromTheBottom = ['pressure', 'inside-string', 'displacement', 'braden-head'];

export const oregon: Pack = {
  ...nothingMore,
  id: 'oregon-690-210',
  title: 'Oregon, OAR 690-210',
  notice,
  limits: {
    'oversize-least': limit(
      4 * inch,
      'm',
      says('4 in over the nominal diameter', '690-210-0150(1)(a)(A)', intoRock),
      'over nominal',
    ),
    'rock-seat-least': limit(5 * foot, 'm', says('5 ft into solid rock', '690-210-0150(1)(a)(A)', intoRock)),
    'seal-depth-least': limit(
      18 * foot,
      'm',
      says('5 ft into clay or rock below 13 ft, so to 18 ft', '690-210-0150(1)(a)(C)', {
        ...intoRock,
        uncertain: 'the five feet are read as counted from 13 ft down, so that no seal may end above 18 ft',
      }),
    ),
  },
  cases: [
    given(
      'oversize-least',
      { placement: fromTheBottom },
      limit(
        2 * inch,
        'm',
        says(
          '2 in over the nominal diameter where cement is placed from the bottom',
          '690-210-0150(1)(a)(F)',
          intoRock,
        ),
        'over nominal',
      ),
    ),
  ],
};
