import type { Clause } from './clause.ts';
import { clausesOf, gallonsToBag, limit, nothingMore, notice } from './figures.ts';
import type { Limit, Pack } from './limits.ts';

const practised = clausesOf('common practice, no source', 'common practice', null);

const practice = (value: number, unit: string, text: string): Limit => limit(value, unit, practised(text));

const readIn = (source: string, text: string, date: string | null = null): Clause =>
  clausesOf(source, 'read', date)(text);

const handbook = clausesOf('water-well handbooks, from memory', 'remembered', null);

const mostWater = readIn(
  'Michigan R 325 (2023), Minnesota 4725 (2024) and Washington WAC 173-160',
  '6 US gal to a 94 lb bag',
);

const passesAllRound = readIn(
  'Oregon OAR 690-210 and Wisconsin NR 812 for grout placed under pressure; Michigan R 325 (2023)',
  '2 in wider than the casing',
);

/** Good practice that most codes share. Shares and ratios have unit `1`; every other value is SI. */
export const general: Pack = {
  ...nothingMore,
  id: 'general',
  title: 'General practice',
  notice,
  limits: {
    'grout-allowance': limit(0.15, '1', readIn('Wisconsin NR 812.20(3)(e)1', '15 % more than the annulus', '2020/22')),
    'grout-surplus': practice(2, '1', 'twice the annulus'),
    'bags-volume-tolerance': practice(0.1, '1', '10 % either way'),
    'water-cement-most': limit(gallonsToBag(6), '1', mostWater),
    'bentonite-water-each': limit(
      gallonsToBag(0.6) / 0.01,
      '1',
      readIn('Michigan R 325.1603a', '0.6 US gal more to a 94 lb bag for each 1 % of bentonite', '2023'),
    ),
    'oversize-least': limit(0.0508, 'm', passesAllRound, 'over outside'),
    'set-time-cement': limit(86_400, 's', readIn('Minnesota 4725 (2024) and Michigan R 325 (2023)', '24 h')),
    'stickup-least': limit(0.3048, 'm', readIn('Texas 16 TAC 76, Arizona, and US Army TM 5-813-1', '12 in')),
    'centralizer-gap-most': practice(12, 'm', '12 m'),
    'centralizer-shoe-most': practice(3, 'm', '3 m'),
    'centralizer-string-least': practice(12, 'm', '12 m'),
    'uphole-velocity-least': practice(15.24, 'm/s', '3,000 ft/min'),
    'uphole-velocity-most': practice(35.56, 'm/s', '7,000 ft/min'),
    'air-rating-loss': practice(0.15, '1', '15 % below the rating'),
    'joints-difference-most': practice(0.15, 'm', '0.15 m'),
    'shoe-foot-difference-most': practice(0.1, 'm', '0.1 m'),
    'foot-difference-most': practice(0.3, 'm', '0.3 m'),
    'rate-break-ratio-least': practice(2, '1', 'twofold'),
    'rate-break-rods-least': practice(2, '1', 'two rods'),
    'test-wrong-way-level-least': practice(0.05, 'm', '0.05 m'),
    'test-wrong-way-share-least': practice(0.02, '1', '2 % of the drawdown'),
    'static-first-reading-most': practice(0.3, 'm', '0.3 m'),
    'drawdown-volume-ratio-most': practice(1.1, '1', '1.1 times what was pumped'),
    'grout-settled-most': practice(0.3, 'm', '0.3 m'),
    'pack-above-screen-least': limit(0.6, 'm', handbook('0.6 m')),
    'pack-above-screen-most': limit(1.5, 'm', handbook('1.5 m')),
    'pack-kept-back-least': limit(0.9, '1', handbook('at least 90 % of the pack')),
    'pack-grain-ratio-least': limit(4, '1', handbook('4 times the grain of the formation')),
    'pack-grain-ratio-most': limit(6, '1', handbook('6 times the grain of the formation')),
    'entrance-velocity-most': limit(
      0.03,
      'm/s',
      readIn('Davis, Water and Wastewater Engineering (2010), p. 4-38', '0.03 m/s', '2010'),
    ),
  },
};
