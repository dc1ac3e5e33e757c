import { leadingDepth, leadingInterval } from './interval.ts';
import type { Water, WaterFound, WaterLevel, Word } from './log.ts';
import { measureIn, measureOfValue } from './measure.ts';
import { momentIn } from './moment.ts';
import { remembered, rememberedBelow } from './remembered.ts';
import { entryOf, type Source, spanOf } from './source.ts';
import { wordsIn } from './words.ts';

function readFound(source: Source): WaterFound {
  const total = measureIn(source, 'total');
  return {
    ...entryOf(source),
    depth: leadingDepth(source),
    interval: leadingInterval(source),
    kinds: wordsIn(source, 'kind'),
    rate: total ?? measureIn(source, 'rate'),
    rateMeans: total ? 'total' : 'adds',
    date: momentIn(source, 'date'),
  };
}

const readLevel = (source: Source): WaterLevel => ({
  ...entryOf(source),
  level: leadingDepth(source),
  date: momentIn(source, 'date'),
});

type Quality = Water['quality'][number];

/** A parameter is named by its label; a value without one says nothing. */
function parametersOf(source: Source): Quality['parameters'] {
  return source.line.items.flatMap(({ slot, label, value }) => {
    const term = label?.term;
    if (slot !== 'parameter' || !label || !term) return [];
    const measure = measureOfValue(source, value, 'ratio');
    const parameter: Word = {
      list: 'quality',
      id: term.id,
      name: term.name,
      written: label.written,
      span: spanOf(source, label),
    };
    return measure ? [{ parameter, value: measure }] : [];
  });
}

const readQuality = (source: Source): Quality => ({
  ...entryOf(source),
  depth: leadingDepth(source),
  parameters: parametersOf(source),
  kinds: wordsIn(source, 'kind'),
  date: momentIn(source, 'date'),
});

const readFlowing = (source: Source): Water['flowing'][number] => ({
  ...entryOf(source),
  rate: measureIn(source, 'rate'),
  shutIn: measureIn(source, 'shut-in'),
  control: wordsIn(source, 'control'),
  date: momentIn(source, 'date'),
});

/** A line of `water`. */
export const foundFact = rememberedBelow(readFound);
export const levelFact = remembered(readLevel);
export const qualityFact = remembered(readQuality);
export const flowingFact = remembered(readFlowing);
