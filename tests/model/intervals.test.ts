import { describe, expect, it } from 'vitest';
import { endsOf, logOf, stringOf } from './log-of.ts';

describe('a line that begins with the dash', () => {
  it('goes on from the base of the last interval of its section', () => {
    const log = logOf('strata', '0 - 2 clay', '- 5 sand', 'note a text between', '', '- 9 gravel');
    expect(endsOf(log.strata)).toEqual([
      [0, 2],
      [2, 5],
      [5, 9],
    ]);
    expect(log.strata[1]?.interval).toMatchObject({ continued: true, top: { value: 2, span: { line: 1 } } });
  });

  it('starts at the ground in hole and strata where there is none above', () => {
    const log = logOf('hole', '- 7.2 254', 'strata', '- 3 clay');
    expect(endsOf(log.hole)).toEqual([[0, 7.2]]);
    expect(endsOf(log.strata)).toEqual([[0, 3]]);
    expect(log.strata[0]?.interval).toMatchObject({ continued: true, top: { value: 0, written: '0' } });
  });

  it('has no top elsewhere where there is none above', () => {
    expect(endsOf(logOf('drilling air 21 m3/min', '- 13.2 18 min').drilling[0]?.intervals ?? [])).toEqual([
      [null, 13.2],
    ]);
    expect(endsOf(stringOf('casing 0 - 20 steel 168.3', 'grout - 20 neat cement').fills)).toEqual([[null, 20]]);
    expect(endsOf(logOf('casing - 20 steel 168.3').strings)).toEqual([[null, 20]]);
  });

  it('counts no single depths', () => {
    const { found } = logOf('water', '10 - 12 fresh', '20 fresh', '- 30 salty').water;
    expect(endsOf(found)).toEqual([
      [10, 12],
      [null, null],
      [12, 30],
    ]);
    expect(found[1]?.depth?.value).toBe(20);
  });

  it('goes on from an unknown base with an unknown top', () => {
    const log = logOf('strata', '0 - ? clay', '- 5 sand');
    expect(endsOf(log.strata)).toEqual([
      [0, null],
      [null, 5],
    ]);
    expect(log.strata[1]?.interval.top).toMatchObject({ value: null, written: '?' });
  });

  it('goes on from the fills of its own string, whatever their kind', () => {
    const log = logOf(
      'casing 0 - 20 steel 168.3',
      'seal 0 - 3 bentonite chips',
      'grout - 24 neat cement',
      'plug 30 - 31 cement',
      'pack - 36 20/40 sand',
      'liner 15 - 40 pvc 114.3',
      'grout - 40 neat cement',
    );
    expect(log.strings.map((string) => endsOf(string.fills))).toEqual([
      [
        [0, 3],
        [3, 24],
        [30, 31],
        [24, 36],
      ],
      [[null, 40]],
    ]);
  });

  it('goes on from the end of a section that is given again', () => {
    const log = logOf('strata', '0 - 2 clay', 'water', '1.5 fresh', 'strata', '- 5 sand');
    expect(endsOf(log.strata)).toEqual([
      [0, 2],
      [2, 5],
    ]);
    const drilled = logOf('drilling air 21 m3/min', '0 - 6 5 min', 'drilling mud', '- 12 9 min').drilling;
    expect(drilled.map((head) => endsOf(head.intervals))).toEqual([[[0, 6]], [[6, 12]]]);
  });
});

describe('depths', () => {
  it('above ground are negative', () => {
    expect(endsOf(logOf('casing +0.45 - 7.2 steel 168.3').strings)).toEqual([[-0.45, 7.2]]);
    expect(logOf('water', 'level +0.3').water.levels[0]?.level).toMatchObject({ value: -0.3, number: -0.3 });
  });

  it('td is the bottom of the hole, the deepest base logged there', () => {
    const log = logOf('abandonment', '0 - td neat cement', 'hole', '0 - 30 254', '- 61 152', '0 - 40 254');
    expect(endsOf(log.abandonments[0]?.fills ?? [])).toEqual([[0, 61]]);
    expect(log.totalDepth).toBe(61);
  });

  it('td has no value where no hole is logged', () => {
    const log = logOf('strata', '0 - td clay');
    expect(endsOf(log.strata)).toEqual([[0, null]]);
    expect(log.strata[0]?.interval.bottom).toMatchObject({ td: true, written: 'td' });
    expect(log.totalDepth).toBeNull();
  });

  it('keep their doubts', () => {
    const [first, second] = logOf('strata', '0 - ~2 clay', '- 5? sand').strata;
    expect(first?.interval.bottom).toMatchObject({ value: 2, approximate: true, doubtful: false });
    expect(second?.interval.bottom).toMatchObject({ value: 5, approximate: false, doubtful: true });
  });

  it('are where they stand in the text', () => {
    const text = '  0  - 3.8   clay';
    const bottom = logOf('strata', text).strata[0]?.interval.bottom;
    expect(bottom?.span.line).toBe(1);
    expect(text.slice(bottom?.span.start, bottom?.span.end)).toBe('3.8');
  });
});
