import { describe, expect, test } from 'vitest';
import { circle, figureIn, fillIn, recordOf, valueIn } from './record-of.ts';

// Volumes are worked out by hand: π/4 (D² − d²) Δz of each piece.
const ring = (outer: number, inner: number, length: number): number => (circle(outer) - circle(inner)) * length;

const annulus = 'casing.1.grout.1.annulus-volume';

describe('what bounds an annulus', () => {
  test('the hole, piece by piece where its diameter changes', () => {
    const text = 'hole\n0 - 3 300\n- 10 250\ncasing 0 - 10 steel 168.3 x 6.4\ngrout 1 - 10 neat cement, 0.5 m3';
    expect(valueIn(text, annulus)).toBeCloseTo(ring(0.3, 0.1683, 2) + ring(0.25, 0.1683, 7), 9);
    expect(fillIn(text).pieces.map((piece) => [piece.top, piece.bottom, piece.bounds])).toEqual([
      [1, 3, 'hole'],
      [3, 10, 'hole'],
    ]);
  });

  test('the widest of several lines for one depth, as where a hole was reamed', () => {
    const text =
      'hole\n0 - 30 152\n0 - 10 254 reamed from 152\ncasing 0 - 10 steel 168.3 x 6.4\ngrout 0 - 10 neat cement';
    expect(valueIn(text, annulus)).toBeCloseTo(ring(0.254, 0.1683, 10), 9);
  });

  test('the inside of the next string out, where one stands, else the hole', () => {
    const text = [
      'hole\n0 - 12 400\n- 40 254',
      'casing 0 - 12 steel 323.8 x 9.5',
      'casing 0 - 40 steel 168.3 x 6.4\ngrout 0 - 40 neat cement',
    ].join('\n');
    const expected = ring(0.3238 - 0.019, 0.1683, 12) + ring(0.254, 0.1683, 28);
    expect(valueIn(text, 'casing.2.grout.1.annulus-volume')).toBeCloseTo(expected, 9);
    expect(fillIn(text).pieces.map((piece) => piece.bounds)).toEqual(['1', 'hole']);
  });

  test('of three strings the nearest out, in whatever order they are written', () => {
    const text = [
      'hole\n0 - 12 500\n- 40 254',
      'casing 0 - 40 steel 168.3 x 6.4\ngrout 0 - 12 neat cement',
      'casing 0 - 12 steel 406.4 x 9.5',
      'casing 0 - 12 steel 273 x 6.4',
      'liner 5 - 60 pvc 114.3 sdr 26',
    ].join('\n');
    expect(valueIn(text, annulus)).toBeCloseTo(ring(0.273 - 0.0128, 0.1683, 12), 9);
  });

  const temporary = (pulled: string, placed: string) =>
    `hole\n0 - 9 325\ncasing 0 - 9 steel 168.3 x 6.4\ngrout 0 - 9 neat cement, ${placed}\n` +
    `casing 0 - 9 steel 273 x 6.4 temporary, pulled ${pulled}`;

  test('a temporary string only while it stands', () => {
    const inCasing = ring(0.273 - 0.0128, 0.1683, 9);
    const inHole = ring(0.325, 0.1683, 9);
    expect(valueIn(temporary('2026-05-05 11:30', '2026-05-05 09:30'), annulus)).toBeCloseTo(inCasing, 9);
    expect(valueIn(temporary('2026-05-05 11:30', '2026-05-05 12:00'), annulus)).toBeCloseTo(inHole, 9);
    expect(valueIn(temporary('2026-05-04', '2026-05-05 12:00'), annulus)).toBeCloseTo(inHole, 9);
  });

  test('without the times of both, the volume waits for them', () => {
    const figure = figureIn(recordOf(temporary('2026-05-05', '2026-05-05')), annulus);
    expect(figure.value).toBeNull();
    expect(figure.waitsFor.join()).toContain('whether temporary casing 2 still stood');
  });

  test('a driven string has none', () => {
    const record = recordOf(
      'hole\n0 - 9 254\ncasing 0 - 9 steel 168.3 x 6.4 driven\nseal 0 - 3 bentonite chips, 4 x 50 lb bags',
    );
    expect(record.fills[0]).toMatchObject({ annulus: null, required: null, pieces: [] });
    expect(record.fills[0]?.unknown[0]?.why).toContain('driven');
    expect(record.figures.some((figure) => figure.id.endsWith('annulus-volume'))).toBe(false);
  });

  test('a screen of its own width', () => {
    const text =
      'hole\n0 - 36 254\ncasing 0 - 30 pvc 168.3 sdr 21\nscreen 30 - 36 stainless 114.3, slot 0.5\npack 27 - 36 20/40 sand';
    expect(valueIn(text, 'casing.1.pack.1.volume')).toBeCloseTo(ring(0.254, 0.1683, 3) + ring(0.254, 0.1143, 6), 9);
  });

  test('a pack fills the open hole below the foot as well', () => {
    const text = 'hole\n0 - 37 254\ncasing 0 - 30 pvc 168.3 sdr 21\nscreen 30 - 36 pvc 168.3\npack 27 - 37 sand';
    expect(valueIn(text, 'casing.1.pack.1.volume')).toBeCloseTo(ring(0.254, 0.1683, 9) + circle(0.254), 9);
  });
});

describe('what an annulus waits for', () => {
  test('a fill above ground counts from the ground down', () => {
    const text = 'hole\n0 - 7 254\ncasing +0.5 - 7 steel 168.3 x 6.4\ngrout +0.2 - 7 neat cement';
    expect(valueIn(text, annulus)).toBeCloseTo(ring(0.254, 0.1683, 7), 9);
    expect(fillIn(text).unknown).toEqual([{ top: -0.2, bottom: 0, why: 'above ground: no hole bounds it' }]);
  });

  test.each([
    [
      'the hole outside what is logged',
      'hole\n0 - 5 254\ncasing 0 - 7 steel 168.3 x 6.4\ngrout 0 - 7 neat cement',
      'the hole, 5 – 7 m',
    ],
    [
      'the diameter of the hole',
      'hole\n0 - 7 ?\ncasing 0 - 7 steel 168.3 x 6.4\ngrout 0 - 7 neat cement',
      'the diameter of the hole, 0 – 7 m',
    ],
    [
      'the size of the string',
      'hole\n0 - 7 254\ncasing 0 - 7 steel ?\ngrout 0 - 7 neat cement',
      'the outside diameter of casing 1',
    ],
    [
      'the foot of the fill',
      'hole\n0 - 7 254\ncasing 0 - 7 steel 168.3 x 6.4\ngrout 0 - ? neat cement',
      'the depths of the grout',
    ],
    [
      'the wall of the string around it',
      'hole\n0 - 7 400\ncasing 0 - 7 steel 168.3 x 6.4\ngrout 0 - 7 neat cement\ncasing 0 - 7 steel 273',
      'the wall or the inside diameter of casing 2',
    ],
  ])('%s', (_, text, fact) => {
    const figure = figureIn(recordOf(text), annulus);
    expect(figure.value).toBeNull();
    expect(figure.text).toBe('?');
    expect(figure.waitsFor).toContain(fact);
  });

  test('a string that does not fit has no annulus, and says so', () => {
    const text = 'hole\n0 - 7 150\ncasing 0 - 7 steel 168.3 x 6.4\ngrout 0 - 7 neat cement';
    expect(figureIn(recordOf(text), annulus)).toMatchObject({ value: null });
    expect(fillIn(text).unknown[0]?.why).toBe('casing 1 is as wide as the hole or wider');
  });

  test('a doubtful diameter makes the volume doubtful, not missing', () => {
    const text = 'hole\n0 - 7 254?\ncasing 0 - 7 steel 168.3 x 6.4\ngrout 0 - 7 neat cement';
    expect(figureIn(recordOf(text), annulus)).toMatchObject({ doubtful: true, waitsFor: [] });
    expect(figureIn(recordOf(text), 'casing.1.grout.1.required-volume').doubtful).toBe(true);
  });
});

describe('what is taken off the placed volume', () => {
  test('the plug left inside, the hole below the shoe and what came back; a top-up counts', () => {
    const text =
      'hole\n0 - 12.5 254\n- 60 152\ncasing +0.9 - 12 steel 168.3 x 6.4\n' +
      'grout 1.8 - 12 neat cement, 0.42 m3, plug inside 1.5, returned 60 L, top-up 40 L';
    const net = 0.42 + 0.04 - circle(0.1555) * 1.5 - circle(0.254) * 0.5 - 0.06;
    expect(fillIn(text).net).toBeCloseTo(net, 9);
    expect(valueIn(text, 'casing.1.grout.1.net-volume')).toBeCloseTo(net, 9);
    const perMetre = circle(0.254) - circle(0.1683);
    expect(valueIn(text, 'casing.1.grout.1.height-filled')).toBeCloseTo(Math.min(10.2, net / perMetre), 9);
    expect(fillIn(text).placed).toBeCloseTo(0.42, 9);
  });

  test('the hole below the foot as far as the grout is written', () => {
    const text = 'hole\n0 - 20 254\ncasing 0 - 12 steel 168.3 x 6.4\ngrout 0 - 12.4 neat cement, 0.5 m3';
    expect(fillIn(text).net).toBeCloseTo(0.5 - circle(0.254) * 0.4, 9);
    expect(valueIn(text, annulus)).toBeCloseTo(ring(0.254, 0.1683, 12), 9);
  });

  test('a plug in a string of unknown wall leaves the net volume open', () => {
    const text = 'hole\n0 - 12 254\ncasing 0 - 12 steel 168.3\ngrout 0 - 12 neat cement, 0.42 m3, plug inside 1.5';
    const figure = figureIn(recordOf(text), 'casing.1.grout.1.net-volume');
    expect(figure).toMatchObject({ value: null, waitsFor: ['the wall or the inside diameter of casing 1'] });
  });
});
