import { describe, expect, it } from 'vitest';
import { endsOf, logOf, stringOf } from './log-of.ts';

describe('keywords of the file', () => {
  it('keep their first value', () => {
    const log = logOf(
      'owner Aldermoor Farm',
      'owner Second Owner',
      'began 2026-05-04',
      'began 2026-05-09',
      'use domestic',
      'use stock',
    );
    expect(log.header.owner?.text).toBe('Aldermoor Farm');
    expect(log.began?.date).toBe('2026-05-04');
    expect(log.uses).toHaveLength(1);
  });

  it('pass over a line that says nothing', () => {
    expect(logOf('owner', 'owner Aldermoor Farm').header.owner?.text).toBe('Aldermoor Farm');
  });

  it('that may stand several times are all kept', () => {
    const log = logOf(
      'note one',
      'note two',
      'distance septic 31, sewer 12',
      'distance road 8',
      'photo 38.5 IMG_0412.jpg',
    );
    expect(log.notes.map(({ text }) => text)).toEqual(['one', 'two']);
    expect(log.distances.map(({ source, distance }) => [source.id, distance.value])).toEqual([
      ['septic-tank', 31],
      ['sewer', 12],
      ['road', 8],
    ]);
    expect(log.photos).toMatchObject([{ depth: { value: 38.5 }, file: { text: 'IMG_0412.jpg' } }]);
  });

  it('tell an unknown date from none', () => {
    expect(logOf('began ?').began).toMatchObject({ date: null, valid: true });
    expect(logOf('well A').began).toBeNull();
  });

  it('have the shifts, a night shift ending on the next day', () => {
    const [day, night] = logOf(
      'shift 2026-05-05 07:00 - 17:30, 0 - 42.7, crew RB KT, rain 4 C',
      'shift 2026-05-31 22:00 - 06:00',
    ).shifts;
    expect(day).toMatchObject({
      hours: { from: { time: '07:00' }, to: { date: '2026-05-05', time: '17:30' } },
      drilled: { top: { value: 0 }, bottom: { value: 42.7 } },
      crew: { text: 'RB KT' },
      weather: [{ id: 'rain' }],
    });
    // NIST SP 811: 0 degrees Celsius is 273.15 K.
    expect(day?.temperature?.value).toBeCloseTo(277.15, 9);
    expect(night?.hours?.to).toMatchObject({ date: '2026-06-01', time: '06:00' });
  });

  it('have the old hole', () => {
    expect(logOf('existing 0 - 36.6 152, 1987, record 1234567').existing).toMatchObject([
      { interval: { bottom: { value: 36.6 } }, diameter: { value: 0.152 }, year: 1987, record: { text: '1234567' } },
    ]);
  });
});

describe('the place', () => {
  it('in degrees, west and south negative', () => {
    expect(logOf('place 44.6128 -78.3042? wgs84').place).toMatchObject({
      latitude: 44.6128,
      longitude: -78.3042,
      datum: { id: 'wgs84' },
      doubtful: true,
    });
  });

  it.each([
    ['17T', 17, 'N'],
    ['17', 17, 'N'],
    ['56H', 56, 'S'],
  ])('on the grid, zone %s', (written, zone, hemisphere) => {
    const { place } = logOf('units ft in', `place utm ${written} 712345 4944210 nad83 within 5 m`);
    expect(place?.utm).toEqual({ zone, hemisphere, easting: 712_345, northing: 4_944_210 });
    expect(place).toMatchObject({ latitude: null, datum: { id: 'nad83' }, accuracy: { value: 5 } });
  });

  it('is not known where a part of it is missing', () => {
    expect(logOf('place utm 17T 712345').place?.utm).toBeNull();
    expect(logOf('place ? -78.3').place).toMatchObject({ latitude: null, longitude: -78.3 });
  });
});

describe('strings', () => {
  const log = logOf(
    'casing +0.6 - 42.7 steel 168.3 x 4.8 driven',
    'shoe 42.7',
    'casing 0 - 9.1 steel 273 temporary, pulled 2026-05-05 11:30',
    'liner 24.4 - 61 pvc 114.3 sdr 26, perforated 48.8 - 61',
    'strata',
    '0 - 4 clay',
    'packer 24.4 rubber',
    'screen 61 - 64 stainless steel 88.9, slot 0.5',
    '  screen - 67 stainless steel 88.9, slot 0.8',
    'screen 66 - 72 stainless steel 60.3 telescoped, slot 1',
    'pack 65 - 72 20/40 sand',
  );

  it('are opened by casing, liner and a telescoped screen', () => {
    expect(log.strings.map(({ kind, number }) => [kind, number])).toEqual([
      ['casing', 1],
      ['casing', 2],
      ['liner', 3],
      ['screen', 4],
    ]);
  });

  it('have their states', () => {
    expect(log.strings.map(({ driven, temporary }) => [driven, temporary])).toEqual([
      [true, false],
      [false, true],
      [false, false],
      [false, false],
    ]);
    expect(log.strings[1]?.pulled).toMatchObject({ date: '2026-05-05', time: '11:30' });
    expect(endsOf(log.strings[2]?.perforated.map((interval) => ({ interval })) ?? [])).toEqual([[48.8, 61]]);
  });

  it('get what hangs on them, whatever section is open', () => {
    expect(log.strings[0]?.shoe?.depth?.value).toBe(42.7);
    expect(log.strings[2]?.packers).toMatchObject([{ depth: { value: 24.4 }, kinds: [{ id: 'rubber' }] }]);
    expect(endsOf(log.strings[2]?.screens ?? [])).toEqual([
      [61, 64],
      [64, 67],
    ]);
    expect(log.strings[2]?.screens.map(({ number }) => number)).toEqual([1, 2]);
    expect(log.strings[3]?.screens).toMatchObject([{ slot: { value: 0.001 }, size: { outsideDiameter: 0.0603 } }]);
    expect(log.strings[3]?.fills).toMatchObject([{ kind: 'pack', grading: { coarse: 20, fine: 40 } }]);
  });

  it('add up what is given on several lines', () => {
    const string = stringOf(
      'casing 0 - 20 steel 168.3',
      'joints 2 x 6.1 0.7',
      'joints 5.9',
      'centralizers 2 8',
      'centralizers 14',
      'grout 0 - 5 neat cement',
      'grout - 20 neat cement',
    );
    expect(string.joints?.lengths.map(({ count, length }) => [count, length.value])).toEqual([
      [2, 6.1],
      [1, 0.7],
      [1, 5.9],
    ]);
    expect(string.centralizers?.positions.map(({ value }) => value)).toEqual([2, 8, 14]);
    expect(string.fills.map(({ number }) => number)).toEqual([1, 2]);
  });
});

describe('fills', () => {
  const fillOf = (units: string, text: string) => stringOf(units, 'casing 0 - 40 steel 168.3', text).fills[0];

  it('have bags by count, by count and mass, or by mass alone', () => {
    expect(fillOf('units m mm', 'grout 0 - 7 neat cement, 9 bags')?.bags).toMatchObject({
      count: { value: 9 },
      massEach: null,
    });
    // NIST SP 811: a pound is 0.45359237 kg.
    expect(fillOf('units ft in', 'grout 0 - 7 neat cement, 9 x 94 lb')?.bags?.massEach?.value).toBeCloseTo(
      94 * 0.45359237,
      9,
    );
    expect(fillOf('units m mm', 'grout 0 - 7 neat cement, 9 bags, 40 kg')?.bags).toMatchObject({
      count: { value: 9 },
      massEach: { value: 40 },
    });
  });

  it('have a volume given as count times amount', () => {
    expect(fillOf('units m mm', 'grout 0 - 7 neat cement, 3 x 0.1 m3')?.volume?.value).toBeCloseTo(0.3, 12);
  });

  it('have what came back, what was left and what was added', () => {
    const fill = fillOf(
      'units m mm',
      'grout 1.8 - 12 neat cement, 0.42 m3, plug inside 1.5, returned 60 L, top-up 40 L',
    );
    expect(fill).toMatchObject({ plugInside: { value: 1.5 }, returned: { value: 0.06 }, topUp: { value: 0.04 } });
  });

  it('know an unknown volume from none', () => {
    expect(fillOf('units m mm', 'grout 0 - 7 neat cement, ? m3')?.volume).toMatchObject({
      value: null,
      written: '? m3',
    });
    expect(fillOf('units m mm', 'grout 0 - 7 neat cement ?')?.volume).toMatchObject({ value: null, written: '?' });
    expect(fillOf('units m mm', 'grout 0 - 7 neat cement')?.volume).toBeNull();
  });

  it('of an abandonment are numbered in it', () => {
    const { abandonments } = logOf(
      'abandonment 2026-06-01',
      '0 - 20 neat cement',
      '- 61 bentonite chips',
      'abandonment',
      '- 70 sand',
    );
    expect(abandonments).toHaveLength(1);
    expect(abandonments[0]?.fills.map(({ kind, number, fillClass }) => [kind, number, fillClass])).toEqual([
      ['abandonment', 1, 'cement'],
      ['abandonment', 2, 'bentonite-dry'],
      ['abandonment', 3, 'granular'],
    ]);
  });
});

describe('water', () => {
  it('is found as an addition or as a total', () => {
    const { found } = logOf('water', '54 total 40 L/min', '54 +15 L/min', '60 20-25 L/min').water;
    expect(found.map(({ rateMeans }) => rateMeans)).toEqual(['total', 'adds', 'adds']);
    expect(found[0]?.rate?.value).toBeCloseTo(0.04 / 60, 15);
    expect(found[2]?.rate?.value).toBeCloseTo(0.02 / 60, 15);
    expect(found[2]?.rate?.high).toBeCloseTo(0.025 / 60, 15);
  });

  it('may stand beside its keyword', () => {
    expect(logOf('water 38 fresh, 2 L/min').water.found).toMatchObject([{ depth: { value: 38 }, rate: { number: 2 } }]);
    expect(endsOf(logOf('hole 0 - 7.2 254', '- 61 152').hole)).toEqual([
      [0, 7.2],
      [7.2, 61],
    ]);
  });

  it('has its quality, gas and flow', () => {
    const { water } = logOf(
      'water',
      'gas 47.2 methane',
      'quality 38.5 sulphur, iron 0.4 mg/L, ph 7.2',
      'flowing 35 L/min, shut-in 42 kPa, valve, no leak',
      'flowing ? L/min, shut-in 1.2',
    );
    expect(water.gas).toMatchObject([{ depth: { value: 47.2 }, kinds: [{ id: 'methane' }] }]);
    expect(water.quality[0]?.parameters.map(({ parameter, value }) => [parameter.id, value.value, value.unit])).toEqual(
      [
        ['iron', 0.0004, 'mg/L'],
        ['ph', 7.2, ''],
      ],
    );
    expect(water.flowing[0]).toMatchObject({
      shutIn: { value: 42_000 },
      control: [{ id: 'valve' }, { id: 'no-leak' }],
    });
    expect(water.flowing[1]).toMatchObject({
      rate: { value: null, written: '? L/min' },
      shutIn: { value: 1.2, unit: 'm' },
    });
  });
});

describe('questions', () => {
  it('are every ?, doubt and approximation, in the order of the file', () => {
    const { questions } = logOf(
      'owner ?',
      'began ~2026-05-04',
      'strata',
      '0 - ~3 clay',
      '- 5? sand',
      'casing 0 - 7.2 steel 168.3 x ?',
      'joints 6.1 ?',
      'grout 0 - 7.2 neat cement, ? m3, w/c ?',
    );
    expect(questions.map(({ kind, what, span }) => [span.line, kind, what])).toEqual([
      [0, 'unknown', 'owner: owner'],
      [1, 'approximate', 'began: date'],
      [3, 'approximate', 'strata: depth'],
      [4, 'doubtful', 'strata: depth'],
      [5, 'unknown', 'casing: outside diameter x wall, or a nominal size'],
      [6, 'unknown', 'joints: lengths, or count x length'],
      [7, 'unknown', 'grout: volume placed'],
      [7, 'unknown', 'grout: w/c'],
    ]);
  });

  it('are asked once for a telescoped screen, which is a string and a screen', () => {
    expect(logOf('screen 30 - 36 stainless steel 88.9 telescoped, slot ?').questions).toHaveLength(1);
  });
});
