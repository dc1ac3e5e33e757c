import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyse, type LineEdit, type Settings, type Snapshot, update } from '../../server/analysis/index.ts';

const settings: Settings = { packs: [], severities: {}, today: '2026-06-01' };

const known = (snapshot: Snapshot) => ({
  lines: snapshot.lines,
  log: snapshot.log,
  record: snapshot.record,
  findings: snapshot.findings.map(({ fixes, ...finding }) => ({ ...finding, fixes: fixes?.() })),
});

const lines = [
  'units ft in gal-us',
  'hole',
  '0 - 7.2 254',
  '- 61 152',
  'strata',
  '0 - 3 clay ; a remark',
  '- 61 lst gry frac',
  'casing +0.45 - 7.2 steel 168.3 x 6.4 welded',
  'shoe 7.2',
  'grout 0 - 7.2 neat cement, 0.29 m3, 9 x 40 kg bags',
  'water 38.5 fresh, 25 L/min',
  'level 5.65 toc 2026-05-07',
  'test pump 40 L/min, 2026-05-07 08:00',
  '1 6.14',
  'recovery',
  '0 - 12,5 sand',
  'cassing 0 - 3',
  '# allow interval-gap: seen',
  '',
];

const text = fc.array(fc.constantFrom(...lines), { maxLength: 20 });
const edit: fc.Arbitrary<LineEdit> = fc.record({
  first: fc.nat(20),
  removed: fc.nat(3),
  inserted: fc.array(fc.constantFrom(...lines), { maxLength: 3 }),
});

describe('a version after edits', () => {
  it('is what the analysis of the whole text gives', () => {
    fc.assert(
      fc.property(text, fc.array(edit, { minLength: 1, maxLength: 4 }), (before, edits) => {
        let snapshot = analyse(before, settings, 1);
        for (const { first, removed, inserted } of edits) {
          const at = Math.min(first, snapshot.lines.length);
          const least = Math.min(removed, snapshot.lines.length - at);
          snapshot = update(snapshot, { first: at, removed: least, inserted }, settings, snapshot.version + 1);
          expect(known(snapshot)).toEqual(known(analyse(snapshot.lines, settings, 1)));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('leaves the version before as it was', () => {
    const before = analyse(['hole', '0 - 30 152', 'strata', '0 - 31 clay'], settings, 1);
    const after = update(before, { first: 1, removed: 1, inserted: ['0 - 31 152'] }, settings, 2);
    expect([after.version, after.log.totalDepth]).toEqual([2, 31]);
    expect([before.version, before.log.totalDepth]).toEqual([1, 30]);
    expect(before.lines[1]).toBe('0 - 30 152');
  });

  it('has no finding of a fault of the program, whatever the text', () => {
    const anything = fc.array(fc.oneof(fc.constantFrom(...lines), fc.string({ unit: 'binary' })), { maxLength: 20 });
    fc.assert(
      fc.property(anything, (all) => {
        const { findings } = analyse(all, settings, 1);
        expect(findings.filter(({ rule }) => rule === 'internal-error')).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
