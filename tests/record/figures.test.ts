import { describe, expect, test } from 'vitest';
import { circle, figureIn, recordOf, valueIn } from './record-of.ts';

const liter = 0.001 / 60;

// Expected values are worked out by hand unless a source stands beside them.
describe('casing', () => {
  test('joints by count, and a missing one', () => {
    const of = (joints: string) => `casing +0.45 - 42 steel 168.3 x 6.4\njoints ${joints}`;
    expect(valueIn(of('6 x 6.1 1.55'), 'casing.1.joints-length')).toBeCloseTo(38.15, 9);
    expect(figureIn(recordOf(of('6.1 ?')), 'casing.1.joints-length').value).toBeNull();
  });

  test('gaps run from the shoe up to the ground, those of a spacing from the foot', () => {
    const gap = (line: string) =>
      valueIn(`casing +0.45 - 30 steel 168.3 x 6.4\n${line}`, 'casing.1.centralizers.widest-gap');
    expect(gap('centralizers 3 9 27')).toBeCloseTo(18, 9);
    expect(gap('centralizers every 8')).toBeCloseTo(8, 9);
    expect(gap('centralizers 28')).toBeCloseTo(28, 9);
  });

  // 6.625 × 0.250 in steel: 17.02 lb/ft, ARM 36.21.640.
  test('mass and hoist load of 100 ft of 6 in well casing', () => {
    const text = 'units ft in\ncasing 0 - 100 steel 6.625 x 0.25';
    expect(Math.abs((valueIn(text, 'casing.1.mass') ?? 0) / 0.45359237 / 1702 - 1)).toBeLessThan(0.002);
    expect(valueIn(text, 'casing.1.hoist-load')).toBe(valueIn(text, 'casing.1.mass'));
    expect(figureIn(recordOf(text), 'casing.1.hoist-load').caution).toContain('hoist');
  });

  // SDR 26: 57.5 psi by the formula of ASTM F480 (from memory).
  test('collapse of plastic by its dimension ratio, with its caution', () => {
    const figure = figureIn(recordOf('units ft in\ncasing 0 - 100 pvc 4.5 sdr 26'), 'casing.1.collapse-resistance');
    expect((figure.value ?? 0) / 6894.757).toBeCloseTo(57.5, 1);
    expect(figure.caution).toContain('cement heats plastic');
  });

  test.each(['sdr ~26', 'sdr 26?', 'sch ~40'])('what rests on %s is in doubt', (ratio) => {
    const of = (text: string) => recordOf(`units ft in\ncasing 0 - 100 pvc 4.5 ${text}`);
    const { figures } = of(ratio);
    const bare = of(ratio.replace(/[~?]/, '')).figures;
    for (const id of ['casing.1.mass', 'casing.1.collapse-resistance']) {
      expect(figures.find((each) => each.id === id)).toMatchObject({ doubtful: true });
      expect(bare.find((each) => each.id === id)).toMatchObject({ doubtful: false });
      expect(figures.find((each) => each.id === id)?.value).toBe(bare.find((each) => each.id === id)?.value);
    }
  });

  test('a lining of concrete rings is not weighed as pipe', () => {
    const ids = recordOf('casing 0 - 10 concrete 900 x 75').figures.map((figure) => figure.id);
    expect(ids).toEqual(['casing.1.length']);
  });

  test('a string of unknown material has no mass', () => {
    expect(figureIn(recordOf('casing 0 - 10 168.3 x 6.4'), 'casing.1.mass').waitsFor).toEqual([
      'the material of casing 1',
    ]);
  });
});

describe('mixes', () => {
  const hole = 'units ft in gal-us\nhole\n0 - 65 10\ncasing 0 - 65 steel 6.625 x 0.25\n';
  const of = (line: string, id: string) => valueIn(hole + line, `casing.1.${id}`);
  const cubicFoot = 0.3048 ** 3;

  // 10 in hole, 6.625 in casing, 65 ft: 19.89 ft³; with 15 % 22.88 ft³ (from 0.3060 ft³/ft).
  test('the annulus of 65 ft', () => {
    expect((of('grout 0 - 65 neat cement', 'grout.1.annulus-volume') ?? 0) / cubicFoot).toBeCloseTo(19.89, 2);
    expect((of('grout 0 - 65 neat cement', 'grout.1.required-volume') ?? 0) / cubicFoot).toBeCloseTo(22.88, 2);
  });

  // 5.2 US gal to a 94 lb sack: about 15.6 lb/gal (OAR 690-240-0475), 1.173 ft³.
  test('bags and water give ratio, density and volume', () => {
    const line = 'grout 0 - 65 neat cement, 17 x 94 lb bags, water 88.4 gal';
    expect(of(line, 'grout.1.water-cement-ratio')).toBeCloseTo(0.4617, 3);
    expect(Math.abs((of(line, 'grout.1.density') ?? 0) / 119.8264 - 15.6)).toBeLessThan(0.1);
    expect((of(line, 'grout.1.bags-volume') ?? 0) / cubicFoot / 17).toBeCloseTo(1.173, 2);
  });

  // Portland-limestone cement has a relative density of about 3.1, portland cement 3.15 (from memory).
  test('portland-limestone cement takes up a little more room', () => {
    const one = (cement: string) =>
      of(`grout 0 - 65 ${cement}, 10 x 94 lb bags, water 52 gal`, 'grout.1.bags-volume') ?? 0;
    const grains = 940 * 0.45359237;
    expect(one('limestone cement') - one('neat cement')).toBeCloseTo(grains / 3100 - grains / 3150, 9);
  });

  test('a mix with sand, which nobody weighs, waits for the sand', () => {
    for (const mix of ['sand-cement', 'thermal grout', 'bentonite and sand slurry']) {
      const record = recordOf(`${hole}grout 0 - 65 ${mix}, 10 x 94 lb bags, water 52 gal`);
      expect(figureIn(record, 'casing.1.grout.1.bags-volume').waitsFor).toEqual(['the sand of the mix']);
      expect(figureIn(record, 'casing.1.grout.1.density').waitsFor).toEqual(['the sand of the mix']);
      expect(record.fills[0]?.fromBags).toBeNull();
    }
  });

  // Filter sand of 100 lb/ft³ (from memory): 1,600 kg/m³.
  test('a mass without bags fills like the same mass in bags', () => {
    const pack = (amount: string) =>
      valueIn(`${hole}pack 40 - 60 filter sand, ${amount}`, 'casing.1.pack.1.bags-volume');
    expect(pack('400 kg')).toBeCloseTo(0.25, 9);
    expect(pack('400 kg')).toBeCloseTo(pack('16 x 25 kg bags') ?? 0, 9);
  });

  // Required with 15 %: 22.88 ft³, 20 sacks of 1.173 ft³ (5.2 US gal each).
  test('the bags for the volume required, and the share that was placed', () => {
    const line = 'grout 0 - 65 neat cement, 25 ft3, 17 x 94 lb bags, water 88.4 gal';
    expect(of(line, 'grout.1.bags-required')).toBe(20);
    expect(of(line, 'grout.1.placed-share')).toBeCloseTo(25 / 19.89, 3);
  });

  // 0.6 US gal for each 1 % and 94 lb (Michigan R 325.1603a): 10 sacks with 5 % take 30 US gal.
  test('the water that bentonite may add', () => {
    const line = 'grout 0 - 65 cement-bentonite, 10 x 94 lb bags, water 60 gal, bentonite 5 %';
    expect((of(line, 'grout.1.bentonite-water') ?? 0) / 0.003785411784).toBeCloseTo(30, 6);
  });

  test('the hours from placing the cement to drilling on below', () => {
    const text =
      'casing 0 - 7.2 steel 168.3 x 6.4\n grout 0 - 7.2 cement, 2026-05-05 09:30\n' +
      'drilling\n 7.2 - 13.2 18 min, 2026-05-06 08:00\n - 19.2 18 min, 2026-05-06 09:00';
    expect(valueIn(text, 'casing.1.grout.1.set-time')).toBeCloseTo(22.5 * 3600, 6);
    const before = text.replace('2026-05-06 08:00', '2026-05-04 08:00').replace('2026-05-06 09:00', '2026-05-04 09:00');
    expect(recordOf(before).figures.map(({ id }) => id)).not.toContain('casing.1.grout.1.set-time');
  });

  test('the days of the work', () => {
    expect(figureIn(recordOf('began 2026-05-04\nfinished 2026-05-06'), 'work.days')).toMatchObject({ text: '2 d' });
  });

  // 100 ft of 15.6 lb/gal against water: 37.7 psi.
  test('pressure of fluid grout on the casing', () => {
    const text = 'units ft in\nhole\n0 - 100 10\ncasing 0 - 100 steel 6.625 x 0.25\ngrout 0 - 100 cement, 15.6 lb/gal';
    const figure = figureIn(recordOf(text), 'casing.1.grout.1.pressure-difference');
    expect((figure.value ?? 0) / 6894.757).toBeCloseTo(37.7, 1);
    expect(figure.caution).toContain('stand clear');
    const buoyed = (state: string) => (valueIn(text, `casing.1.buoyed-weight-${state}`) ?? 0) / 0.45359237 / 3.28084;
    expect(buoyed('empty')).toBeCloseTo(-10.9, 1);
    expect(buoyed('full')).toBeCloseTo(1.86, 1);
  });

  // 50 lb with 24 US gal: 20.0 % solids and 3.5 ft³ (The Driller, high-solids grouting).
  test('a bentonite slurry', () => {
    const line = 'grout 0 - 65 bentonite slurry, 4 x 50 lb bags, water 96 gal';
    expect(of(line, 'grout.1.solids')).toBeCloseTo(0.2, 2);
    expect((of(line, 'grout.1.bags-volume') ?? 0) / cubicFoot / 4).toBeCloseTo(3.5, 1);
  });

  // 50 lb of chips fill about 0.69 ft³ (makers' tables, from memory).
  test('chips fill by the bag', () => {
    const line = 'seal 0 - 5 bentonite chips, 8 x 50 lb bags';
    expect((of(line, 'seal.1.bags-volume') ?? 0) / cubicFoot).toBeCloseTo(8 * 0.69, 2);
  });

  test('without the water or the mass of a bag the volume waits', () => {
    const facts = (line: string) => figureIn(recordOf(hole + line), 'casing.1.grout.1.bags-volume').waitsFor;
    expect(facts('grout 0 - 65 neat cement, 17 x 94 lb bags')).toEqual(['the mixing water or the water-cement ratio']);
    expect(facts('grout 0 - 65 neat cement, 17 bags, w/c 0.5')).toEqual(['the mass of a bag']);
  });
});

describe('drilling', () => {
  // 283 L/s, 155.58 mm bit, 114.3 mm rod: 1,941 m/min (published example).
  test('uphole velocity in an even hole', () => {
    const text = 'hole\n0 - 60 155.58\ndrilling air 283 L/s, pipe 114.3\n0 - 6 18 min';
    expect((valueIn(text, 'drilling.1.uphole-velocity') ?? 0) * 60).toBeCloseTo(1940.6, 0);
  });

  test('the slowest place counts: a wide hole above, until a string stands in it', () => {
    const wide = 'hole\n0 - 12 254\n- 60 152\ndrilling air 20 m3/min, pipe 114\n12 - 18 10 min\n';
    const inHole = 20 / 60 / (circle(0.254) - circle(0.114));
    expect(valueIn(wide, 'drilling.1.uphole-velocity')).toBeCloseTo(inHole, 9);
    const cased = `${wide}casing 0 - 12 steel 219.1 x 6.4\n`;
    const inCasing = 20 / 60 / (circle(0.2191 - 0.0128) - circle(0.114));
    expect(valueIn(cased, 'drilling.1.uphole-velocity')).toBeCloseTo(inCasing, 9);
    const later = `${wide}casing 0 - 16 steel 219.1 x 6.4\n`;
    expect(valueIn(later, 'drilling.1.uphole-velocity')).toBeCloseTo(inHole, 9);
  });

  test('grout in the wide hole below the shoe is drilled through', () => {
    const text =
      'hole\n0 - 12.5 254\n- 60 152\ncasing 0 - 12 steel 168.3 x 6.4\ngrout 0 - 12 neat cement\n' +
      'drilling air 20 m3/min, pipe 114\n12.5 - 18 10 min';
    const inCasing = 20 / 60 / (circle(0.1555) - circle(0.114));
    expect(valueIn(text, 'drilling.1.uphole-velocity')).toBeCloseTo(inCasing, 9);
  });

  test('lines count through the file, and mud has no uphole velocity', () => {
    const record = recordOf('drilling mud 400 L/min\n0 - 3 5 min\ndrilling air 20 m3/min\n3 - 6 ? min\n6 - 9 6 min');
    const ids = record.figures.map((figure) => figure.id).filter((id) => id.startsWith('drilling'));
    expect(ids).toEqual([
      'drilling.1.penetration-rate',
      'drilling.2.penetration-rate',
      'drilling.2.uphole-velocity',
      'drilling.2.uphole-velocity-sea-level',
      'drilling.3.penetration-rate',
      'drilling.3.uphole-velocity',
      'drilling.3.uphole-velocity-sea-level',
    ]);
    expect(figureIn(record, 'drilling.2.penetration-rate').waitsFor).toEqual(['the time that the interval took']);
    expect(figureIn(record, 'drilling.3.uphole-velocity').waitsFor).toContain('the outside diameter of the drill pipe');
  });
});

describe('water', () => {
  const found = (lines: string) => valueIn(`water\n${lines}`, 'water.found-rate');

  test('what each depth adds is summed, of totals the greatest counts, and never both', () => {
    expect(found('20 25 L/min\n30 +15 L/min')).toBeCloseTo(40 * liter, 12);
    expect(found('20 total 25 L/min\n30 total 40 L/min')).toBeCloseTo(40 * liter, 12);
    expect(found('20 25 L/min\n30 15 L/min\n40 total 30 L/min')).toBeCloseTo(40 * liter, 12);
    expect(found('20 25 L/min\n30 15 L/min\n40 total 50 L/min')).toBeCloseTo(50 * liter, 12);
  });

  test('a rate that nobody wrote is waited for, unless a total below takes it in', () => {
    const figure = figureIn(recordOf('water\n20 fresh, 25 L/min\n30 fresh'), 'water.found-rate');
    expect(figure).toMatchObject({ value: null, waitsFor: ['the rate of the water found at 30 m'] });
    expect(found('20 fresh, 25 L/min\n30 fresh\n40 total 60 L/min')).toBeCloseTo(60 * liter, 12);
  });

  test('a bound or an about is in doubt', () => {
    expect(figureIn(recordOf('water\n20 >25 L/min'), 'water.found-rate').doubtful).toBe(true);
    expect(figureIn(recordOf('water\n20 ~25 L/min'), 'water.found-rate').doubtful).toBe(true);
    expect(figureIn(recordOf('water\n20 25 L/min'), 'water.found-rate').doubtful).toBe(false);
  });

  const casing = 'casing +0.45 - 12 steel 168.3 x 6.4\n';
  const rates = (strings: string, lines: string) => {
    const record = recordOf(`${strings}water\n${lines}`);
    const [shut, open] = ['water.shut-off-rate', 'water.open-rate'].map((id) => figureIn(record, id));
    return { shut, open, values: [shut?.value, open?.value].map((each) => (each == null ? null : each / liter)) };
  };

  test.each([
    ['behind the casing and below it', casing, '8 5 L/min\n38.5 25 L/min', 5, 25],
    ['all below', casing, '38.5 25 L/min', 0, 25],
    ['at the very foot', casing, '12 25 L/min', 0, 25],
    ['behind a perforated liner', `${casing}liner 10 - 61 pvc 114.3, perforated 48 - 61\n`, '54 15 L/min', 0, 15],
    ['behind a screened string', 'casing 0 - 36 pvc 114.3\nscreen 30 - 36 slot 0.5\n', '8 5 L/min', 0, 5],
    ['behind casing that was pulled', 'casing 0 - 9 steel 273 temporary, pulled 2026-05-05\n', '8 5 L/min', 0, 5],
    ['of an interval that reaches below', casing, '8 - 14 5 L/min', 0, 5],
    ['of an interval behind two strings', `${casing}liner 10 - 61 pvc 114.3\n`, '8 - 14 5 L/min', 5, 0],
    ['of totals', casing, '8 total 5 L/min\n38.5 total 30 L/min', 5, 25],
    ['of a total that takes in what is below', casing, '8 5 L/min\n30 fresh\n54 total 40 L/min', 5, 35],
  ])('%s: shut off and open', (_, strings, lines, shut, open) => {
    const { values } = rates(strings, lines);
    expect(values[0]).toBeCloseTo(shut, 9);
    expect(values[1]).toBeCloseTo(open, 9);
  });

  test('on which side water stands is unknown where a depth or the strings are', () => {
    const waits = (strings: string, lines: string) => {
      const { shut, open } = rates(strings, lines);
      return [shut?.waitsFor, open?.waitsFor];
    };
    const both = (fact: string) => [[fact], [fact]];
    expect(waits('casing 0 - ? steel 168.3 x 6.4\n', '8 5 L/min')).toEqual(both('the bottom of casing 1'));
    expect(waits(casing, '? 5 L/min')).toEqual(both('the depth of the water found on line 3'));
    expect(waits('', '8 5 L/min')).toEqual(both('the strings that were set'));
    expect(waits(casing, '8 fresh\n54 total 40 L/min')).toEqual(
      both('the rates of the water found above the depth of the total'),
    );
    expect(waits(casing, '8 fresh\n38 5 L/min')).toEqual([['the rate of the water found at 8 m'], []]);
    expect(waits(casing, '20 25 L/min\n30 total 30 L/min\n40 +15 L/min')).toEqual(
      both('one reckoning of the water found: what was added disagrees with the totals'),
    );
  });

  test('the parts show what they come from, and say what they are not', () => {
    const { shut, open } = rates(casing, '8 5 L/min\n38.5 25 L/min');
    expect(shut).toMatchObject({ text: '5 L/min', lines: [2, 0], doubtful: false });
    expect(open).toMatchObject({ text: '25 L/min', lines: [3, 0] });
    expect(shut?.inputs.map(({ name }) => name)).toEqual([
      'found at 8 m, behind casing 1',
      'top of casing 1',
      'bottom of casing 1',
    ]);
    expect(open?.caution).toContain('no tested yield');
    expect(rates(casing.replace('12', '~12'), '8 5 L/min').shut?.doubtful).toBe(true);
    expect(rates(casing, '~8 5 L/min').shut?.doubtful).toBe(true);
    const ids = recordOf(`${casing}water\n8 fresh`).figures.map(({ id }) => id);
    expect(ids).not.toContain('water.open-rate');
  });

  test('the last level by date is the static level, else the last written', () => {
    const level = (lines: string) => valueIn(`water\n${lines}`, 'water.static-level');
    expect(level('level 5.2 2026-05-09\nlevel 6.1 2026-05-07')).toBe(5.2);
    expect(level('level 5.2\nlevel 6.1')).toBe(6.1);
    expect(level('level 5.2 2026-05-09\nlevel 6.1')).toBe(5.2);
  });

  test('levels from the top of a string that was cut follow its top', () => {
    const text = 'casing +0.9 - 12 steel 168.3 x 6.4\ncut +0.9 to +0.45 2026-05-07\nwater\n';
    const record = recordOf(`${text}level 5.65 toc 2026-05-08`);
    expect(figureIn(record, 'water.static-level').value).toBeCloseTo(5.2, 9);
    expect(figureIn(record, 'water.static-level-toc').value).toBeCloseTo(5.65, 9);
    expect(figureIn(record, 'water.static-level-elevation').waitsFor).toEqual(['the elevation of the ground']);
    expect(record.topOfCasing).toBeCloseTo(0.45, 9);
    expect(valueIn(`${text}level 5.65 toc 2026-05-06`, 'water.static-level')).toBeCloseTo(4.75, 9);
  });
});

describe('disinfection, sealing, screens and place', () => {
  // Indiana 327 IAC 8-3.4-24, 100 ft of 6 in: 146.9 US gal, 1.5 oz of 65 % granules, 7.8 fl oz of 12 %, for 50 mg/L.
  test('doses for 100 ft of 6 in hole', () => {
    const text = 'units ft in\nhole\n0 - 100 6\nwater\nlevel 0\ndisinfection 50 mg/L';
    const value = (name: string) => valueIn(text, `disinfection.${name}`) ?? 0;
    expect(value('water-volume') / 0.003785411784).toBeCloseTo(146.9, 1);
    expect(value('granules-65') / 0.028349523125).toBeCloseTo(1.5, 1);
    expect(value('hypochlorite-12') / (0.003785411784 / 128)).toBeCloseTo(7.8, 1);
    expect(figureIn(recordOf(text), 'disinfection.granules-65').caution).toContain('goggles');
    expect(figureIn(recordOf(text.replace('level 0', '')), 'disinfection.granules-65').waitsFor).toEqual([
      'the static level',
    ]);
  });

  test('the volume to seal, inside a string and below it, line by line', () => {
    const text = 'hole\n0 - 60 152\ncasing 0 - 12 steel 168.3 x 6.4\nabandonment\n0 - 60 neat cement\n0 - 70 clay';
    expect(valueIn(text, 'abandonment.1.volume')).toBeCloseTo(circle(0.1555) * 12 + circle(0.152) * 48, 9);
    expect(figureIn(recordOf(text), 'abandonment.2.volume').waitsFor).toEqual(['the diameter of the hole, 60 – 70 m']);
  });

  // Davis, Water and Wastewater Engineering (2010), p. 4-38: 32 m³/h through 9.16 m of 0.097 m²/m flows in at 0.010 m/s.
  test('entrance velocity of a screen', () => {
    const text = 'casing 0 - 30 pvc 168.3\nscreen 20.84 - 30 open 0.097 m2/m\ntest pump 32 m3/h';
    expect(valueIn(text, 'casing.1.screen.1.entrance-velocity')).toBeCloseTo(0.01, 4);
  });

  // The same example: for 0.010 m/s it takes 9.16 m of screen; the pack's limit is 0.03 m/s (Davis, p. 4-38).
  test('length of screen for the limit of the entrance velocity', () => {
    const text = 'rules general\ncasing 0 - 30 pvc 168.3\nscreen 20 - 30 open 0.097 m2/m\ntest pump 32 m3/h';
    expect(valueIn(text, 'casing.1.screen.1.length-needed')).toBeCloseTo(9.16 / 3, 2);
  });

  // 43°38′33.24″ N, 79°23′13.7″ W: zone 17, 630,084 E, 4,833,438 N (published, from memory).
  test('place both ways', () => {
    const text = 'place utm 17 630084 4833438 wgs84';
    expect(valueIn(text, 'place.latitude')).toBeCloseTo(43.642567, 4);
    expect(valueIn(text, 'place.longitude')).toBeCloseTo(-79.387139, 4);
    const back = 'place 43.642567 -79.387139';
    expect(valueIn(back, 'place.utm-easting')).toBeCloseTo(630_084, -1);
    expect(valueIn(back, 'place.utm-northing')).toBeCloseTo(4_833_438, -1);
    expect(figureIn(recordOf(back), 'place.utm-easting').caution).toContain('datum');
  });
});
