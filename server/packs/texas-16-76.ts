import { clausesOf, inch, limit, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

const says = clausesOf('Texas 16 TAC 76', 'read', null);

export const texas: Pack = {
  ...nothingMore,
  id: 'texas-16-76',
  title: 'Texas, 16 TAC 76',
  notice,
  limits: { 'stickup-least': limit(12 * inch, 'm', says('12 in')) },
  record: [{ fact: 'place-in-degrees', ...says('latitude and longitude') }],
  due: [
    { what: 'record', days: 60, event: 'finished', assumed: true, ...says('60 days') },
    { what: 'plugging report', days: 30, event: 'abandoned', assumed: true, ...says('30 days') },
  ],
};
