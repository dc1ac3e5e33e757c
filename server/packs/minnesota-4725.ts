import { clausesOf, foot, gallonsToBag, given, hour, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Minnesota Rules 4725', 'read', '2024');

export const minnesota: Pack = {
  ...nothingMore,
  id: 'minnesota-4725',
  title: 'Minnesota, Rules 4725',
  notice,
  limits: {
    'water-cement-most': limit(gallonsToBag(6), '1', says('6 US gal to a 94 lb bag')),
    'set-time-cement': limit(24 * hour, 's', says('24 h')),
    'tremie-foot-most': limit(10 * foot, 'm', says('the tremie pipe within 10 ft of the foot')),
    'bentonite-in-rock-most': limit(0, 'm', says('bentonite grout only in loose ground')),
  },
  cases: [
    given('set-time-cement', { fill: ['rapid-setting-cement'] }, limit(12 * hour, 's', says('12 h for rapid cement'))),
    given('gravity-depth-most', { placement: ['gravity'] }, limit(10 * foot, 'm', says('dumping only under 10 ft'))),
    given(
      'oversize-least',
      { rock: ['limestone'] },
      limit(3 * inch, 'm', says('3.0 in over the outside or coupling diameter, in limestone'), 'over coupling'),
    ),
    given(
      'oversize-least',
      { rock: ['limestone'], deeperThan: 100 * foot, widerThan: 12 * inch },
      limit(3.5 * inch, 'm', says('3.5 in, in limestone over 100 ft and 12 in'), 'over coupling'),
    ),
  ],
};
