import { clausesOf, nothingMore, notice } from './figures.ts';
import type { Pack } from './limits.ts';

/** Days within which a state wants the record of a well, by its postal code. */
export const deadlines: readonly { readonly code: string; readonly state: string; readonly days: number }[] = [
  { code: 'al', state: 'Alabama', days: 30 },
  { code: 'ar', state: 'Arkansas', days: 90 },
  { code: 'la', state: 'Louisiana', days: 30 },
  { code: 'ma', state: 'Massachusetts', days: 30 },
  { code: 'mi', state: 'Michigan', days: 60 },
  { code: 'mt', state: 'Montana', days: 60 },
  { code: 'nd', state: 'North Dakota', days: 30 },
  { code: 'nm', state: 'New Mexico', days: 20 },
  { code: 'nv', state: 'Nevada', days: 30 },
  { code: 'ok', state: 'Oklahoma', days: 60 },
  { code: 'tn', state: 'Tennessee', days: 60 },
  { code: 'va', state: 'Virginia', days: 30 },
  { code: 'wv', state: 'West Virginia', days: 30 },
];

const says = clausesOf("the US EPA's compilation of state codes", 'read', null);

/** States whose deadline stands in a pack of their own. */
const withPack = new Set(['mi', 'mt']);

/** Packs that hold nothing but a deadline, such as `record-nm`. */
export const deadlinePacks: readonly Pack[] = deadlines
  .filter(({ code }) => !withPack.has(code))
  .map(({ code, state, days }) => ({
    ...nothingMore,
    id: `record-${code}`,
    title: `${state}: when the record is due`,
    notice,
    limits: {},
    due: [{ what: 'record', days, event: 'finished', assumed: true, ...says(`${days} days`) }],
  }));
