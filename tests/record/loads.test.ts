import { describe, expect, test } from 'vitest';
import { figureIn, recordOf, valueIn } from './record-of.ts';

const psi = 6894.757293168;

describe('the load on the hoist', () => {
  // 6.625 × 0.250 in steel, 17.02 lb/ft (ARM 36.21.640): 100 ft weigh 1,702 lb; steel in water loses 1000/7850 of it.
  const pipe = 'units ft in\ncasing 0 - 100 steel 6.625 x 0.25\n';
  const pounds = (text: string, id: string) => (valueIn(text, `casing.1.${id}`) ?? Number.NaN) / 0.45359237;

  test('in air is the whole string', () => expect(pounds(pipe, 'hoist-load')).toBeCloseTo(1702, -1));

  test('in water is less by what the part below the level pushes aside', () => {
    expect(pounds(`${pipe}water\nlevel 0`, 'hoist-load-in-water')).toBeCloseTo(1702 * (1 - 1 / 7.85), -1);
    expect(pounds(`${pipe}water\nlevel 40`, 'hoist-load-in-water')).toBeCloseTo(1702 * (1 - 0.6 / 7.85), -1);
    expect(pounds(`${pipe}water\nlevel 140`, 'hoist-load-in-water')).toBeCloseTo(pounds(pipe, 'hoist-load'), 6);
    expect(pounds(`${pipe}water\nlevel +3`, 'hoist-load-in-water')).toBeCloseTo(1702 * (1 - 1 / 7.85), -1);
  });

  test('in water waits for the level, and both warn of the hoist', () => {
    const record = recordOf(pipe);
    expect(figureIn(record, 'casing.1.hoist-load-in-water').waitsFor).toEqual(['the water level in the hole']);
    for (const id of ['hoist-load', 'hoist-load-in-water'])
      expect(figureIn(record, `casing.1.${id}`).caution).toContain('rated load');
  });
});

describe('what a string resists', () => {
  const steel = (grade: string) =>
    figureIn(recordOf(`units ft in\ncasing 0 - 100 steel 6.625 x 0.25${grade}`), 'casing.1.collapse-resistance');
  const inputOf = (grade: string) => steel(grade).inputs.find(({ name }) => name.includes('yield strength'));

  // 1,278 psi by 35,000 psi and 1 % ovality (derived); a stronger grade resists more.
  test('goes by the grade that is written', () => {
    expect((steel(', grade A53 B').value ?? 0) / psi).toBeCloseTo(1278, 0);
    expect(steel(', grade X42').value).toBeGreaterThan(steel(', grade A53 B').value ?? 0);
    expect(inputOf(', grade X42')).toMatchObject({ text: '42000 psi', line: 1 });
    expect(inputOf(', grade X42')?.name).toBe('least yield strength, API 5L X42');
  });

  test('says so where no grade is written', () => {
    expect(steel('').value).toBe(steel(', grade B').value);
    expect(inputOf('')?.name).toContain('assumed');
    expect(inputOf(', grade B')?.name).not.toContain('assumed');
  });

  test('waits for a grade that no table has', () => {
    expect(steel(', grade Q7')).toMatchObject({
      value: null,
      waitsFor: ['the yield strength of the grade of casing 1, which is not in the table'],
    });
  });

  // SDR 21 resists 111 psi cool (ASTM F480, from memory) and keeps 0.22 of it at 140 °F (derating table, from memory).
  test('of plastic under setting cement is derated to the hottest that it has a figure for', () => {
    const plastic = 'units ft in\nhole\n0 - 100 8\ncasing 0 - 100 pvc 4.5 sdr 21\n';
    expect((valueIn(plastic, 'casing.1.collapse-resistance') ?? 0) / psi).toBeCloseTo(111, 0);
    const cemented = recordOf(`${plastic}grout 0 - 100 neat cement`);
    const setting = figureIn(cemented, 'casing.1.collapse-resistance-setting');
    expect((setting.value ?? 0) / psi).toBeCloseTo(0.22 * 111, 0);
    expect(setting.caution).toContain('no permission');
    const ids = recordOf(`${plastic}grout 0 - 100 bentonite chips`).figures.map(({ id }) => id);
    expect(ids).not.toContain('casing.1.collapse-resistance-setting');
  });
});

describe('joints', () => {
  const text = 'casing 0 - 19.5 steel 168.3 x 6.4 welded\njoints 3 x 6.1, 1.55';

  test('are added up against the string, and the welds are counted', () => {
    expect(valueIn(text, 'casing.1.joints-length')).toBeCloseTo(19.85, 9);
    const difference = figureIn(recordOf(text), 'casing.1.joints-difference');
    expect(difference.value).toBeCloseTo(0.35, 9);
    expect(difference.text).toBe('0.35 m');
    expect(figureIn(recordOf(text), 'casing.1.connections')).toMatchObject({ value: 3, text: '3' });
    expect(figureIn(recordOf(text), 'casing.1.connections').title).toContain('welds');
  });

  test('whose length is not known are waited for', () => {
    const record = recordOf('casing 0 - 19.5 steel 168.3 x 6.4\njoints 6.1, ?');
    expect(figureIn(record, 'casing.1.joints-difference').waitsFor).toEqual(['the length of joint 2']);
    expect(figureIn(record, 'casing.1.connections').value).toBe(1);
  });
});
