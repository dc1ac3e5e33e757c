import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLines, parseText, reparse } from '../../grammar/index.ts';
import { buildLog } from '../../server/model/build.ts';
import { WellLog } from '../../server/model/log.ts';

const strata = ['strata', '0 - 2 clay', '- 5 sand', '- 9 gravel', '- 20 limestone', '- td shale', 'hole', '0 - 30 152'];

describe('a log after an edit', () => {
  it('keeps every entry that the edit did not touch', () => {
    const tree = parseLines(strata);
    const before = buildLog(tree).strata;
    const after = buildLog(reparse(tree, 2, 1, ['- 6 sand'])).strata;
    expect(after.map((entry, at) => entry === before[at])).toEqual([true, false, false, true, true]);
    expect(after[2]?.interval.top?.value).toBe(6);
    expect(after[2]?.interval.bottom).toBe(before[2]?.interval.bottom);
  });

  it('leaves the log of the text before as it was', () => {
    const tree = parseLines(strata);
    const before = buildLog(tree);
    const copy = structuredClone(before);
    buildLog(reparse(tree, 7, 1, ['0 - 40 152']));
    buildLog(reparse(tree, 0, 0, ['units ft in']));
    expect(before).toEqual(copy);
  });

  it('is again what it was once the edit is undone', () => {
    const tree = parseLines(strata);
    const edited = reparse(tree, 7, 1, ['0 - 40 152']);
    expect(buildLog(edited).strata[4]?.interval.bottom?.value).toBe(40);
    expect(buildLog(reparse(edited, 7, 1, ['0 - 30 152'])).strata[4]?.interval.bottom?.value).toBe(30);
  });
});

const lines = [
  ...strata,
  '',
  'units ft in gal-us',
  'units m mm',
  'casing +0.5 - 20 steel 168.3 x 6.4',
  'casing +0.2 - 12 steel 6 sch 40, temporary',
  'liner - td pvc 4 sdr 26',
  'screen 30 - 36 stainless telescoped, slot 20',
  'cut +0.5 to +0.2 2026-05-07',
  'grout 0 - 4 neat cement, 9 x 40 kg bags',
  'seal - 9 bentonite chips, ? m3',
  'joints 2 x 6.1 ?',
  'water 12 fresh, 8 gpm',
  'level 5.65 toc 2026-05-08',
  'test pump 40 L/min, toc, 2026-05-08 08:00',
  '1 6.2',
  '08:05 6.4',
  'rate 60 L/min',
  'recovery',
  'observed OW-1, r 30, dd',
  'drilling air 21 m3/min',
  'lost 2 - 3 total',
  'abandonment 2026-06-01',
  '- td neat cement',
  'place utm 17T 712345 4944210',
  'owner ?',
];

const text = fc.array(fc.constantFrom(...lines), { maxLength: 24 });
const edit = fc.record({
  first: fc.nat(24),
  removed: fc.nat(3),
  inserted: fc.array(fc.constantFrom(...lines), { maxLength: 3 }),
});

describe('a log built after edits', () => {
  it('equals one built from the whole text', () => {
    fc.assert(
      fc.property(text, fc.array(edit, { maxLength: 4 }), (before, edits) => {
        let texts = before;
        let tree = parseLines(before);
        buildLog(tree);
        for (const { first, removed, inserted } of edits) {
          const at = Math.min(first, texts.length);
          tree = reparse(tree, at, Math.min(removed, texts.length - at), inserted);
          texts = [...texts.slice(0, at), ...inserted, ...texts.slice(at + removed)];
          expect(buildLog(tree)).toEqual(buildLog(parseLines(texts)));
        }
      }),
      { numRuns: 120 },
    );
  });

  it('has the shape that the schema gives, whatever the text', () => {
    const anything = fc.array(fc.oneof(fc.constantFrom(...lines), fc.string({ unit: 'binary' })), { maxLength: 20 });
    fc.assert(
      fc.property(anything, (all) => {
        const log = buildLog(parseText(all.join('\n')));
        expect(WellLog.parse(log)).toEqual(log);
      }),
      { numRuns: 120 },
    );
  });
});
