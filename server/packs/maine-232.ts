import { clausesOf, given, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Maine 144 CMR Ch. 232', 'read', null);

/** Every way of drilling by a turning bit, the hammer with it. */
const rotary = [
  'air-rotary',
  'mud-rotary',
  'fluid-rotary',
  'rotary',
  'dual-rotary',
  'down-the-hole-hammer',
  'reverse-circulation',
  'dual-wall-reverse-circulation',
  'tricone',
];

export const maine: Pack = {
  ...nothingMore,
  id: 'maine-232',
  title: 'Maine, Chapter 232',
  notice,
  limits: { 'stickup-least': limit(8 * inch, 'm', says('8 in')) },
  cases: [
    given('wall-least', { casing: ['steel'] }, limit(0.25 * inch, 'm', says('0.250 in of steel'))),
    given(
      'shoe-beyond',
      { casing: ['steel'], method: rotary },
      limit(0, 'm', says('a shoe or a coupling on every rotary well with steel casing')),
    ),
  ],
};
