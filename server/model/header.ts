import { intervalAtStart, intervalsIn, leadingDepth } from './interval.ts';
import type { Existing, GroundLevel, Shift, TextField, WellLog, Word } from './log.ts';
import { depthOfValue, measureIn, numberIn } from './measure.ts';
import { momentIn, periodIn } from './moment.ts';
import { remembered, rememberedBelow } from './remembered.ts';
import { entryOf, type Source, spanOf } from './source.ts';
import { textIn, textOf, wordIn, wordOrText, wordsIn } from './words.ts';

/** The header keywords whose whole line is text. */
export const textKeywords: ReadonlySet<string> = new Set([
  'well',
  'owner',
  'site',
  'location',
  'contractor',
  'technician',
  'licence',
  'tag',
  'permit',
  'replaces',
  'nested',
]);

const readText = (source: Source): TextField | null =>
  source.line.items.map((item) => textOf(source, item.value)).find((text) => text !== null) ?? null;

const readTexts = (source: Source): TextField[] =>
  source.line.items.flatMap((item) => textOf(source, item.value) ?? []);

const readTerms = (source: Source): (Word | TextField)[] =>
  source.line.items.flatMap((item) => wordOrText(source, item.value) ?? []);

const readGround = (source: Source): GroundLevel => ({
  ...entryOf(source),
  elevation: measureIn(source, 'elevation'),
  datum: wordIn(source, 'datum'),
  accuracy: measureIn(source, 'accuracy'),
});

const readShift = (source: Source): Shift => ({
  ...entryOf(source),
  hours: periodIn(source, 'hours', 'from'),
  drilled: intervalsIn(source, 'drilled')[0] ?? null,
  crew: textIn(source, 'crew'),
  weather: wordsIn(source, 'weather'),
  temperature: measureIn(source, 'temperature'),
});

const readExisting = (source: Source): Existing => ({
  ...entryOf(source),
  interval: intervalAtStart(source),
  diameter: measureIn(source, 'diameter'),
  year: numberIn(source, 'year'),
  record: textIn(source, 'record'),
});

const readPhoto = (source: Source): WellLog['photos'][number] => ({
  ...entryOf(source),
  depth: leadingDepth(source),
  file: textIn(source, 'file'),
});

/** Each source named on a `distance` line, with how far it is. */
function readDistances(source: Source): WellLog['distances'] {
  return source.line.items.flatMap(({ slot, label, value }) => {
    const term = label?.term;
    const distance = slot === 'distance' ? depthOfValue(source, value) : null;
    if (!label || !term || !distance) return [];
    const { written } = label;
    const named = { list: 'contaminant-source', id: term.id, name: term.name, written, span: spanOf(source, label) };
    return [{ ...entryOf(source), source: named, distance }];
  });
}

export const textFact = remembered(readText);
export const textsFact = remembered(readTexts);
export const termsFact = remembered(readTerms);
export const dateFact = remembered((source) => momentIn(source, 'date'));
export const groundFact = remembered(readGround);
export const shiftFact = remembered(readShift);
export const existingFact = rememberedBelow(readExisting);
export const photoFact = remembered(readPhoto);
export const distancesFact = remembered(readDistances);
