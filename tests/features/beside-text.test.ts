import { describe, expect, test } from 'vitest';
import { codeLenses } from '../../server/features/code-lenses.ts';
import { foldingRanges, foldSummary } from '../../server/features/folding-ranges.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { type Shows, showsAll } from '../../server/features/shows.ts';
import { signatureHelp } from '../../server/features/signature-help.ts';
import { marked, snapshotOf } from './fixture.ts';

const log = `
  units m mm
  hole
    0 - 7.2 254
    - 61 152
  strata
    0 - 3.8 clay
    - 38 ft sand
    - 61 limestone
  casing +0.45 - 7.2 steel 168.3 x 6.4
    grout 0 - 7.2 neat cement, 0.29 m3
  drilling air 21 m3/min
    7.2 - 13.2 18 min
    - 19.2 21 min
  water
    38.5 fresh, 25 L/min
    54 fresh, 15 L/min
    level 5.2 2026-05-07
  test pump 40 L/min, intake 50
    0 5.2
    60 11.9
  abandonment
    0 - 61 neat cement, 1.4 m3
`;

/** The lines that have hints, the hints between double angle quotes. */
function hinted(text: string, wanted: Shows['inlayHints'] = showsAll.inlayHints, first = 0, last = 999): string[] {
  const snapshot = snapshotOf(text);
  const lines = [...snapshot.lines];
  const hints = inlayHints(snapshot, first, last, wanted);
  for (const { line, column, text: hint } of [...hints].reverse())
    lines[line] = `${lines[line]?.slice(0, column)}«${hint}»${lines[line]?.slice(column)}`;
  return lines.filter((line) => line.includes('«')).map((line) => line.trim());
}

const only = (kind: keyof Shows['inlayHints']): Shows['inlayHints'] => ({
  thickness: kind === 'thickness',
  units: kind === 'units',
  requiredVolume: kind === 'requiredVolume',
  penetrationRate: kind === 'penetrationRate',
});

describe('hints beside the text', () => {
  test('thickness, of layers that do not begin at the ground', () => {
    expect(hinted(log, only('thickness'))).toEqual([
      '- 61«53.8 m» 152',
      '- 38 ft«7.782 m» sand',
      '- 61«49.42 m» limestone',
    ]);
  });

  test('a value in the other system also in the units of the file', () => {
    // NIST SP 811, appendix B: 1 ft = 0.3048 m, so 38 ft are 11.58 m.
    expect(hinted(log, only('units'))).toEqual(['- 38 ft«= 11.58 m» sand']);
    expect(hinted('units ft in gal-us\nstrata\n  0 - 12.5 clay ; 3 m\nhole\n 0 - 9 m 10', only('units'))).toEqual([
      '0 - 9 m«= 29.53 ft» 10',
    ]);
  });

  test('the volume that is required, beside the one that was placed', () => {
    // Annulus of 254 mm round 168.3 mm over 7.2 m: pi/4 x (0.254^2 - 0.1683^2) x 7.2 = 0.2047 m3, and 15 % more.
    expect(hinted(log, only('requiredVolume'))).toContain('grout 0 - 7.2 neat cement, 0.29 m3«required 0.235 m³»');
  });

  test('how fast the hole went', () => {
    // 6 m in 18 min is 0.333 m/min.
    expect(hinted(log, only('penetrationRate'))).toEqual([
      '7.2 - 13.2 18 min«0.333 m/min»',
      '- 19.2 21 min«0.286 m/min»',
    ]);
  });

  test('only where it is asked for, and nothing where everything is off', () => {
    expect(hinted(log, showsAll.inlayHints, 6, 6)).toEqual(['- 38 ft«= 11.58 m»«7.782 m» sand']);
    const none = { thickness: false, units: false, requiredVolume: false, penetrationRate: false };
    expect(hinted(log, none)).toEqual([]);
  });

  test('nothing of what is not known', () => {
    expect(hinted('strata\n  0 - ? clay\n  - 12 sand\ndrilling\n  1 - 3 ? min')).toEqual([]);
  });

  test('no thickness of a layer that runs upwards', () => {
    expect(hinted('strata\n  0 - 12 clay\n  - 9 sand\n  - 12 till', only('thickness'))).toEqual(['- 12«3 m» till']);
  });
});

describe('totals above sections', () => {
  const titles = (text: string): string[] => codeLenses(snapshotOf(text)).map(({ title }) => title);

  test('of every kind of section', () => {
    expect(titles(log)).toEqual([
      'down to 61 m',
      '3 layers · down to 61 m',
      '7.65 m long · grout 0.29 m³ placed, 0.235 m³ required',
      '12 m drilled in 39 min · 0.308 m/min on average',
      '40 L/min found · static level 5.2 m',
      // 40 L/min over 11.9 - 5.2 = 6.7 m is 5.97 L/min per m.
      'specific capacity 5.97 L/min per m',
      '1 stretch sealed',
    ]);
  });

  test('a section that is given again speaks of its own lines', () => {
    expect(titles('strata\n  0 - 3 clay\nhole\n  0 - 9 150\nstrata\n  3 - 6 sand\n  - 9 clay')).toEqual([
      '1 layer · down to 3 m',
      'down to 9 m',
      '2 layers · down to 9 m',
    ]);
  });

  test('nothing above a section of which nothing is known', () => {
    expect(titles('hole\n  0 - ? 254\ntest pump\ndrilling')).toEqual([]);
  });

  test('stand for the lines of a fold', () => {
    const snapshot = snapshotOf('strata\n  0 - 3 clay\n# one\n# two');
    expect(foldingRanges(snapshot).map((fold) => foldSummary(snapshot, fold))).toEqual(['1 layer · down to 3 m', '']);
  });
});

describe('what a line takes', () => {
  const help = (text: string) => {
    const { snapshot, at } = marked(text);
    return signatureHelp(snapshot, at);
  };
  const activeOf = (text: string): string | null => {
    const found = help(text);
    const parameter = found?.parameters[found.active];
    return found && parameter ? found.label.slice(parameter.start, parameter.end) : null;
  };

  test('in order, with brackets round what may be left out', () => {
    expect(help('hydrofracture |')?.label).toBe(
      'hydrofracture top - bottom, [pressure], [before], [after], [date]'
        .replace('[before]', '[before …]')
        .replace('[after]', '[after …]'),
    );
  });

  test('marks the item that the cursor is in, else what comes next', () => {
    expect(activeOf('casing 0 - 9 steel\n  grout |')).toBe('top - bottom');
    expect(activeOf('casing 0 - 9 steel\n  grout 0 - 9 |')).toBe('material');
    expect(activeOf('casing 0 - 9 steel\n  grout 0 - 9 neat cement, |')).toBe('volume');
    expect(activeOf('casing 0 - 9 steel\n  grout 0 - 9 neat cement, w/c 0.|5')).toBe('[w/c water cement]');
  });

  test('tells units and terms', () => {
    const found = help('casing 0 - 9 steel\n  grout 0 - 9 |');
    const texts = found?.parameters.map(({ markdown }) => markdown) ?? [];
    expect(texts.find((text) => text.startsWith('volume placed'))).toContain('in m³, L, mL');
    expect(texts.find((text) => text.startsWith('what was placed'))).toContain('neat cement');
  });

  test('comes unasked only on a line with a keyword that still lacks something', () => {
    expect(help('casing 0 - 9 |')?.unasked).toBe(true);
    expect(help('casing 0 |- 9 steel 168.3 welded')?.unasked).toBe(false);
    expect(help('hole\n  0 - 9 |')?.unasked).toBe(false);
  });

  test('is silent in text, remarks, comments and where little is taken', () => {
    for (const text of ['owner A|', 'casing 0 - 9 ; a rem|ark', 'casing 0 - 9 # a|', 'cap |', '|casing 0 - 9', ' |'])
      expect(help(text), text).toBeNull();
  });
});
