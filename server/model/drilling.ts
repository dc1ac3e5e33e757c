import { intervalAtStart, leadingDepth, leadingInterval } from './interval.ts';
import type { DrilledInterval, Drilling } from './log.ts';
import { depthIn, measureIn } from './measure.ts';
import { periodIn } from './moment.ts';
import { remembered, rememberedBelow } from './remembered.ts';
import { entryOf, type Source } from './source.ts';
import { wordIn, wordsIn } from './words.ts';

function readHead(source: Source): Drilling {
  return {
    ...entryOf(source),
    flush: wordsIn(source, 'flush'),
    airRate: measureIn(source, 'air-rate'),
    pressure: measureIn(source, 'pressure'),
    pipe: measureIn(source, 'pipe'),
    bit: measureIn(source, 'bit'),
    methods: wordsIn(source, 'method'),
    intervals: [],
    lost: [],
    samples: [],
  };
}

function readDrilled(source: Source): DrilledInterval {
  return {
    ...entryOf(source),
    interval: intervalAtStart(source),
    time: measureIn(source, 'time'),
    flush: wordsIn(source, 'flush'),
    flushRate: measureIn(source, 'flush-rate'),
    pressure: measureIn(source, 'pressure'),
    bit: measureIn(source, 'bit'),
    methods: wordsIn(source, 'method'),
    when: periodIn(source, 'when', 'from'),
  };
}

const readLost = (source: Source): Drilling['lost'][number] => ({
  ...entryOf(source),
  interval: leadingInterval(source),
  depth: leadingDepth(source),
  extent: wordIn(source, 'extent'),
});

const readSamples = (source: Source): Drilling['samples'][number] => ({
  ...entryOf(source),
  interval: intervalAtStart(source),
  every: depthIn(source, 'every'),
});

/** The head of `drilling`. */
export const drillingFact = remembered(readHead);
/** A line of `drilling`. */
export const drilledFact = rememberedBelow(readDrilled);
export const lostFact = rememberedBelow(readLost);
export const samplesFact = rememberedBelow(readSamples);
