import { describe, expect, it } from 'vitest';
import { WellLog } from '../../server/model/log.ts';
import { rockWell as text } from '../record/rock-well.ts';
import { endsOf, logOf } from './log-of.ts';

const inAHurry = ['strata', '0-.3 ts dk brn', '-3.8 slty cl brn stf sm gvl', '-6.1 sd&gvl gry wet'];

describe('a whole log', () => {
  const log = logOf(text);

  it('has the shape that the schema gives', () => {
    expect(WellLog.parse(log)).toEqual(log);
  });

  it('has its header', () => {
    expect(log.header.well?.text).toBe('KH-04');
    expect(log.header.owner?.text).toBe('Kestrel Hollow Water Co-op');
    expect(log.packs.map((pack) => pack.text)).toEqual(['general']);
    expect(log.uses).toMatchObject([{ list: 'use', id: 'domestic' }]);
    expect(log.place).toMatchObject({ latitude: 44.6128, longitude: -78.3042, utm: null });
    expect(log.ground?.elevation).toMatchObject({ value: 287.4, unit: 'm', unitWritten: true, decimals: 1 });
    expect([log.began?.date, log.finished?.date, log.reported]).toEqual(['2026-05-04', '2026-05-06', null]);
  });

  it('has the hole and its bottom', () => {
    expect(endsOf(log.hole)).toEqual([
      [0, 7.2],
      [7.2, 61],
    ]);
    expect(log.hole.map((entry) => entry.diameter?.value)).toEqual([0.254, 0.152]);
    expect(log.hole.map((entry) => entry.methods.map((word) => word.name))).toEqual([
      ['air rotary'],
      ['down-the-hole hammer'],
    ]);
    expect(log.totalDepth).toBe(61);
  });

  it('has the strata', () => {
    expect(endsOf(log.strata)).toEqual([
      [0, 0.3],
      [0.3, 3.8],
      [3.8, 6.1],
      [6.1, 44.2],
      [44.2, 61],
    ]);
    expect(log.strata[1]).toMatchObject({
      line: 17,
      description: 'silty clay, brown, stiff, some gravel',
      principal: { id: 'clay' },
      ground: { rock: false },
      materials: [
        { id: 'silt', amount: 'adjective' },
        { id: 'clay', amount: null },
        { id: 'gravel', amount: 'some' },
      ],
      colours: ['brown'],
      qualities: [{ list: 'consistency', id: 'stiff', written: 'stiff' }],
    });
    expect(log.strata[3]?.remark?.text).toBe('soft seam at 22');
    expect(log.strata[3]?.ground).toMatchObject({ class: 'carbonate', rock: true });
  });

  it('is the same strata when typed in a hurry', () => {
    const descriptions = logOf(...inAHurry).strata.map((stratum) => stratum.description);
    expect(descriptions).toEqual(log.strata.slice(0, 3).map((stratum) => stratum.description));
  });

  it('has the casing with what hangs on it', () => {
    const [casing] = log.strings;
    expect(log.strings).toHaveLength(1);
    expect(casing).toMatchObject({
      kind: 'casing',
      number: 1,
      interval: { top: { value: -0.45, written: '+0.45' }, bottom: { value: 7.2 } },
      material: { id: 'steel' },
      joint: { id: 'welded' },
      driven: false,
      size: { outsideDiameter: 0.1683, wallThickness: 0.0064, basis: 'written' },
      shoe: { depth: { value: 7.2 } },
    });
    // Geometry: 168.3 less two walls of 6.4 is 155.5 mm.
    expect(casing?.size.insideDiameter).toBeCloseTo(0.1555, 12);
    expect(casing?.centralizers?.positions.map((depth) => depth.value)).toEqual([1.5, 4, 6.7]);
    expect(casing?.joints?.lengths.map(({ count, length }) => [count, length.value])).toEqual([
      [1, 6.1],
      [1, 1.55],
    ]);
  });

  it('has the grout', () => {
    expect(log.strings[0]?.fills).toMatchObject([
      {
        kind: 'grout',
        number: 1,
        interval: { top: { value: 0 }, bottom: { value: 7.2 } },
        material: { id: 'neat-cement' },
        fillClass: 'cement',
        volume: { value: 0.29, unit: 'm3' },
        bags: { count: { value: 9, unit: 'bags' }, massEach: { value: 40, unit: 'kg' } },
        waterCement: { value: 0.5 },
        placement: { id: 'tremie' },
        placed: { from: null, to: { date: '2026-05-05', time: '09:30', valid: true } },
      },
    ]);
  });

  it('has the drilling', () => {
    const [head] = log.drilling;
    expect(head?.airRate?.value).toBeCloseTo(21 / 60, 12);
    expect(head).toMatchObject({ pressure: { value: 2_400_000 }, pipe: { value: 0.114 } });
    expect(endsOf(head?.intervals ?? [])).toEqual([
      [7.2, 13.2],
      [13.2, 19.2],
      [19.2, 25.2],
    ]);
    expect(head?.intervals.map((interval) => interval.time?.value)).toEqual([1080, 1260, 540]);
    expect(head?.intervals[1]?.flush.map((word) => word.id)).toEqual(['air', 'water']);
    expect(head?.intervals[1]?.flushRate?.value).toBeCloseTo(0.012 / 60, 12);
  });

  it('has the water', () => {
    expect(log.water.found).toMatchObject([
      { depth: { value: 38.5 }, rateMeans: 'adds', kinds: [{ id: 'fresh' }] },
      { depth: { value: 54 }, rateMeans: 'adds' },
    ]);
    expect(log.water.levels).toMatchObject([{ level: { value: 5.2, datum: 'bgs' }, date: { date: '2026-05-07' } }]);
  });

  it('has the test in its phases', () => {
    const [test] = log.tests;
    expect(test).toMatchObject({ method: { id: 'pump' }, intake: { value: 50 }, start: { from: { time: '08:00' } } });
    expect(test?.phases.map(({ kind, stop }) => [kind, stop])).toEqual([
      ['pumping', null],
      ['recovery', 3600],
    ]);
    expect(test?.phases[0]?.readings.map(({ elapsed, level }) => [elapsed?.value, level?.value])).toEqual([
      [0, 5.2],
      [60, 6.14],
      [120, 6.71],
      [3600, 11.9],
    ]);
  });

  it('has the disinfection, and no open question', () => {
    expect(log.disinfections).toMatchObject([
      { strength: { value: 0.1, unit: 'mg/L' }, contact: { value: 43_200 }, date: { date: '2026-05-08' } },
    ]);
    expect(log.questions).toEqual([]);
  });
});
