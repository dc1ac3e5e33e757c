import { describe, it } from 'vitest';
import { entranceVelocity, screenLength } from '../../server/calculations/index.ts';
import { expectNear, figureOf, hour } from './measures.ts';

describe('screen', () => {
  // Davis, Water and Wastewater Engineering (2010), p. 4-38: 32 m³/h, 0.097 m²/m, 0.010 m/s: 9.16 m of screen.
  it('needs 9.16 m for 32 m³/h at 0.010 m/s', () => {
    const length = figureOf(screenLength(32 / hour, 0.097, 0.01));
    expectNear(length, 9.16, 0.005);
    expectNear(figureOf(entranceVelocity(32 / hour, 0.097, length)), 0.01, 1e-12);
  });
});
