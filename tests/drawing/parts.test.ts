import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axisTicks, depthScale, tickStep } from '../../server/drawing/depth-scale.ts';
import { depthWindow } from '../../server/drawing/depth-window.ts';
import { cleanText, escapeText } from '../../server/drawing/escape.ts';
import { placeLayers } from '../../server/drawing/layers.ts';
import { spread, type Wish } from '../../server/drawing/spread.ts';
import { textWidth, types, wrapped } from '../../server/drawing/text.ts';
import { drawnFills, fillLook } from '../../server/drawing/tiles/fill-tiles.ts';
import { drawnNumbers, groundTile } from '../../server/drawing/tiles/ground-tiles.ts';
import { depthText, depthWithUnit, measureText, numberText } from '../../server/drawing/words.ts';
import { recordOf } from '../record/record-of.ts';
import { boxOf } from './boxes.ts';

const wishes = fc.array(
  fc.record({ at: fc.double({ min: 0, max: 200, noNaN: true }), height: fc.double({ min: 1, max: 8, noNaN: true }) }),
  { maxLength: 20 },
);
const cost = (list: readonly Wish[], tops: readonly number[]): number =>
  list.reduce((sum, wish, n) => sum + (wish.at - (tops[n] ?? 0)) ** 2, 0);

describe('labels spread', () => {
  test('in order, without overlap, between top and bottom', () => {
    fc.assert(
      fc.property(wishes, (list) => {
        const sorted = [...list].sort((a, b) => a.at - b.at);
        const tops = spread(sorted, 0, 220);
        for (const [n, top] of tops.entries()) {
          expect(top).toBeGreaterThanOrEqual(-1e-9);
          expect(top + (sorted[n]?.height ?? 0)).toBeLessThanOrEqual(220 + 1e-6);
          if (n > 0) expect(top).toBeGreaterThanOrEqual((tops[n - 1] ?? 0) + (sorted[n - 1]?.height ?? 0) - 1e-6);
        }
      }),
    );
  });

  test('no way to shift a run of neighbours together costs less', () => {
    fc.assert(
      fc.property(wishes, fc.nat(19), fc.nat(19), fc.double({ min: -3, max: 3, noNaN: true }), (list, a, b, by) => {
        const sorted = [...list].sort((x, y) => x.at - y.at);
        const tops = spread(sorted, -1000, 1200);
        const moved = tops.map((top, n) => (n >= Math.min(a, b) && n <= Math.max(a, b) ? top + by : top));
        const isAllowed = moved.every((top, n) => n === 0 || top >= (moved[n - 1] ?? 0) + (sorted[n - 1]?.height ?? 0));
        if (isAllowed) expect(cost(sorted, moved)).toBeGreaterThanOrEqual(cost(sorted, tops) - 1e-6);
      }),
    );
  });

  test('stay where they wish to be where there is room', () => {
    expect(
      spread(
        [
          { at: 5, height: 3 },
          { at: 20, height: 3 },
        ],
        0,
        100,
      ),
    ).toEqual([5, 20]);
  });
});

/* XML 1.0 (fifth edition), production 2, Char. */
const isXmlCharacter = (code: number): boolean =>
  code === 0x9 ||
  code === 0xa ||
  code === 0xd ||
  (code >= 0x20 && code <= 0xd7ff) ||
  (code >= 0xe000 && code <= 0xfffd) ||
  (code >= 0x10000 && code <= 0x10ffff);

describe('text', () => {
  /* Advance widths of Helvetica, from memory of its published metrics (Adobe AFM): H 722, a 556, m 833, b 556, u 556, r 333, g 556. */
  test('is measured by the metrics of Helvetica', () => {
    expect(textWidth('Hamburg', { ...types.body, size: 1000 })).toBe(722 + 556 + 833 + 556 + 556 + 333 + 556);
  });

  test('an accented letter is as wide as its base', () => {
    expect(textWidth('Ñandú', types.body)).toBeCloseTo(textWidth('Nandu', types.body), 9);
  });

  test('rows fit their width, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 300 }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        (text, width) => {
          const rows = wrapped(text, types.body, width, 4);
          expect(rows.length).toBeLessThanOrEqual(4);
          for (const row of rows) expect(textWidth(row, types.body)).toBeLessThanOrEqual(width + 1e-9);
        },
      ),
    );
  });

  test('every word is kept where the rows suffice', () => {
    const text = 'Limestone, dark grey, hard, with some thin seams of shale';
    expect(wrapped(text, types.body, 30, 9).join(' ')).toBe(text);
    expect(wrapped(text, types.body, 30, 2).at(-1)).toMatch(/…$/);
  });

  test('has no character that XML forbids, and loses no other', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect([...cleanText(text)].filter((mark) => !isXmlCharacter(mark.codePointAt(0) ?? 0))).toEqual([]);
        expect([...cleanText(text)]).toHaveLength([...text].length);
      }),
    );
    expect(cleanText('a\ud800b\udc00c\u0000d\ud83d\ude00')).toBe('a\ufffdb\ufffdc\ufffdd\ud83d\ude00');
    expect(escapeText(`<a href="x" b='y'>&`)).toBe('&lt;a href=&quot;x&quot; b=&#39;y&#39;&gt;&amp;');
  });
});

describe('patterns', () => {
  const ground = (fgdc: number | null, family: string) => ({ class: family, rock: true, fgdc });

  /* Numbers of FGDC-STD-013-2006, section 37, from memory. */
  test.each([601, 607, 616, 619, 620, 627, 642, 657, 658, 681, 682, 683, 702, 705, 708, 717, 718])(
    '%i has one of its own',
    (number) => {
      expect(drawnNumbers).toContain(number);
      expect(groundTile(ground(number, 'sedimentary')).id).toContain(String(number));
    },
  );

  test('no two are alike', () => {
    const looks = drawnNumbers.map((number) => JSON.stringify(groundTile(ground(number, 'soil')).shapes));
    expect(new Set(looks).size).toBe(looks.length);
    const fills = [...drawnFills, null].map((fill) => JSON.stringify(fillLook(fill).tile.shapes));
    expect(new Set(fills).size).toBe(fills.length);
  });

  test('stand within their tile, save strokes that go on in the next', () => {
    for (const number of drawnNumbers) {
      const { width, height, shapes } = groundTile(ground(number, 'soil'));
      for (const box of shapes.map(boxOf)) {
        expect(box.x + box.width).toBeGreaterThan(-0.01);
        expect(box.x).toBeLessThan(width + 0.01);
        expect(box.y).toBeLessThan(height + 0.01);
      }
    }
  });

  test('an unknown number takes its family, an unknown family a blank', () => {
    expect(groundTile(ground(999, 'crystalline')).id).toBe('ground-crystalline');
    expect(groundTile(ground(null, 'constructor')).id).toBe('ground-unknown');
    expect(groundTile(null).id).toBe('ground-unknown');
    expect(fillLook('constructor').name).toBe(fillLook(null).name);
  });
});

describe('layers', () => {
  const layersOf = (strata: string, hole = 61) => {
    const { log } = recordOf(`hole\n  0 - ${hole} 152\nstrata\n${strata}`);
    return placeLayers(log.strata, log.totalDepth);
  };

  test('a layer of unknown base reaches to the next, with a doubtful contact', () => {
    const { layers } = layersOf('  0 - ? clay\n  12 - 20 sand\n');
    expect(layers[0]).toMatchObject({ top: 0, bottom: 12, topContact: 'sharp', bottomContact: 'doubtful' });
  });

  test('the last one reaches to the bottom of the hole', () => {
    expect(layersOf('  0 - 5 clay\n  - ? limestone\n').layers[1]).toMatchObject({
      top: 5,
      bottom: 61,
      bottomContact: 'doubtful',
    });
  });

  test('crossed depths are put in order and doubted', () => {
    expect(layersOf('  9 - 4 sand\n').layers[0]).toMatchObject({ top: 4, bottom: 9, topContact: 'doubtful' });
  });

  test('about and doubtful are told apart', () => {
    expect(layersOf('  0 - ~5 clay\n  - 9? sand\n').layers.map((layer) => layer.bottomContact)).toEqual([
      'approximate',
      'doubtful',
    ]);
  });
});

describe('the depths shown', () => {
  const windowOf = (text: string) => depthWindow(recordOf(text));

  test('reach from the top of the casing to the deepest thing logged', () => {
    expect(windowOf('hole\n  0 - 61 152\nstrata\n  0 - 62 clay\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n')).toEqual({
      top: -0.45,
      bottom: 62,
    });
  });

  test('leave out what can only be a slip of the pen', () => {
    expect(windowOf('hole\n  0 - 61 152\nstrata\n  0 - 6100 clay\ncasing +450 - 7.2 steel 168.3 x 6.4\n')).toEqual({
      top: -6.1,
      bottom: 61,
    });
  });

  test('a hole that is only begun does not hide the layers below', () => {
    expect(windowOf('hole\n  0 - 7.2 254\nstrata\n  0 - 61 clay\n').bottom).toBe(61);
  });
});

describe('axes', () => {
  test('marks are round numbers, far enough apart to be read', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (mmPerUnit) => {
        const step = tickStep(mmPerUnit, 9);
        expect(step * mmPerUnit).toBeGreaterThanOrEqual(9 - 1e-6);
        expect(step * mmPerUnit).toBeLessThan(9 * 2.5 + 1e-6);
        expect(['1', '2', '5']).toContain(step.toExponential()[0]);
        expect(step.toExponential()).toMatch(/^[125]e/);
      }),
    );
  });

  test('stand where their depth is', () => {
    const scale = depthScale({ top: -1, bottom: 61 }, 40, 138, 'm');
    const at20 = axisTicks(scale, 'm', 1, 0).find((tick) => tick.value === 20);
    expect(at20?.y).toBeCloseTo(40 + 21 * scale.mmPerMetre, 9);
  });

  test('the body is at least as high as asked, and not much higher', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1200, noNaN: true }), (bottom) => {
        const scale = depthScale({ top: 0, bottom }, 0, 138, 'm');
        expect(bottom * scale.mmPerMetre).toBeGreaterThanOrEqual(138 - 1e-6);
        expect(bottom * scale.mmPerMetre).toBeLessThan(138 * 1.4);
      }),
    );
  });
});

describe('values in words', () => {
  test('a depth has its unit and its datum', () => {
    const { log } = recordOf(
      'casing +0.4 - 7 steel 168.3 x 6.4\nwater\n  level 3.21 toc\n  level 12 ft\n  level +0.5\n',
    );
    const levels = log.water.levels.map(({ level }) => depthWithUnit(level, 'm'));
    expect(levels).toEqual(['3.21 m toc', '12 ft', '+0.5 m']);
    expect(log.water.levels.map(({ level }) => depthText(level, 'm'))).toEqual(['3.21 toc', '12 ft', '+0.5']);
  });

  test('keep the digits they were written with', () => {
    expect(numberText(5.2, 2)).toBe('5.20');
    expect(numberText(6.25, 0)).toBe('6.25');
    expect(numberText(Number.NaN, 1)).toBe('?');
  });

  test('say what is unknown, about, doubtful, bounded', () => {
    const { log } = recordOf(
      'water\n  38 fresh, ~25 L/min\n  40 fresh, 25? L/min\n  41 fresh, ? L/min\n  42 fresh, >200 L/min\n',
    );
    expect(log.water.found.map((found) => measureText(found.rate))).toEqual([
      '~25 L/min',
      '25? L/min',
      '? L/min',
      '>200 L/min',
    ]);
  });
});
