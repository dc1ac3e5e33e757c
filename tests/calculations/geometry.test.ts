import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AnnulusPiece,
  annulusArea,
  annulusVolume,
  filledTop,
  meanDiameterFilled,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const piece = (top: number, bottom: number, outer: number, inner: number): AnnulusPiece => ({
  top,
  bottom,
  outer,
  inner,
  volume: figureOf(annulusVolume(outer, inner, bottom - top)),
});

describe('annulus area', () => {
  it('is refused where the string does not fit', () => {
    expectRefused(
      /as wide as/,
      annulusArea(0.1, 0.1),
      annulusArea(0.1, 0.2),
      annulusArea(0, 0),
      annulusArea(Number.NaN, 0),
    );
    expectRefused(/below zero/, annulusArea(0.1, -0.1), annulusArea(0.1, Number.NaN));
  });

  it('of a ring and of the circle within it add up to the outer circle', () => {
    fc.assert(
      fc.property(size(0.01, 1), size(0.001, 0.99), (outer, share) => {
        const inner = outer * share;
        const parts = figureOf(annulusArea(outer, inner)) + figureOf(annulusArea(inner, 0));
        expect(parts / figureOf(annulusArea(outer, 0))).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('annulus volume', () => {
  it('is area times length, and nothing over no length', () => {
    expect(figureOf(annulusVolume(0.3, 0.2, 4))).toBeCloseTo((Math.PI / 4) * 0.05 * 4, 12);
    expect(figureOf(annulusVolume(0.3, 0.2, 0))).toBe(0);
    expectRefused(/length of the annulus/, annulusVolume(0.3, 0.2, -1), annulusVolume(0.3, 0.2, Number.NaN));
    expectRefused(/as wide as/, annulusVolume(0.2, 0.2, 1));
  });

  it('is the same wherever the annulus is cut', () => {
    fc.assert(
      fc.property(size(0.2, 0.6), size(0.01, 0.19), size(0, 50), size(0, 50), (outer, inner, above, below) => {
        const parts = figureOf(annulusVolume(outer, inner, above)) + figureOf(annulusVolume(outer, inner, below));
        expect(parts).toBeCloseTo(figureOf(annulusVolume(outer, inner, above + below)), 9);
      }),
    );
  });

  it('of nested annuli and of the core add up to the hole', () => {
    fc.assert(
      fc.property(fc.uniqueArray(size(0.01, 1), { minLength: 2, maxLength: 6 }), size(0.1, 90), (diameters, length) => {
        const widest = [...diameters].sort((a, b) => b - a);
        const parts = widest.map((outer, index) => figureOf(annulusVolume(outer, widest[index + 1] ?? 0, length)));
        const whole = figureOf(annulusVolume(widest[0] ?? 1, 0, length));
        expect(parts.reduce((sum, part) => sum + part, 0) / whole).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the top that a volume fills to', () => {
  const pieces = [piece(2, 6, 0.4, 0.2), piece(6, 10, 0.3, 0.2)];
  const lower = (Math.PI / 4) * (0.3 ** 2 - 0.2 ** 2);
  const upper = (Math.PI / 4) * (0.4 ** 2 - 0.2 ** 2);

  it('rises from the bottom, through the narrow piece first', () => {
    expect(figureOf(filledTop(0, pieces))).toEqual({ top: 10, height: 0, surplus: 0 });
    const half = figureOf(filledTop(lower * 2, pieces));
    expect(half.top).toBeCloseTo(8, 10);
    expect(half.height).toBeCloseTo(2, 10);
    const beyond = figureOf(filledTop(lower * 4 + upper * 1, [...pieces].reverse()));
    expect(beyond.top).toBeCloseTo(5, 10);
    expect(beyond.height).toBeCloseTo(5, 10);
    expect(beyond.surplus).toBe(0);
  });

  it('leaves the surplus', () => {
    const full = figureOf(filledTop(lower * 4 + upper * 4 + 0.1, pieces));
    expect(full.top).toBeCloseTo(2, 10);
    expect(full.height).toBeCloseTo(8, 10);
    expect(full.surplus).toBeCloseTo(0.1, 10);
    const [only] = [piece(2, 6, 0.4, 0.2)];
    expect(figureOf(filledTop(only?.volume ?? 0, only ? [only] : []))).toEqual({ top: 2, height: 4, surplus: 0 });
  });

  it('is refused where it cannot be known', () => {
    expectRefused(/below zero/, filledTop(-0.1, pieces), filledTop(Number.NaN, pieces));
    expectRefused(/no length/, filledTop(1, []));
  });

  it('never loses any of the volume', () => {
    fc.assert(
      fc.property(size(0, 3), (volume) => {
        const { top, height, surplus } = figureOf(filledTop(volume, pieces));
        const filled = lower * Math.min(4, height) + upper * Math.max(0, height - 4);
        expect(filled + surplus).toBeCloseTo(volume, 9);
        expect(top + height).toBeCloseTo(10, 9);
      }),
    );
  });
});

describe('the mean diameter that a volume fills', () => {
  it('is the hole where the volume is the annulus', () => {
    fc.assert(
      fc.property(size(0.2, 1), size(0.05, 0.19), size(1, 99), (hole, string, length) => {
        const whole = piece(0, length, hole, string);
        expect(figureOf(meanDiameterFilled(whole.volume, [whole]))).toBeCloseTo(hole, 9);
      }),
    );
  });

  it('looks at no wall, and averages over the strings', () => {
    const pieces = [piece(0, 1, 0.9, 0.2), piece(1, 4, 0.5, 0.1)];
    expect(figureOf(meanDiameterFilled(0, pieces))).toBeCloseTo(Math.sqrt((0.04 + 3 * 0.01) / 4), 12);
  });

  it('is refused without length or volume', () => {
    expectRefused(/no length/, meanDiameterFilled(1, []), meanDiameterFilled(1, [piece(2, 2, 0.3, 0.1)]));
    expectRefused(/below zero/, meanDiameterFilled(-1, [piece(0, 1, 0.3, 0.1)]), meanDiameterFilled(Number.NaN, []));
  });
});
