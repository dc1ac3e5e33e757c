import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recordOf } from './record-of.ts';

const metric = readFileSync(new URL('../../samples/kestrel-hollow.well', import.meta.url), 'utf8');

/*
 * The same well as a crew with a tape in feet would have written it: every length, volume, rate and mass of the sample
 * turned into US units by hand with the exact factors of NIST SP 811, and rounded to the digits that such notes have.
 */
const american = `well      KH-04
units     ft in gal-us
rules     general
place     44.6128 -78.3042
ground    942.9 ft
owner     Kestrel Hollow Water Co-op
use       domestic
began     2026-05-04
finished  2026-05-06

hole
  0    - 23.6   10     air rotary
       - 200.1  5.98   down-the-hole hammer

strata
  0    - 1      topsoil, dark brown
       - 12.5   silty clay, brown, stiff, some gravel
       - 20     sand and gravel, grey, wet
       - 145    limestone, grey, fractured
       - 200.1  limestone, dark grey, hard

casing  +1.48 - 23.6   steel  6.625 x 0.252  welded
  shoe          23.6
  centralizers  4.9  13.1  22
  joints        20  5.09
  grout         0 - 23.6   neat cement, 76.6 gal, 9 x 88.2 lb bags, w/c 0.5, tremie, 2026-05-05 09:30

drilling  air 742 cfm 348 psi, pipe 4.49
  23.6  - 43.3   18 min   air
        - 63     21 min   air+water 3.17 gpm
        - 82.7    9 min   foam

water
  126.3    fresh, 6.6 gpm
  177.2    fresh, 3.96 gpm
  level    17.06   2026-05-07

test  pump 10.57 gpm, intake 164, 2026-05-07 08:00
  0      17.06
  1      20.14
  2      22.01
  60    39.04
  recovery
  1     33.46
  60    18.37

disinfection  100 mg/L, 12 h, 2026-05-08
`;

describe('the same well in metric and in US units', () => {
  const [inMetres, inFeet] = [recordOf(metric), recordOf(american)];
  const figures = new Map(inFeet.figures.map((figure) => [figure.id, figure]));

  test('has the same figures', () => {
    expect([...figures.keys()]).toEqual(inMetres.figures.map(({ id }) => id));
  });

  test.each(inMetres.figures.map((figure) => [figure.id, figure] as const))(
    'gives the same %s within the digits written',
    (id, figure) => {
      const other = figures.get(id) ?? expect.fail(`no figure ${id}`);
      expect(other.unit).toBe(figure.unit);
      expect(other.waitsFor).toEqual(figure.waitsFor);
      if (figure.value === null) return expect(other.value).toBeNull();
      /* A ring's volume turns on a difference of squares: half a hundredth of an inch in 6 is a few parts in a thousand. */
      const allowed = 0.012 * Math.abs(figure.value) + (figure.unit === 'm' ? 0.005 : 0);
      expect(Math.abs((other.value ?? Number.NaN) - figure.value)).toBeLessThanOrEqual(allowed);
    },
  );

  test('shows the same figures, each in its own units first', () => {
    const length = (record: typeof inFeet) => record.figures.find(({ id }) => id === 'casing.1.length');
    expect(length(inMetres)).toMatchObject({ text: '7.65 m', otherText: '25.1 ft' });
    expect(length(inFeet)).toMatchObject({ text: '25.08 ft', otherText: '7.644 m' });
  });
});
