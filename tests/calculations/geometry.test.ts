import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AnnulusPiece,
  annulusArea,
  annulusPieces,
  annulusVolume,
  type DiameterSpan,
  filledTop,
  meanDiameterFilled,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const span = (top: number, bottom: number, diameter: number | null): DiameterSpan => ({ top, bottom, diameter });
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

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

describe('annulus pieces', () => {
  it('cut at every change, outside and inside', () => {
    const pieces = annulusPieces(0, 20, [span(0, 7, 0.254), span(7, 61, 0.152)], [span(-0.5, 12, 0.1143)]);
    expect(pieces.map(({ top, bottom, outer, inner }) => [top, bottom, outer, inner])).toEqual([
      [0, 7, 0.254, 0.1143],
      [7, 12, 0.152, 0.1143],
      [12, 20, 0.152, 0],
    ]);
    expect(pieces[0]?.volume).toBeCloseTo((Math.PI / 4) * (0.254 ** 2 - 0.1143 ** 2) * 7, 12);
    expect(pieces[2]?.volume).toBeCloseTo((Math.PI / 4) * 0.152 ** 2 * 8, 12);
  });

  it('take the inside of the next string out where one stands', () => {
    const pieces = annulusPieces(0, 10, [span(0, 10, 0.3), span(0, 4, 0.25)], [span(0, 10, 0.168)]);
    expect(pieces.map(({ bottom, outer }) => [bottom, outer])).toEqual([
      [4, 0.25],
      [10, 0.3],
    ]);
  });

  it('take the widest of several inner strings', () => {
    const [piece] = annulusPieces(0, 1, [span(0, 1, 0.3)], [span(0, 1, 0.1), span(0, 1, 0.2)]);
    expect(piece?.inner).toBe(0.2);
  });

  it('join where nothing changes', () => {
    const pieces = annulusPieces(0, 10, [span(0, 4, 0.3), span(4, 10, 0.3)], []);
    expect(pieces).toHaveLength(1);
    expect(pieces[0]).toMatchObject({ top: 0, bottom: 10, outer: 0.3, inner: 0 });
    expect(pieces[0]?.volume).toBeCloseTo(0.225 * Math.PI, 12);
  });

  it('do not join where only one wall stays', () => {
    expect(annulusPieces(0, 2, [span(0, 2, 0.3)], [span(0, 1, 0.1), span(1, 2, 0.2)])).toHaveLength(2);
    expect(annulusPieces(0, 2, [span(0, 1, 0.3), span(1, 2, 0.4)], [span(0, 2, 0.1)])).toHaveLength(2);
  });

  it('know nothing where a wall is missing or not written down', () => {
    const pieces = annulusPieces(0, 3, [span(0, 1, 0.3), span(1, 2, null)], [span(0, 3, 0.1)]);
    expect(pieces.map(({ outer, volume }) => [outer, volume === null])).toEqual([
      [0.3, false],
      [null, true],
    ]);
    expect(annulusPieces(0, 1, [span(0, 1, 0.3)], [span(0, 1, null)])[0]).toMatchObject({ inner: null, volume: null });
    expect(annulusPieces(0, 1, [span(0, 1, 0.3), span(0, 1, null)], [])[0]).toMatchObject({
      outer: null,
      volume: null,
    });
    expect(annulusPieces(0, 1, [span(0, 1, 0.1)], [span(0, 1, 0.2)])[0]).toMatchObject({
      outer: 0.1,
      inner: 0.2,
      volume: null,
    });
  });

  it('are none in an interval without length', () => {
    expect(annulusPieces(5, 5, [], [])).toEqual([]);
    expect(annulusPieces(5, 4, [span(0, 9, 1)], [])).toEqual([]);
  });

  it('sum to the same volume wherever the interval is cut', () => {
    fc.assert(
      fc.property(size(0.05, 0.95), size(0.05, 0.95), size(0.2, 0.6), size(0.01, 0.19), (cut, change, wide, string) => {
        const walls = [span(0, change, wide), span(change, 1, wide * 1.5)];
        const inner = [span(0, 1, string)];
        const volumeOf = (top: number, bottom: number): number =>
          figureOf(annulusVolume(annulusPieces(top, bottom, walls, inner)));
        expect((volumeOf(0, cut) + volumeOf(cut, 1)) / volumeOf(0, 1)).toBeCloseTo(1, 10);
      }),
    );
  });
});

describe('annulus volume', () => {
  const piece = (outer: number | null, inner: number | null, volume: number | null): AnnulusPiece => ({
    top: 1,
    bottom: 2,
    outer,
    inner,
    volume,
  });

  it('adds the pieces up', () => {
    expect(figureOf(annulusVolume([piece(1, 0, 0.2), piece(1, 0, 0.09)]))).toBeCloseTo(0.29, 12);
  });

  it('says which fact it waits for', () => {
    expectRefused(/no length/, annulusVolume([]));
    expectRefused(/wall outside is not known from 1 m to 2 m/, annulusVolume([piece(null, 0.1, null)]));
    expectRefused(/string is not known from 1 m to 2 m/, annulusVolume([piece(0.3, null, null)]));
    expectRefused(/as wide as the wall around it from 1 m to 2 m/, annulusVolume([piece(0.1, 0.2, null)]));
    expectRefused(/from 1.235 m to 2 m/, annulusVolume([{ ...piece(null, 0.1, null), top: 1.23456 }]));
  });
});

describe('the top that a volume fills to', () => {
  const pieces = annulusPieces(2, 10, [span(0, 6, 0.4), span(6, 10, 0.3)], [span(0, 10, 0.2)]);
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
  });

  it('is refused where it cannot be known', () => {
    expectRefused(/below zero/, filledTop(-0.1, pieces), filledTop(Number.NaN, pieces));
    expectRefused(/no length/, filledTop(1, []));
    expectRefused(/not known/, filledTop(1, annulusPieces(0, 1, [], [])));
  });

  it('never loses any of the volume', () => {
    fc.assert(
      fc.property(size(0, 3), (volume) => {
        const { top, surplus } = figureOf(filledTop(volume, pieces));
        const filled =
          top < 10
            ? annulusVolume(annulusPieces(top, 10, [span(0, 6, 0.4), span(6, 10, 0.3)], [span(0, 10, 0.2)]))
            : null;
        expect((filled ? figureOf(filled) : 0) + surplus).toBeCloseTo(volume, 9);
      }),
    );
  });
});

describe('the mean diameter that a volume fills', () => {
  it('is the hole where the volume is the annulus', () => {
    fc.assert(
      fc.property(size(0.2, 1), size(0.05, 0.19), size(1, 99), (hole, string, length) => {
        const pieces = annulusPieces(0, length, [span(0, length, hole)], [span(0, length, string)]);
        expect(figureOf(meanDiameterFilled(figureOf(annulusVolume(pieces)), pieces))).toBeCloseTo(hole, 9);
      }),
    );
  });

  it('needs no wall, and averages over the strings', () => {
    const pieces = annulusPieces(0, 4, [], [span(0, 1, 0.2), span(1, 4, 0.1)]);
    expect(figureOf(meanDiameterFilled(0, pieces))).toBeCloseTo(Math.sqrt((0.04 + 3 * 0.01) / 4), 12);
  });

  it('is refused without length, string or volume', () => {
    expectRefused(/no length/, meanDiameterFilled(1, []));
    expectRefused(/string is not known/, meanDiameterFilled(1, annulusPieces(0, 1, [], [span(0, 1, null)])));
    expectRefused(/below zero/, meanDiameterFilled(-1, annulusPieces(0, 1, [], [])));
  });
});
