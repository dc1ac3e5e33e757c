import type { Limit, Pack } from './limits.ts';

const practice = (value: number, unit: string, text: string): Limit => ({
  value,
  unit,
  text,
  source: 'common practice, no source',
  known: 'common practice',
  date: null,
});

const read = (value: number, unit: string, text: string, source: string, date: string | null): Limit => ({
  value,
  unit,
  text,
  source,
  known: 'read',
  date,
});

const remembered = (value: number, unit: string, text: string, source: string): Limit => ({
  value,
  unit,
  text,
  source,
  known: 'remembered',
  date: null,
});

/** Good practice that most codes share. Shares and ratios have unit `1`; every other value is SI. */
export const general: Pack = {
  id: 'general',
  title: 'General practice',
  notice: 'A help for checking, not the law: read the current text of your code and ask the authority.',
  limits: {
    'grout-allowance': read(0.15, '1', '15 % more than the annulus', 'Wisconsin NR 812.20(3)(e)1', '2020/22'),
    'grout-surplus': practice(2, '1', 'twice the annulus'),
    'bags-volume-tolerance': practice(0.1, '1', '10 % either way'),
    'water-cement-most': read(
      0.533,
      '1',
      '6 US gal to a 94 lb bag',
      'Michigan R 325 (2023), Minnesota 4725 (2024) and Washington WAC 173-160',
      null,
    ),
    'oversize-least': read(
      0.0508,
      'm',
      '2 in wider than the casing',
      'Oregon OAR 690-210 and Wisconsin NR 812 for grout placed under pressure; Michigan R 325 (2023)',
      null,
    ),
    'set-time-cement': read(86_400, 's', '24 h', 'Minnesota 4725 (2024) and Michigan R 325 (2023)', null),
    'stickup-least': read(0.3048, 'm', '12 in', 'Texas 16 TAC 76, Arizona, and US Army TM 5-813-1', null),
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
    'pack-above-screen-least': remembered(0.6, 'm', '0.6 m', 'water-well handbooks, from memory'),
    'pack-above-screen-most': remembered(1.5, 'm', '1.5 m', 'water-well handbooks, from memory'),
    'entrance-velocity-most': read(
      0.03,
      'm/s',
      '0.03 m/s',
      'Davis, Water and Wastewater Engineering (2010), p. 4-38',
      '2010',
    ),
  },
};
