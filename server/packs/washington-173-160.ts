import { clausesOf, gallonsToBag, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';
import type { RecordFact, Requirement } from './requirements.ts';

const says = clausesOf('Washington WAC 173-160', 'read', null);

/** The code names the fields (a) to (t) of its report; these are what any report of a well holds, not its words. */
const plain = clausesOf(
  'Washington WAC 173-160 asks for fields (a) to (t); this is plain content of the trade, not their text',
  'common practice',
  null,
);

const words: readonly (readonly [RecordFact, string])[] = [
  ['owner', 'the owner'],
  ['place', 'where the well is'],
  ['contractor', 'the contractor'],
  ['technician', 'who drilled it'],
  ['licence', 'the licence'],
  ['use', 'what the well is for'],
  ['began', 'when the work began'],
  ['finished', 'when the work ended'],
  ['hole', 'the depths and diameters of the hole'],
  ['strata', 'the ground'],
  ['casing', 'the casing'],
  ['seal', 'the seal'],
  ['water-level', 'the static level'],
  ['test', 'the yield'],
];

const record: Requirement[] = words.map(([fact, text]) => ({ fact, ...plain(text) }));

export const washington: Pack = {
  ...nothingMore,
  id: 'washington-173-160',
  title: 'Washington, WAC 173-160',
  notice,
  limits: {
    'stickup-least': limit(6 * inch, 'm', says('6 in')),
    'water-cement-most': limit(gallonsToBag(6), '1', says('6 US gal to a 94 lb bag')),
    'bentonite-share-most': limit(0.05, '1', says('5 % of bentonite')),
  },
  record,
  due: [{ what: 'record', days: 30, event: 'finished', assumed: true, ...says('30 days') }],
};
