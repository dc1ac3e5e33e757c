import { clausesOf, given, hour, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('ministry bulletin on R.R.O. 1990, Reg. 903', 'read', 'April 2011');

/** To be confirmed against the consolidated text before anyone relies on it. */
const remembered = clausesOf(
  'R.R.O. 1990, Reg. 903, from memory: to be confirmed against the consolidated text',
  'remembered',
  null,
);

export const ontario: Pack = {
  ...nothingMore,
  id: 'ontario-903',
  title: 'Ontario, Regulation 903',
  notice: `${notice} Most of these figures are remembered: confirm each before you rely on it.`,
  limits: {
    'well-depth-least': limit(6, 'm', says('6 m')),
    'well-depth-never-under': limit(3, 'm', says('never under 3 m')),
    'casing-depth-least': limit(6, 'm', remembered('6 m')),
    'stickup-least': limit(0.4, 'm', remembered('40 cm')),
    'oversize-least': limit(
      0.076,
      'm',
      remembered('7.6 cm wider than the outside diameter of the casing'),
      'over outside',
    ),
    'montmorillonite-least': limit(0.5, '1', says('bentonite of over 50 % sodium montmorillonite')),
    'solids-least': limit(0.2, '1', remembered('20 % solids in a bentonite slurry')),
    'set-time-cement': limit(12 * hour, 's', remembered('12 h')),
    'chlorine-least': limit(0.05, 'kg/m3', remembered('50 mg/L')),
    'chlorine-most': limit(0.2, 'kg/m3', remembered('200 mg/L')),
    'chlorine-contact-least': limit(12 * hour, 's', remembered('12 h')),
    'test-time-least': limit(hour, 's', remembered('1 h')),
  },
  cases: [
    given('wall-least', { casing: ['steel'] }, limit(0.00478, 'm', remembered('4.78 mm of steel'))),
    given(
      'oversize-least',
      { centralizers: true },
      limit(
        0.051,
        'm',
        remembered('5.1 cm wider than the outside diameter of the casing with centralizers', null, {
          uncertain: 'whether centralizers allow the smaller figure is not certain',
        }),
        'over outside',
      ),
    ),
  ],
  due: [
    { what: 'copy for the owner', days: 14, event: 'finished', assumed: true, ...remembered('14 days') },
    { what: 'record', days: 30, event: 'finished', assumed: true, ...remembered('30 days') },
  ],
  testReadings: {
    minutes: [1, 2, 3, 4, 5, 10, 15, 20, 25, 30, 40, 50, 60],
    recovery: true,
    ...remembered('readings at 1, 2, 3, 4, 5, 10, 15, 20, 25, 30, 40, 50 and 60 min, and of the recovery'),
  },
};
