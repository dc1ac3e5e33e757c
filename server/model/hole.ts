import { intervalAtStart, intervalFromGround } from './interval.ts';
import type { HoleEntry } from './log.ts';
import { measureIn } from './measure.ts';
import { momentIn } from './moment.ts';
import { remembered, rememberedBelow } from './remembered.ts';
import { entryOf, type Source } from './source.ts';
import { wordsIn } from './words.ts';

function readHole(source: Source): HoleEntry {
  return {
    ...entryOf(source),
    interval: intervalFromGround(source),
    diameter: measureIn(source, 'diameter'),
    methods: wordsIn(source, 'method'),
    reamedFrom: measureIn(source, 'reamed-from'),
    date: momentIn(source, 'date'),
  };
}

/** How deep a line of `hole` goes. */
export const bottomFact = remembered((source) => ({ bottom: intervalAtStart(source).bottom }));

/** A line of `hole`. */
export const holeFact = rememberedBelow(readHole);
