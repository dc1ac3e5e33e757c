import { clausesOf, foot, gallonsToBag, given, hour, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Minnesota Rules 4725', 'read', '2024');

const chapter = 'https://regulations.justia.com/states/minnesota/agency-144/chapter-4725';
const grouting = {
  address: `${chapter}/well-and-boring-general-construction-and-use-requirements/part-4725-3050`,
};
const limestone = { address: `${chapter}/water-supply-wells/part-4725-4250` };

/** What the part on limestone speaks of: casing that goes more than ten feet into it. */
const inLimestone = { rock: ['limestone' as const], intoRockOver: 10 * foot };

export const minnesota: Pack = {
  ...nothingMore,
  id: 'minnesota-4725',
  title: 'Minnesota, Rules 4725',
  notice,
  limits: {
    'water-cement-most': limit(gallonsToBag(6), '1', says('6 US gal to a 94 lb bag')),
    'set-time-cement': limit(24 * hour, 's', says('24 h', '4725.3050 subp. 2a', grouting)),
    'tremie-foot-most': limit(
      10 * foot,
      'm',
      says('the tremie pipe within 10 ft of the foot', '4725.3050 subp. 2 D', grouting),
    ),
    'bentonite-in-rock-most': limit(
      0,
      'm',
      says('bentonite grout only in loose ground', '4725.3050 subp. 1 C', grouting),
    ),
  },
  cases: [
    given(
      'set-time-cement',
      { fill: ['rapid-setting-cement'] },
      limit(12 * hour, 's', says('12 h for rapid cement', '4725.3050 subp. 2a', grouting)),
    ),
    given(
      'gravity-depth-most',
      { placement: ['gravity'] },
      limit(10 * foot, 'm', says('dumping only under 10 ft', '4725.3050 subp. 2 F', grouting)),
    ),
    given(
      'oversize-least',
      inLimestone,
      limit(
        3 * inch,
        'm',
        says(
          '3.0 in over the outside or coupling diameter, more than 10 ft into limestone',
          '4725.4250 subp. 3',
          limestone,
        ),
        'over coupling',
      ),
    ),
    given(
      'oversize-least',
      { ...inLimestone, deeperThan: 100 * foot, boreWiderThan: 12 * inch },
      limit(
        3.5 * inch,
        'm',
        says('3.5 in, in limestone, casing deeper than 100 ft and wider than 12 in inside', '4725.4250 subp. 3', {
          ...limestone,
          uncertain: 'the part gives an inside diameter; pipe whose wall is not logged is not judged by it',
        }),
        'over coupling',
      ),
    ),
  ],
};
