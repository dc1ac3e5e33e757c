import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Formula } from '../../server/calculations/index.ts';
import * as calculations from '../../server/calculations/index.ts';

const formulas = Object.entries(calculations)
  .filter(([name]) => name.startsWith('about'))
  .map(([name, formula]) => [name, formula as unknown as Formula] as const);

describe('every formula', () => {
  it.each(formulas)('%s can be checked by hand', (_, formula) => {
    expect(formula.name).toMatch(/^\S.+\S$/);
    expect(formula.text).toMatch(/^\S.+[^.]$/);
    expect(formula.source.length).toBeGreaterThan(5);
    for (const text of [formula.range, formula.caution]) expect(text === null || text.length > 5).toBe(true);
  });

  it('has a name of its own', () => {
    const names = formulas.map(([, formula]) => formula.name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has a caution where work can hurt someone', () => {
    const { aboutPressureDifference, aboutHoistLoad, aboutBuoyedWeight, aboutSteelCollapse } = calculations;
    const { aboutPlasticCollapse, aboutLiquidDose, aboutGranulesDose, aboutWaterLift, aboutCooperJacob } = calculations;
    expect(aboutPressureDifference.caution).toMatch(/local code/);
    expect(aboutHoistLoad.caution).toMatch(/rated load/);
    expect(aboutBuoyedWeight.caution).toMatch(/rises/);
    expect(aboutSteelCollapse.caution).toMatch(/local code/);
    expect(aboutPlasticCollapse.caution).toMatch(/heats/);
    expect(calculations.aboutPlasticHeat.caution).toMatch(/no permission/);
    expect(aboutLiquidDose.caution).toMatch(/never mix/);
    expect(aboutGranulesDose.caution).toMatch(/goggles/);
    expect(aboutWaterLift.caution).toMatch(/bleed/);
    expect(aboutCooperJacob.caution).toMatch(/no storage coefficient/);
  });
});

describe('the folder', () => {
  const folder = new URL('../../server/calculations/', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
  const helpers = ['index.ts', 'formula.ts', 'constants.ts', 'pumping/readings.ts'];

  it.each(files.filter((file) => !helpers.includes(file)))(
    '%s says what it computes, from where, with an example',
    (file) => {
      const source = readFileSync(new URL(file, folder), 'utf8');
      expect(source).toMatch(/export const about: Formula/);
      if (!file.endsWith('levels.ts')) expect(source).toMatch(/Source:[\s\S]+Worked example:/);
    },
  );

  it.each(files.filter((file) => file !== 'index.ts'))('%s is in the index', (file) => {
    expect(readFileSync(new URL('index.ts', folder), 'utf8')).toContain(`from './${file}'`);
  });
});
