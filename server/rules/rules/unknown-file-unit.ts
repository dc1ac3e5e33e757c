import { spanAt } from '../../../grammar/span.ts';
import type { Text } from '../../../grammar/tree.ts';
import { unitBySpelling } from '../../../grammar/units.ts';
import { overwrite } from '../fixes.ts';
import { didYouMean, orList, shortened } from '../messages.ts';
import { nearNames } from '../near-names.ts';
import type { Report, Rule } from '../rule.ts';

const places = { depth: ['m', 'ft'], diameter: ['mm', 'cm', 'in'], gallon: ['gal-us', 'gal-imp'] } as const;
const allowed: readonly string[] = Object.values(places).flat();

const idOf = (word: string): string => unitBySpelling(word)?.id ?? word.toLowerCase();

const placeOf = (id: string): string | undefined =>
  Object.entries(places).find(([, ids]) => (ids as readonly string[]).includes(id))?.[0];

const gallonWord = new Set(['gal', 'gpm', 'gph']);

function meantBy(id: string): readonly string[] {
  return gallonWord.has(id) ? places.gallon : nearNames(id, allowed);
}

function unknown(word: Text, line: number): Report {
  const meant = meantBy(idOf(word.text));
  const others = meant.length > 0 ? didYouMean(meant) : `; a units line takes ${orList(allowed)}`;
  return {
    span: spanAt(line, word),
    message: `"${shortened(word.text)}" is no unit that a file can count in, and is left out${others}`,
    fixes: () => meant.map((unit) => overwrite(spanAt(line, word), unit)),
  };
}

const second = (word: Text, line: number, place: string): Report => ({
  span: spanAt(line, word),
  message: `"${word.text}" is a second unit for ${place}; the first counts: write the unit of depths, then that of diameters, then which gallon`,
});

function* reportsOf(words: readonly Text[], line: number): Generator<Report> {
  const seen = new Set<string>();
  for (const word of words) {
    const place = placeOf(idOf(word.text));
    if (place === undefined) yield unknown(word, line);
    else if (seen.has(place)) yield second(word, line, place);
    if (place !== undefined) seen.add(place);
  }
}

/** A word of the `units` line that is no unit, or a second one of its kind. */
export const rule: Rule = {
  id: 'unknown-file-unit',
  severity: 'error',
  title: 'A units line with a unit that a file cannot count in',
  why: 'Every bare number of the log is read in the units of this line.',
  mend: 'Write the unit of depths (`m`, `ft`), that of diameters (`mm`, `cm`, `in`), and which gallon where there is any (`gal-us`, `gal-imp`).',
  source: 'the notation',
  flagged: [
    { text: 'units m [[mmm]]', fixed: 'units m mm' },
    { text: 'units ft in [[gal]]' },
    { text: 'units m [[ft]]' },
  ],
  silent: [{ text: 'units m mm' }, { text: 'units ft in gal-us' }, { text: 'units feet inches' }],
  check: function* ({ tree }) {
    const line = tree.lines.findIndex(({ row }) => row === 'units');
    const words = tree.lines[line]?.items.flatMap(({ value }) => (value.kind === 'text' ? [value] : [])) ?? [];
    yield* reportsOf(words, line);
  },
};
