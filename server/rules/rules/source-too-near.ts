import * as l10n from '@vscode/l10n';
import type { WellLog } from '../../model/log.ts';
import type { Distance, Pack } from '../../packs/limits.ts';
import { saidBy } from '../asked.ts';
import { examplePack } from '../example-pack.ts';
import { lengthText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

interface Asked {
  readonly distance: Distance;
  readonly pack: string;
  readonly key: string;
}

const askedOf = (source: string, packs: readonly Pack[]): Asked[] =>
  packs.flatMap(({ id, distances }) =>
    distances.flatMap((distance, index) =>
      distance.from.includes(source) ? [{ distance, pack: id, key: `${id}/distances/${index}` }] : [],
    ),
  );

function reportsOf({ source, distance }: WellLog['distances'][number], log: WellLog, packs: readonly Pack[]): Report[] {
  const metres = distance.value;
  const [most] = askedOf(source.id, packs).sort((a, b) => b.distance.least - a.distance.least);
  if (!most || metres === null || metres >= most.distance.least - 1e-3) return [];
  return [
    {
      span: distance.span,
      doubts: [distance],
      message: l10n.t(
        'the {0} is {1} away; {2}; correct the distance, or ask the authority',
        source.name,
        lengthText(metres, log.units),
        saidBy(most.distance, most.pack),
      ),
      limit: most.key,
    },
  ];
}

/** A source of contamination nearer than the pack allows. */
export const rule: Rule = {
  id: 'source-too-near',
  severity: 'warning',
  title: 'A source of contamination nearer than the pack allows',
  why: 'Ground cleans what seeps through it, given distance and time.',
  mend: 'Correct the distance, or ask the authority before the well is used.',
  source: 'the pack’s distances',
  crew: 'Was the distance measured, and how?',
  flagged: [
    {
      text: 'rules fenmarrow-county\ndistance septic [[22]], barn 46',
      fixed: 'rules fenmarrow-county\ndistance septic 22?, barn 46',
      own: examplePack,
    },
  ],
  silent: [
    { text: 'rules fenmarrow-county\ndistance septic 31, road 4', own: examplePack },
    { text: 'distance septic 4' },
  ],
  check: ({ log, limits }) => log.distances.flatMap((each) => reportsOf(each, log, limits.packs ?? [])),
};
