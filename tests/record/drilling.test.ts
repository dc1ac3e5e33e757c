import { describe, expect, test } from 'vitest';
import { figureIn, recordOf, valueIn } from './record-of.ts';

describe('air', () => {
  const head = 'hole\n0 - 60 155.58\ndrilling air 283 L/s 2400 kPa, pipe 114.3\n0 - 6 18 min\n- 60 18 min\n';

  // 283 L/s, 155.58 mm bit, 114.3 mm rod: 1,941 m/min (published). At 2,000 m air weighs 0.822 of that at sea level (U.S.
  // Standard Atmosphere 1976, from memory); a compressor may give 15 % less than rated.
  test('at altitude is thinned once, and by wear', () => {
    const text = `rules general\nground 2000 m\n${head}`;
    const value = valueIn(text, 'drilling.1.uphole-velocity-sea-level') ?? 0;
    expect(value * 60).toBeCloseTo(1940.6 * 0.85 * 0.8216, -1);
    expect(figureIn(recordOf(head), 'drilling.1.uphole-velocity-sea-level').waitsFor).toEqual([
      'the elevation of the ground',
    ]);
  });

  // 2,400 kPa against 55.8 m of water: 1,853 kPa left (9.80665 kPa a metre).
  test('is held against the water above the bit, where there is any', () => {
    const record = recordOf(`${head.replace('60', '61').replace('- 60', '- 61')}water\nlevel 5.2`);
    expect(figureIn(record, 'drilling.2.water-column').value).toBeCloseTo(55.8, 9);
    expect((figureIn(record, 'drilling.2.spare-pressure').value ?? 0) / 1000).toBeCloseTo(1852.8, 1);
    expect(figureIn(record, 'drilling.2.spare-pressure').caution).toContain('bleed');
    const dry = recordOf(`${head}water\nlevel 30`).figures.map(({ id }) => id);
    expect(dry).not.toContain('drilling.1.spare-pressure');
    expect(dry).toContain('drilling.2.spare-pressure');
    expect(figureIn(recordOf(head), 'drilling.1.spare-pressure').waitsFor).toEqual(['the static level']);
  });

  test('that cannot lift the water leaves a pressure below nothing', () => {
    const text = 'hole\n0 - 60 150\ndrilling air 20 m3/min 400 kPa, pipe 114\n0 - 60 90 min\nwater\nlevel 2';
    expect(valueIn(text, 'drilling.1.spare-pressure')).toBeLessThan(0);
  });
});

describe('a break of the rate', () => {
  const drilled = 'drilling air\n7.2 - 13.2 18 min\n- 19.2 9 min\n';
  const strata = 'strata\n0 - 6.1 sand\n- 14 shale\n- 61 limestone\n';

  // 0.333 m/min to 13.2 m and 0.667 below: twofold; the nearest contact is 0.8 m away.
  test('is told with its distance from the nearest contact', () => {
    const record = recordOf(`rules general\n${strata}${drilled}`);
    expect(figureIn(record, 'drilling.2.rate-break').value).toBeCloseTo(2, 9);
    expect(figureIn(record, 'drilling.2.rate-break').title).toContain('faster');
    expect(figureIn(record, 'drilling.2.rate-break-contact').value).toBeCloseTo(0.8, 9);
  });

  const ids = (text: string) => recordOf(text).figures.map(({ id }) => id);

  test('too small for the pack is not held against the contacts, nor is one where no contact is logged', () => {
    const small = ids(`rules general\n${strata}${drilled.replace('9 min', '12 min')}`);
    expect(small).toContain('drilling.2.rate-break');
    expect(small).not.toContain('drilling.2.rate-break-contact');
    expect(ids(`rules general\n${drilled}`)).not.toContain('drilling.2.rate-break-contact');
  });

  test.each([
    ['with another flush', drilled.replace('9 min', '9 min foam')],
    ['with another bit', drilled.replace('9 min', '9 min, bit 100')],
    ['across a gap', drilled.replace('- 19.2', '14 - 19.2')],
    ['without a time', drilled.replace('9 min', '? min')],
  ])('%s is none', (_, text) => expect(ids(`${strata}${text}`)).not.toContain('drilling.2.rate-break'));
});

describe('a contact', () => {
  // 6 m in 18, 9 and 9 min: 0.333 and twice 0.667 m/min; the rate breaks at 13.2 m.
  const drilled = 'drilling air\n7.2 - 13.2 18 min\n- 19.2 9 min\n- 25.2 9 min\n';
  const of = (strata: string, drilling = drilled) => recordOf(`rules general\nstrata\n${strata}\n${drilling}`);
  const idsOf = (strata: string, drilling: string) =>
    of(strata, drilling)
      .figures.map(({ id }) => id)
      .filter((id) => id.startsWith('strata'));

  test('without a break is told with the rates about it and the distance of the nearest break', () => {
    const record = of('0 - 19.2 shale\n- 61 limestone');
    expect(figureIn(record, 'strata.1.rate-change')).toMatchObject({ value: expect.closeTo(1, 9), doubtful: false });
    expect(figureIn(record, 'strata.1.rate-change').inputs.map(({ line }) => line)).toEqual([6, 7, 2]);
    expect(figureIn(record, 'strata.1.rate-change').span).toMatchObject({ line: 2 });
    expect(figureIn(record, 'strata.1.rate-change-break').value).toBeCloseTo(6, 9);
  });

  test('within an interval is held against the intervals about it', () => {
    const record = of('0 - 15 shale\n- 61 limestone');
    expect(figureIn(record, 'strata.1.rate-change').value).toBeCloseTo(2, 9);
    expect(figureIn(record, 'strata.1.rate-change').title).toContain('faster');
    expect(figureIn(record, 'strata.1.rate-change-break').value).toBeCloseTo(1.8, 9);
  });

  test('that is itself in doubt, or stands by a doubtful rate, says so', () => {
    expect(figureIn(of('0 - ~15 shale\n- 61 limestone'), 'strata.1.rate-change').doubtful).toBe(true);
    const doubtful = drilled.replace('18 min', '~18 min');
    expect(figureIn(of('0 - 15 shale\n- 61 limestone', doubtful), 'strata.1.rate-change').doubtful).toBe(true);
  });

  test('where the rate never breaks has no break to be near to', () => {
    const even = drilled.replace('18 min', '9 min');
    expect(idsOf('0 - 15 shale\n- 61 limestone', even)).toEqual(['strata.1.rate-change']);
  });

  test.each([
    ['above all that was timed', '0 - 7.2 shale\n- 61 limestone', drilled],
    ['in the first interval', '0 - 9 shale\n- 61 limestone', drilled],
    ['at the foot of the last', '0 - 25.2 shale\n- 61 limestone', drilled],
    ['that is the bottom of the log', '0 - 13.2 shale', drilled],
    ['between two flushes', '0 - 19.2 shale\n- 61 limestone', drilled.replace('25.2 9 min', '25.2 9 min foam')],
    [
      'beside an interval without a time',
      '0 - 19.2 shale\n- 61 limestone',
      drilled.replace('25.2 9 min', '25.2 ? min'),
    ],
    ['in a log without drilling', '0 - 19.2 shale\n- 61 limestone', ''],
  ])('%s has nothing to be told', (_, strata, drilling) => expect(idsOf(strata, drilling)).toEqual([]));
});

describe('more strings than any well has', () => {
  const many = Array.from({ length: 65 }, (_, index) => `casing 0 - ${index + 1} steel 168.3 x 6.4`).join('\n');

  test('are said to be too many, not looked through in part', () => {
    const text = `hole\n0 - 70 250\ndrilling air 20 m3/min, pipe 114\n65 - 70 18 min\n${many}`;
    expect(figureIn(recordOf(text), 'drilling.1.uphole-velocity').waitsFor).toEqual([
      'no more than 64 strings in one file',
    ]);
  });

  test('all bound the open bore', () => {
    const text = `hole\n0 - 70 250\n${many}\ncasing 0 - 70 steel 114.3 x 6\nabandonment\n0 - 70 cement`;
    expect(valueIn(text, 'abandonment.1.volume')).toBeCloseTo((Math.PI / 4) * 0.1023 ** 2 * 70, 9);
  });
});
