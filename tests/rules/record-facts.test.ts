import { describe, expect, test } from 'vitest';
import { nothingMore } from '../../server/packs/figures.ts';
import type { Pack } from '../../server/packs/limits.ts';
import { type RecordFact, recordFacts } from '../../server/packs/requirements.ts';
import { factsToHold } from '../../server/rules/record-facts.ts';
import { findingsIn, withEdits } from './checked.ts';

const asking = (fact: RecordFact): Pack => ({
  ...nothingMore,
  id: 'fen',
  title: 'Fen',
  notice: 'A help, not the law.',
  limits: {},
  record: [
    {
      fact,
      text: fact,
      section: null,
      source: 'made up',
      known: 'common practice',
      date: null,
      uncertain: null,
      address: null,
    },
  ],
});

const lacking = (fact: RecordFact, text: string) =>
  findingsIn(text, {}, undefined, [asking(fact)]).filter(({ rule }) => rule === 'record-incomplete');

/** A log that is done and holds nothing, with a string for what hangs on one. */
const bare = 'rules fen\nreported 2026-05-20';
const withString = `${bare}\ncasing +0.45 - 12 steel 168.3 x 6.4\nwater\n  38 fresh`;

const textFor = (fact: RecordFact): string => (fact === 'seal' ? withString : bare);

describe.each(recordFacts.map((fact) => [fact] as const))('%s', (fact) => {
  test('is missed once, where it would be written', () => {
    const found = lacking(fact, textFor(fact));
    expect(found.map(({ span, limit }) => [span.line, limit])).toEqual([[fact === 'seal' ? 2 : 1, 'fen/record/0']]);
  });

  test('is not missed while the work goes on, nor where no pack asks', () => {
    expect(lacking(fact, 'rules fen\nwell KH-04')).toEqual([]);
    expect(findingsIn(bare).filter(({ rule }) => rule === 'record-incomplete')).toEqual([]);
  });

  test('the line that a fix writes answers it, is read, and asks the crew', () => {
    const text = textFor(fact);
    const [fix] = lacking(fact, text)[0]?.fixes?.() ?? [];
    expect(fix === undefined).toBe(factsToHold[fact].lines === null);
    if (!fix) return;
    const mended = withEdits(text, fix.edits);
    expect(lacking(fact, mended)).toEqual([]);
    expect(mended).toContain('?');
    const worse = findingsIn(mended, {}, undefined, [asking(fact)]).filter(({ severity }) => severity === 'error');
    expect(worse.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
  });
});

describe('what answers a fact', () => {
  test.each([
    ['place', 'location lot 4, con 2'],
    ['place', 'place utm 17 718709 4948006'],
    ['place-in-degrees', 'place 44.61 -78.3'],
    ['use', 'use domestic'],
    ['use', 'use ski slope'],
    ['water-level', 'water\n  flowing 35 L/min'],
    ['pump', 'pump submersible'],
    ['seal', 'casing +0.45 - 12 steel 168.3 x 6.4 driven'],
    ['seal', 'casing 0 - 9 steel 273 temporary'],
    ['test', 'test blow 75 L/min'],
  ] as const)('%s: %j', (fact, line) => {
    expect(lacking(fact, `${bare}\n${line}`)).toEqual([]);
  });

  test.each([
    ['place-in-degrees', 'place utm 17 718709 4948006'],
    ['place-in-degrees', 'location lot 4, con 2'],
    ['water-level', 'water\n  38 fresh'],
    ['seal', 'casing +0.45 - 12 steel 168.3 x 6.4\n  pack 0 - 12 gravel'],
  ] as const)('%s is still missed beside %j', (fact, line) => {
    expect(lacking(fact, `${bare}\n${line}`)).toHaveLength(1);
  });
});
