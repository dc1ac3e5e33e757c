import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analysis/index.ts';
import { changedLines } from '../../../server/features/refactorings/change.ts';
import { convertUnits } from '../../../server/features/refactorings/convert-units.ts';
import { samples } from '../../fuzz/material.ts';
import { settings } from '../fixture.ts';

const nowhere = { first: { line: 0, column: 0 }, last: { line: 0, column: 0 } };

const offered = (text: string) => convertUnits.offers(analyse(text.split('\n'), settings, 1), nowhere, true);

/** The text in other units: in those named, or those that are offered first. */
function convert(text: string, to?: string): string | null {
  const snapshot = analyse(text.split('\n'), settings, 1);
  const name = to ?? offered(text)[0]?.name ?? '';
  const changes = convertUnits.changes(snapshot, nowhere, name);
  return changes.length === 0 ? null : changedLines(snapshot.lines, changes).join('\n');
}

const thereAndBack = (text: string, to?: string): string | null => {
  const there = convert(text, to);
  return there === null ? null : convert(there);
};

const refusal = (text: string, to = offered(text)[0]?.name ?? ''): string | null =>
  convertUnits.refusal?.(analyse(text.split('\n'), settings, 1), nowhere, to) ?? null;

describe('a file in the other system', () => {
  test('bare depths and diameters, pipe with its trade size, values in their partners', () => {
    expect(
      convert(
        [
          'well KH-04',
          'units m mm',
          'hole',
          '  0 - 7.2 254 air rotary',
          'casing +0.45 - 7.2 steel 168.3 x 6.4',
          '  grout 0 - 7.2 neat cement, 0.29 m3, 9 x 40 kg bags',
          'water',
          '  38.5 fresh, 25 L/min',
        ].join('\n'),
      ),
    ).toBe(
      [
        'well KH-04',
        'units ft in',
        'hole',
        '  0 - 23.62205 10.00000 air rotary',
        'casing +1.476378 - 23.62205 steel 168.3 x 6.4mm',
        '  grout 0 - 23.62205 neat cement, 10.241253 ft3, 9 x 40 kg bags',
        'water',
        '  126.31234 fresh, 6.60430 gpm-us',
      ].join('\n'),
    );
  });

  test('feet are exact in metres', () => {
    expect(convert('units ft in gal-us\nstrata\n  0 - 12 clay\n  - 30.5 sand\nwater\n  25 fresh, 10 gpm')).toBe(
      'units m mm gal-us\nstrata\n  0 - 3.6576 clay\n  - 9.29640 sand\nwater\n  7.6200 fresh, 37.8541 L/min',
    );
  });

  test('figures that are no plain decimals keep their form', () => {
    expect(convert('units ft in\nhole\n  0 - 12\'6" 6 1/4\nstrata\n  0-.3 topsoil')).toBe(
      'units m mm\nhole\n  0 - 12\'6" 6 1/4in\nstrata\n  0-.3ft topsoil',
    );
  });

  test('what stands in the other system already is left, and known again', () => {
    expect(convert('units m mm\nstrata\n  0 - 38 ft clay')).toBe('units ft in\nstrata\n  0 - 38   ft clay');
    expect(thereAndBack('units m mm\nstrata\n  0 - 38 ft clay')).toBe('units m mm\nstrata\n  0 - 38 ft clay');
  });

  test('a file without units says them until it is converted back', () => {
    expect(convert('well A\nstrata\n  0 - 3 clay')?.split('\n')[1]).toMatch(/^units ft in {2}#/);
    expect(thereAndBack('well A\nstrata\n  0 - 3 clay')).toBe('well A\nstrata\n  0 - 3 clay');
  });

  test('a file that mixes the two goes to either, and back to what it was', () => {
    const mixed = 'units m in  # rig 4\nhole\n  0 - 3 10\ncasing 0 - 3 steel 6.625 x 0.25\nstrata\n  0 - 10 ft clay';
    expect(offered(mixed).map(({ title }) => title)).toEqual([
      'Convert the file to feet and inches',
      'Convert the file to metres and millimetres',
    ]);
    const us = convert(mixed, 'ft in') ?? '';
    expect(us).toBe(
      'units ft in  # rig 4  # was m in\nhole\n  0 - 9.8425 10\ncasing 0 - 9.8425 steel 6.625 x 0.25\nstrata\n  0 - 10   ft clay',
    );
    expect(offered(us).map(({ title }) => title)).toEqual([
      'Convert the file back to the units that it came from: m in',
    ]);
    expect(convert(us)).toBe(mixed);
    expect(convert(mixed, 'm mm')).toBe(
      'units m mm  # rig 4  # was m in\nhole\n  0 - 3 254.0\ncasing 0 - 3 steel 6.625 x 0.25in\nstrata\n  0 - 3.0480 m clay',
    );
    expect(thereAndBack(mixed, 'm mm')).toBe(mixed);
  });

  test('a file that counts in centimetres keeps them on the metric side', () => {
    expect(convert('units m cm\nhole\n  0 - 3 25.4')).toBe('units ft in  # was m cm\nhole\n  0 - 9.8425 10.00000');
    expect(thereAndBack('units m cm\nhole\n  0 - 3 25.4')).toBe('units m cm\nhole\n  0 - 3 25.4');
    expect(convert('units ft cm\nhole\n  0 - 10 25.4', 'm cm')).toBe(
      'units m cm  # was ft cm\nhole\n  0 - 3.0480 25.4',
    );
  });

  test('a units line of one word keeps to it', () => {
    expect(convert('units ft\nstrata\n  0 - 10 clay')).toBe('units m\nstrata\n  0 - 3.0480 clay');
    expect(thereAndBack('units ft\nstrata\n  0 - 10 clay')).toBe('units ft\nstrata\n  0 - 10 clay');
  });

  test('a unit counts for the number that it stands behind, not for the next', () => {
    expect(convert('units ft in\nstrata\n  67 m - 300 clay\n  10 ft - 20 sand')).toBe(
      'units m mm\nstrata\n  67   m - 91.4400 clay\n  3.0480 m - 6.0960 sand',
    );
  });

  test('feet and inches in their own signs take no unit from what stands behind them', () => {
    const text = 'units m mm\nstrata\n  12\'6" - .3 clay';
    expect(convert(text)).toBe('units ft in\nstrata\n  12\'6" - .3m clay');
    expect(thereAndBack(text)).toBe(text);
  });

  test('a comma parts a depth and a diameter that would be read as feet and inches', () => {
    expect(convert('units m mm\nhole\n  0 - 27 m 254 mm')).toBe('units ft in\nhole\n  0 - 88.5827 ft, 10.00000 in');
    for (const text of ['  0 - 27 m 254 mm', '  0 - 27 m, 254 mm', '  0 - 27 m,  254 mm'])
      expect(thereAndBack(`units m mm\nhole\n${text}`)).toBe(`units m mm\nhole\n${text}`);
    for (const text of ['  0 - 88 ft, 6 in', '  0 - 88 ft,  6 in', '  0 - 88 ft 6 in 10', '  0 - 12.0 ft .3'])
      expect(thereAndBack(`units ft in\nhole\n${text}`)).toBe(`units ft in\nhole\n${text}`);
  });

  test('what is refused says which line stands in the way, and why', () => {
    expect(refusal('well A\nunits metres mm\nstrata\n  0 - 3 clay')).toMatch(
      /^The file was not converted\. Line 2 stands in the way: its units .*\(units metres mm\)\.$/,
    );
    expect(refusal('units m mm\nstrata\n  0 - 3 clay')).toBeNull();
  });

  test('a slot number stays what it is', () => {
    const there = convert('units ft in\ncasing 0 - 40 steel\n  screen 40 - 50 stainless, slot 20') ?? '';
    expect(there).toContain('slot #20');
    const [before, after] = ['units ft in\ncasing 0 - 40 steel\n  screen 40 - 50 stainless, slot 20', there].map(
      (text) => analyse(text.split('\n'), settings, 1).log.strings[0]?.screens[0]?.slot?.value,
    );
    expect(after).toBe(before);
  });
});

describe('there and back', () => {
  test.each(samples.map((text, at) => [at, text] as const))('sample %i is the text that it was', (_, text) => {
    for (const { name } of offered(text)) expect(thereAndBack(text, name), name).toBe(text);
  });

  /** A sample with its units said otherwise: its figures then mean something else, and must come back all the same. */
  const reworded = (text: string, units: string): string =>
    text.split('\n').some((line) => line.startsWith('units '))
      ? text.replace(/^units .*$/m, units)
      : `${units}\n${text}`;

  test('of any sample, in whatever units its figures are read, is the text that it was', () => {
    const units = fc.constantFrom(
      'units m mm',
      'units ft in',
      'units m in',
      'units ft mm',
      'units m cm',
      'units ft cm',
    );
    fc.assert(
      fc.property(fc.constantFrom(...samples), units, fc.nat(), (sample, words, pick) => {
        const text = reworded(sample, words);
        const names = offered(text).map(({ name }) => name);
        const name = names[pick % names.length];
        const why = refusal(text, name);
        if (why === null) expect(thereAndBack(text, name), `${words} to ${name}`).toBe(text);
        else expect(why).toMatch(/Line \d+ stands in the way: /);
      }),
      { numRuns: 100 },
    );
  });

  const mark = fc.constantFrom('', '', '', '~', '+');
  const figure = fc.oneof(
    fc.nat({ max: 400 }).map(String),
    fc.tuple(fc.nat({ max: 400 }), fc.nat({ max: 999 })).map(([whole, part]) => `${whole}.${part}`),
    fc.constantFrom('.3', '5.', '007', '12\'6"', '6 1/4', '12.0', '3.6576', '23.62205', '0', '0.0', 'td', '?', '7.5?'),
  );
  const unit = fc.constantFrom(
    '',
    '',
    '',
    '',
    'm',
    ' m',
    ' ft',
    'ft',
    '  ft',
    ' feet',
    ' in',
    'mm',
    ' mm',
    ' cm',
    '   m',
  );
  const depth = fc.tuple(mark, figure, unit).map((parts) => parts.join(''));
  const line = fc.oneof(
    fc.tuple(depth, depth).map(([top, bottom]) => `  ${top} - ${bottom} clay`),
    depth.map((bottom) => `  - ${bottom} sand ; at ${bottom}`),
    fc
      .tuple(depth, depth, figure, unit)
      .map(([top, bottom, size, of]) => `casing ${top} - ${bottom} steel ${size}${of} x 6.4`),
    fc.tuple(depth, figure).map(([at, rate]) => `water ${at} fresh, ${rate} L/min`),
    fc.tuple(depth, figure, unit).map(([at, size, of]) => `hole 0 - ${at} ${size}${of}`),
    fc.array(depth, { maxLength: 4 }).map((all) => `  centralizers ${all.join(' ')}`),
    fc.constantFrom(
      'strata',
      '# a remark',
      '',
      'test pump 40 gpm-us, intake 50',
      '  1 5.65 toc',
      'pump 0.75 kW, set 45',
    ),
  );
  const head = fc.constantFrom(
    'units m mm',
    'units ft in',
    'units ft in gal-us',
    'units m mm gal-imp',
    'units m in',
    'units ft mm gal-us',
    'units m cm',
    'units ft cm',
    'units ft',
    'well A',
  );

  test('of any log that can be converted gives its text, and its values', () => {
    fc.assert(
      fc.property(head, fc.array(line, { maxLength: 12 }), (first, lines) => {
        const text = [first, 'strata', ...lines].join('\n');
        for (const { name } of offered(text)) {
          const there = convert(text, name);
          if (there === null) expect(refusal(text, name)).toMatch(/Line \d+ stands in the way: /);
          else expect(convert(there)).toBe(text);
        }
      }),
      { numRuns: 400 },
    );
  });

  test('most logs can be converted', () => {
    const count = fc
      .sample(fc.tuple(head, fc.array(line, { maxLength: 6 })), { numRuns: 200, seed: 7 })
      .filter(([first, lines]) => convert([first, 'strata', ...lines].join('\n')) !== null).length;
    expect(count).toBeGreaterThan(190);
  });
});
