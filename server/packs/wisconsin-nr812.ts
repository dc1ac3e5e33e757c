import { clausesOf, foot, given, hour, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Wisconsin NR 812', 'read', '2020/22');

export const wisconsin: Pack = {
  ...nothingMore,
  id: 'wisconsin-nr812',
  title: 'Wisconsin, NR 812',
  notice,
  limits: {
    'oversize-least': limit(4 * inch, 'm', says('4 in over the nominal diameter'), 'over nominal'),
    'grout-allowance': limit(0.15, '1', says('15 % more than the annulus', 'NR 812.20(3)(e)1')),
    'set-time-cement': limit(12 * hour, 's', says('12 h')),
    'centralizer-set-least': limit(3, '1', says('guides in sets of 3')),
    'chlorine-least': limit(0.1, 'kg/m3', says('100 mg/L')),
    'chlorine-contact-least': limit(2 * hour, 's', says('2 h')),
    'shoe-beyond': limit(80 * foot, 'm', says('a shoe where the upper hole passes 80 ft')),
  },
  cases: [
    given('casing-depth-least', { rock: ['sandstone'] }, limit(30 * foot, 'm', says('30 ft in sandstone'))),
    given('casing-depth-least', { rock: ['crystalline'] }, limit(40 * foot, 'm', says('40 ft in crystalline rock'))),
    given('casing-depth-least', { rock: ['limestone'] }, limit(40 * foot, 'm', says('40 ft in limestone or dolomite'))),
    given(
      'casing-depth-least',
      { rock: ['limestone'], topOfRockAbove: 20 * foot },
      limit(60 * foot, 'm', says('60 ft in limestone or dolomite whose top is above 20 ft')),
    ),
    given('casing-size-least', { rock: ['any'] }, limit(6 * inch, 'm', says('6 in for a well in bedrock'))),
    given(
      'oversize-least',
      { joint: ['welded'], placement: ['pressure'] },
      limit(
        2 * inch,
        'm',
        says('2 in over the nominal diameter where the casing is welded and grouted under pressure'),
        'over nominal',
      ),
    ),
    given(
      'gravity-depth-most',
      { placement: ['gravity-tremie'] },
      limit(100 * foot, 'm', says('a tremie filled by gravity only under 100 ft')),
    ),
  ],
};
