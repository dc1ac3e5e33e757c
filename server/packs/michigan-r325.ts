import { clausesOf, gallonsToBag, given, hour, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Michigan R 325', 'read', '2023');

export const michigan: Pack = {
  ...nothingMore,
  id: 'michigan-r325',
  title: 'Michigan, R 325',
  notice,
  limits: {
    'water-cement-most': limit(gallonsToBag(6), '1', says('6 US gal to a 94 lb bag', 'R 325.1603a')),
    'bentonite-water-each': limit(
      gallonsToBag(0.6) / 0.01,
      '1',
      says('0.6 US gal more to a 94 lb bag for each 1 % of bentonite', 'R 325.1603a'),
    ),
    'bentonite-share-most': limit(0.05, '1', says('5 % of bentonite', 'R 325.1603a')),
    'oversize-least': limit(2 * inch, 'm', says('2 in wider than the casing'), 'over outside'),
    'set-time-cement': limit(24 * hour, 's', says('24 h')),
  },
  cases: [
    given(
      'oversize-least',
      { placement: ['tremie', 'gravity-tremie'] },
      limit(2.875 * inch, 'm', says('2 7/8 in wider than the casing, with a grout pipe outside it'), 'over outside'),
    ),
    given('set-time-cement', { bentonite: true }, limit(48 * hour, 's', says('48 h with bentonite'))),
  ],
  due: [{ what: 'record', days: 60, event: 'finished', assumed: true, ...says('60 days') }],
};
