import { intervalAtStart } from './interval.ts';
import type { Abandonment, Development, Disinfection, Hydrofracture, Pump } from './log.ts';
import { depthIn, measureIn } from './measure.ts';
import { momentIn } from './moment.ts';
import { remembered } from './remembered.ts';
import { entryOf, type Source } from './source.ts';
import { textIn, wordIn, wordsIn } from './words.ts';

const readDisinfection = (source: Source): Disinfection => ({
  ...entryOf(source),
  strength: measureIn(source, 'strength'),
  contact: measureIn(source, 'contact'),
  date: momentIn(source, 'date'),
  product: wordIn(source, 'product'),
  productStrength: measureIn(source, 'product-strength'),
  amount: measureIn(source, 'amount'),
});

const readDevelopment = (source: Source): Development => ({
  ...entryOf(source),
  methods: wordsIn(source, 'method'),
  time: measureIn(source, 'time'),
  rate: measureIn(source, 'rate'),
  sand: measureIn(source, 'sand'),
  results: wordsIn(source, 'result'),
  date: momentIn(source, 'date'),
});

const readHydrofracture = (source: Source): Hydrofracture => ({
  ...entryOf(source),
  interval: intervalAtStart(source),
  pressure: measureIn(source, 'pressure'),
  before: measureIn(source, 'before'),
  after: measureIn(source, 'after'),
  date: momentIn(source, 'date'),
});

const readPump = (source: Source): Pump => ({
  ...entryOf(source),
  kinds: wordsIn(source, 'kind'),
  power: measureIn(source, 'power'),
  set: depthIn(source, 'set'),
  rate: measureIn(source, 'rate'),
  date: momentIn(source, 'date'),
});

const readAbandonment = (source: Source): Abandonment => ({
  ...entryOf(source),
  number: 1,
  date: momentIn(source, 'date'),
  reason: textIn(source, 'reason'),
  fills: [],
});

export const disinfectionFact = remembered(readDisinfection);
export const developmentFact = remembered(readDevelopment);
export const hydrofractureFact = remembered(readHydrofracture);
export const pumpFact = remembered(readPump);
/** The head of `abandonment`. */
export const abandonmentFact = remembered(readAbandonment);
