import { type Row, table } from '../../../grammar/table.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { WellLog } from '../../model/log.ts';

/** The order in which most wells are written down. */
const usualOrder = ['hole', 'strata', 'casing', 'water', 'test', 'disinfection', 'pump', 'cap'];

/** What a log of some kind has beside, or first. */
const kinds: readonly { readonly is: (log: WellLog) => boolean; readonly order: readonly string[] }[] = [
  { is: isSealed, order: ['hole', 'strata', 'casing', 'abandonment'] },
  { is: isMonitoring, order: ['hole', 'strata', 'casing', 'screen', 'development', 'water', 'cap'] },
  { is: isDry, order: ['hole', 'strata', 'abandonment', 'casing'] },
  { is: isDrilledWithAir, order: ['hole', 'strata', 'casing', 'drilling', ...usualOrder.slice(3)] },
];

const idOf = (word: WellLog['status'] | WellLog['uses'][number]): string => {
  if (word === null) return '';
  return 'id' in word ? word.id : word.text.toLowerCase();
};

function isSealed({ status }: WellLog): boolean {
  return /abandon|decommission|sealed/.test(idOf(status));
}

function isDry({ status }: WellLog): boolean {
  return idOf(status).startsWith('dry');
}

function isMonitoring({ uses }: WellLog): boolean {
  return uses.some((use) => /monitor|observation/.test(idOf(use)));
}

function isDrilledWithAir({ hole }: WellLog): boolean {
  return hole.some(({ methods }) => methods.some(({ id }) => /air|hammer/.test(id)));
}

const mainRows = table.filter(({ where }) => where === 'section' || where === 'line');

/** What a log of this kind still lacks, the next thing first; then the rest of what may stand by itself. */
export function missingSections({ log }: Snapshot, given: ReadonlySet<string>): readonly Row[] {
  const order = kinds.find(({ is }) => is(log))?.order ?? usualOrder;
  const ranked = order.flatMap((id) => table.filter((row) => row.id === id));
  return [...new Set([...ranked, ...mainRows])].filter(({ id }) => !given.has(id));
}
