import { clausesOf, foot, given, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Montana ARM 36.21', 'read', null);

export const montana: Pack = {
  ...nothingMore,
  id: 'montana-36-21',
  title: 'Montana, ARM 36.21',
  notice,
  limits: {
    'stickup-least': limit(18 * inch, 'm', says('18 in')),
    'rock-seat-least': limit(3 * foot, 'm', says('3 ft into sound rock')),
  },
  cases: [
    given(
      'oversize-least',
      { rock: ['any'] },
      limit(3 * inch, 'm', says('3 in wider than the casing, in rock'), 'over outside'),
    ),
    given('casing-depth-least', { rock: ['any'] }, limit(25 * foot, 'm', says('25 ft in rock'))),
  ],
  due: [{ what: 'record', days: 60, event: 'finished', assumed: true, ...says('60 days') }],
};
