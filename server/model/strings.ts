import type { Line, Quantity, Value } from '../../grammar/tree.ts';
import { intervalAtStart, intervalsIn, leadingDepth } from './interval.ts';
import type { AtDepth, Cut, PipeString, Screen, Word } from './log.ts';
import { depthIn, depthOf, depthsIn, measureIn } from './measure.ts';
import { momentIn } from './moment.ts';
import { pipeSizeOf } from './pipe-size.ts';
import { type Reading, remembered, rememberedBelow } from './remembered.ts';
import { slotWidthOf } from './slot-width.ts';
import { entryOf, type Source, valuesIn } from './source.ts';
import { textIn, wordIn, wordsIn } from './words.ts';

const includes = (words: readonly Word[], id: string): boolean => words.some((word) => word.id === id);

const reader =
  (kind: PipeString['kind']) =>
  (source: Source): PipeString => {
    const material = wordIn(source, 'material');
    const states = wordsIn(source, 'state');
    return {
      ...entryOf(source),
      kind,
      number: 1,
      interval: intervalAtStart(source),
      size: pipeSizeOf(source, material),
      material,
      joint: wordIn(source, 'joint'),
      states,
      driven: includes(states, 'driven'),
      temporary: includes(states, 'temporary'),
      pulled: momentIn(source, 'pulled'),
      set: momentIn(source, 'set'),
      grade: textIn(source, 'grade'),
      perforated: intervalsIn(source, 'perforated'),
      shoe: null,
      centralizers: null,
      joints: null,
      screens: [],
      fills: [],
      packers: [],
      pitless: [],
      cuts: [],
    };
  };

/** The line that opens a string, by its keyword. */
export const stringFacts: Readonly<Record<PipeString['kind'], Reading<PipeString>>> = {
  casing: remembered(reader('casing')),
  liner: remembered(reader('liner')),
  screen: remembered(reader('screen')),
};

function readScreen(source: Source): Screen {
  const material = wordIn(source, 'material');
  return {
    ...entryOf(source),
    number: 1,
    interval: intervalAtStart(source),
    size: pipeSizeOf(source, material),
    material,
    slot: slotWidthOf(source),
    openArea: measureIn(source, 'open-area'),
    kinds: wordsIn(source, 'kind'),
  };
}

export const screenFact = rememberedBelow(readScreen);

/** A line that speaks of one depth and of what kind of thing is there. */
export const readAtDepth = (source: Source): AtDepth => ({
  ...entryOf(source),
  depth: leadingDepth(source),
  kinds: wordsIn(source, 'kind'),
});

export const atDepthFact = remembered(readAtDepth);

export const centralizersFact = remembered(
  (source: Source): NonNullable<PipeString['centralizers']> => ({
    ...entryOf(source),
    positions: depthsIn(source, 'positions'),
    every: depthIn(source, 'every'),
    inSet: measureIn(source, 'set'),
  }),
);

type Joints = NonNullable<PipeString['joints']>;
type Joint = Joints['lengths'][number];

/** `a x b` is count times length; a count that is not known leaves the length unknown. */
function jointOfProduct(source: Source, [count, length]: readonly [Quantity, Quantity]): Joint {
  const each = depthOf(source, length);
  return count.number === null
    ? { count: 1, length: { ...each, value: null, number: null } }
    : { count: count.number, length: each };
}

function jointOf(source: Source, value: Value): Joint | null {
  if (value.kind === 'product') return jointOfProduct(source, value.factors);
  return value.kind === 'quantity' ? { count: 1, length: depthOf(source, value) } : null;
}

export const jointsFact = remembered(
  (source: Source): Joints => ({
    ...entryOf(source),
    lengths: valuesIn(source, 'lengths').flatMap((value) => jointOf(source, value) ?? []),
  }),
);

function readCut(source: Source): Cut {
  const { top, bottom } = intervalAtStart(source);
  return { ...entryOf(source), from: top, to: bottom ?? leadingDepth(source), date: momentIn(source, 'date') };
}

/** A string cut off: `from` is its old top, `to` its new one. */
export const cutFact = remembered(readCut);

/** Two lists have the word: states of a string, and kinds of screen. */
const isTelescoped = ({ items }: Line): boolean =>
  items.some(({ value }) => value.kind === 'term' && value.term.id === 'telescoped');

/** The kind of string that a line opens: a screen does where it is telescoped, or there is none to hang on. */
export function opensString(line: Line, hasString: boolean): PipeString['kind'] | null {
  if (line.row === 'casing' || line.row === 'liner') return line.row;
  return line.row === 'screen' && (!hasString || isTelescoped(line)) ? 'screen' : null;
}
