import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import type { Text } from '../../../grammar/tree.ts';
import { unitBySpelling } from '../../../grammar/units.ts';
import { overwrite } from '../fixes.ts';
import { didYouMean, orList, shortened } from '../messages.ts';
import { nearNames } from '../near-names.ts';
import type { Report, Rule } from '../rule.ts';

const places = { depth: ['m', 'ft'], diameter: ['mm', 'cm', 'in'], gallon: ['gal-us', 'gal-imp'] } as const;
type Place = keyof typeof places;
const allowed: readonly string[] = Object.values(places).flat();

const idOf = (word: string): string => unitBySpelling(word)?.id ?? word.toLowerCase();

const placeNames: readonly Place[] = ['depth', 'diameter', 'gallon'];

const placeOf = (id: string): Place | undefined =>
  placeNames.find((name) => (places[name] as readonly string[]).includes(id));

const gallonWord = new Set(['gal', 'gpm', 'gph']);

function meantBy(id: string): readonly string[] {
  return gallonWord.has(id) ? places.gallon : nearNames(id, allowed);
}

function unknownText(word: string, meant: readonly string[]): string {
  return meant.length > 0
    ? `${l10n.t('"{0}" is no unit that a file can count in, and is left out', word)}${didYouMean(meant)}`
    : l10n.t(
        '"{0}" is no unit that a file can count in, and is left out; a units line takes {1}',
        word,
        orList(allowed),
      );
}

function unknown(word: Text, line: number): Report {
  const meant = meantBy(idOf(word.text));
  return {
    span: spanAt(line, word),
    message: unknownText(shortened(word.text), meant),
    fixes: () => meant.map((unit) => overwrite(spanAt(line, word), unit)),
  };
}

const secondWords: Readonly<Record<Place, (word: string) => string>> = {
  depth: (word) =>
    l10n.t(
      '"{0}" is a second unit for depth; the first counts: write the unit of depths, then that of diameters, then which gallon',
      word,
    ),
  diameter: (word) =>
    l10n.t(
      '"{0}" is a second unit for diameter; the first counts: write the unit of depths, then that of diameters, then which gallon',
      word,
    ),
  gallon: (word) =>
    l10n.t(
      '"{0}" is a second unit for gallon; the first counts: write the unit of depths, then that of diameters, then which gallon',
      word,
    ),
};

const second = (word: Text, line: number, place: Place): Report => ({
  span: spanAt(line, word),
  message: secondWords[place](word.text),
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
