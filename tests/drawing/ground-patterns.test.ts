import { describe, expect, test } from 'vitest';
import { termLists } from '../../grammar/terms/index.ts';
import { paints } from '../../server/drawing/paints.ts';
import { drawnNumbers, groundTile } from '../../server/drawing/tiles/ground-tiles.ts';
import { stratumTile } from '../../server/drawing/tiles/second-materials.ts';
import { recordOf } from '../record/record-of.ts';

const grounds = termLists.flatMap(({ terms }) => terms.flatMap(({ id, ground }) => (ground ? [{ id, ground }] : [])));

/* Numbers of section 37 of FGDC-STD-013-2006 (from memory): gravel, sand, silt, sandy shale, clay, limestone, dolomite,
   peat, coal, till or diamicton (first to third), quartzite, schist, gneiss, basalt, granite. */
const everyday = [601, 607, 616, 619, 620, 627, 642, 657, 658, 681, 682, 683, 702, 705, 708, 717, 718];

describe('patterns of ground', () => {
  test.each(everyday)('%i has a pattern of its own', (number) => {
    expect(drawnNumbers).toContain(number);
  });

  test('every number that a term names is drawn', () => {
    const named = [...new Set(grounds.flatMap(({ ground }) => ground.fgdc ?? []))];
    expect(named.length).toBeGreaterThan(40);
    expect(named.filter((number) => !drawnNumbers.includes(number))).toEqual([]);
  });

  test('every ground but the unknown has marks that do not hang on its tint', () => {
    const bare = grounds.filter(({ ground }) => groundTile(ground).shapes.length === 0);
    expect(grounds.length).toBeGreaterThan(200);
    expect(bare.filter(({ ground }) => ground.class !== 'unknown')).toEqual([]);
  });

  test('patterns of different numbers have different marks', () => {
    const drawn = new Map(
      drawnNumbers.map((fgdc) => [fgdc, JSON.stringify(groundTile({ class: 'rock', rock: true, fgdc }).shapes)]),
    );
    expect(new Set(drawn.values()).size).toBe(drawn.size);
  });

  test('marks are black enough on white: ink is darker than #333333', () => {
    expect(Number.parseInt(paints.ink.slice(1, 3), 16)).toBeLessThan(0x33);
  });

  test('marks stay within their tile, but for what the edge cuts', () => {
    for (const { ground } of grounds) {
      const { width, height, shapes } = groundTile(ground);
      for (const shape of shapes)
        if (shape.kind === 'ellipse') {
          expect(shape.x).toBeLessThanOrEqual(width);
          expect(shape.y).toBeLessThanOrEqual(height);
        }
    }
  });
});

describe('second materials', () => {
  const tileOf = (line: string) => {
    const [stratum] = recordOf(`strata\n  0 - 5 ${line}\n`).log.strata;
    if (stratum === undefined) throw new Error('no layer');
    return stratumTile(stratum);
  };

  test('what there is much of shows, a trace does not', () => {
    expect(tileOf('silty clay').id).not.toBe(tileOf('clay').id);
    expect(tileOf('sand and gravel').shapes.length).toBeGreaterThan(tileOf('sand').shapes.length);
    expect(tileOf('clay, trace gravel').id).toBe(tileOf('clay').id);
  });
});
