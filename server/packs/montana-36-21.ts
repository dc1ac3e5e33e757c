import { clausesOf, foot, given, hour, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Montana ARM 36.21', 'read', null);

/** The rule on sealing, as it stood in 2010 or later. */
const sealing = { address: 'https://rules.mt.gov/gateway/showrulefile.asp?RN=36.21.654' };

/** Ways of drilling in which the casing is not driven with the bit: the rule on sealing lets off driven casing. */
const notDriven = [
  'air-rotary',
  'mud-rotary',
  'fluid-rotary',
  'rotary',
  'down-the-hole-hammer',
  'reverse-circulation',
  'tricone',
];

export const montana: Pack = {
  ...nothingMore,
  id: 'montana-36-21',
  title: 'Montana, ARM 36.21',
  notice,
  limits: {
    'stickup-least': limit(18 * inch, 'm', says('18 in')),
    'set-time-cement': limit(
      72 * hour,
      's',
      says('72 h, unless additives let it set sooner', '36.21.654(1)(d)', sealing),
    ),
    'rock-seat-least': limit(3 * foot, 'm', says('3 ft into sound rock')),
  },
  cases: [
    given(
      'oversize-least',
      { rock: ['any'] },
      limit(3 * inch, 'm', says('3 in wider than the casing, in rock'), 'over outside'),
    ),
    given(
      'casing-depth-least',
      { rock: ['any'] },
      limit(
        25 * foot,
        'm',
        says('25 ft in rock', null, {
          uncertain:
            'read as the least depth of the foot of the casing; the rule on sealing asks 25 ft of seal, and another asks 25 ft of casing where no clay is met above the water',
        }),
      ),
    ),
    given(
      'seal-depth-least',
      { method: notDriven },
      limit(25 * foot, 'm', says('25 ft of seal', '36.21.654(3)', sealing)),
    ),
  ],
  due: [{ what: 'record', days: 60, event: 'finished', assumed: true, ...says('60 days') }],
};
