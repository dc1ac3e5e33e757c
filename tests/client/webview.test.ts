import { readFileSync } from 'node:fs';
import { build } from 'esbuild';
import { describe, expect, test, vi } from 'vitest';
import { drawingSize, pictureSize, withFaces } from '../../client/export/picture-size.ts';
import { Pictures } from '../../client/preview/pictures.ts';
import { nearestLine } from '../../client/webview/nearest-line.ts';
import { roomFor } from '../../client/webview/room.ts';
import { zoomByKey, zoomWithin } from '../../client/webview/zoom-steps.ts';
import { drawingFile, drawWell } from '../../server/drawing/index.ts';
import { paints, paintValue } from '../../server/drawing/paints.ts';
import type { Paint } from '../../server/drawing/shapes.ts';
import { recordOf } from '../record/record-of.ts';

test("the preview's script stays under 60 kB", async () => {
  const { outputFiles } = await build({
    entryPoints: ['client/webview/main.ts'],
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    write: false,
  });
  expect(outputFiles).toHaveLength(1);
  expect(outputFiles[0]?.contents.byteLength).toBeGreaterThan(1000);
  expect(outputFiles[0]?.contents.byteLength).toBeLessThan(60_000);
});

test("the dark preview's colours are those of a dark drawing", () => {
  const css = readFileSync('client/webview/preview.css', 'utf8');
  const dark = /\.vscode-dark \{([^}]*)\}/.exec(css)?.[1] ?? '';
  const colours = [...dark.matchAll(/--dh-([a-z0-9-]+): (#[0-9a-f]{6});/g)].map(([, name, colour]) => [name, colour]);
  const drawn = colours.filter(([name]) => name !== undefined && Object.hasOwn(paints, name));
  expect(drawn.length).toBeGreaterThan(15);
  expect(drawn).toEqual(drawn.map(([name]) => [name, paintValue(name as Paint, 'dark')]));
});

describe('zoom', () => {
  test.each([
    ['+', 1, 1.25],
    ['=', 1, 1.25],
    ['-', 1.25, 1],
    ['0', 3, 1],
    ['+', 8, 8],
    ['-', 0.5, 0.5],
  ])('%s at %d gives %d', (key, zoom, expected) => {
    expect(zoomByKey(key, zoom)).toBeCloseTo(expected, 9);
  });

  test('other keys are none of its business', () => {
    for (const key of ['a', 'Enter', 'toString', 'ArrowUp']) expect(zoomByKey(key, 2)).toBeNull();
  });

  test('what was kept of a page of long ago may be anything', () => {
    expect([zoomWithin(Number.NaN), zoomWithin(1e9), zoomWithin(-3)]).toEqual([1, 8, 0.5]);
  });
});

describe('the room for a drawing', () => {
  test('goes by steps of 5 mm, so that a pane that is being dragged asks for few drawings', () => {
    const asked = new Set(Array.from({ length: 100 }, (_, n) => roomFor(500 + n, 13)));
    expect(asked.size).toBeLessThanOrEqual(6);
  });

  test('is no more than a drawing asks for, and never nothing', () => {
    expect(roomFor(5000, 13)).toBe(190);
    expect(roomFor(0, 13)).toBe(5);
  });

  test('is less where the letters are larger', () => {
    expect(roomFor(600, 26)).toBeLessThan(roomFor(600, 13));
  });
});

describe('the line that stands for another', () => {
  test('is itself, or the nearest above; the first for what is above all', () => {
    const lines = [7, 3, 12, 3];
    expect([3, 5, 7, 11, 40, 0].map((line) => nearestLine(lines, line))).toEqual([3, 3, 7, 7, 12, 3]);
    expect(nearestLine([], 4)).toBeNull();
  });
});

describe('a picture of a drawing', () => {
  const svg = drawingFile(drawWell(recordOf('well A>B"\nhole\n  0 - 20 150\nstrata\n  0 - 20 clay\n')));

  test('has 200 dots per inch', () => {
    const size = drawingSize(svg);
    expect(size?.widthMm).toBe(190);
    expect(pictureSize(25.4, 50.8)).toEqual({ width: 200, height: 400 });
  });

  test('is no larger than a canvas holds', () => {
    const { width, height } = pictureSize(190, 9000);
    expect(Math.max(width, height)).toBeLessThanOrEqual(16_000);
    expect(width * height).toBeLessThanOrEqual(60e6 * 1.01);
    expect(height / width).toBeCloseTo(9000 / 190, 0);
  });

  test('carries its faces inside its own element, whatever the name of the well', () => {
    const faced = withFaces(svg, [{ weight: 'bold', base64: 'AAAA' }]);
    expect(faced).toMatch(
      /<svg [^>]*><style>@font-face\{font-family:Arial;font-weight:bold;src:url\(data:font\/ttf;base64,AAAA\)\}<\/style>/,
    );
    expect(faced.replace(/<style>@font-face.*?<\/style>/, '')).toBe(svg);
  });

  test('what is no drawing has no size', () => {
    expect(drawingSize('<html></html>')).toBeNull();
  });
});

describe('pictures that a page is asked for', () => {
  test('come by their number, in any order', async () => {
    const ordered: number[] = [];
    const pictures = new Pictures(({ id }) => ordered.push(id));
    const order = { svg: '', width: 1, height: 1 };
    const both = [pictures.take(order), pictures.take(order)];
    pictures.taken(ordered[1] ?? 0, new Uint8Array([2]));
    pictures.taken(ordered[0] ?? 0, new Uint8Array([1]));
    expect(await Promise.all(both)).toEqual([new Uint8Array([1]), new Uint8Array([2])]);
  });

  test('are given up when the page does not answer, and when it is gone', async () => {
    vi.useFakeTimers();
    try {
      const pictures = new Pictures(() => {});
      const late = pictures.take({ svg: '', width: 1, height: 1 });
      vi.advanceTimersByTime(60_000);
      expect(await late).toBeNull();
      const lost = pictures.take({ svg: '', width: 1, height: 1 });
      pictures.dispose();
      expect(await lost).toBeNull();
    } finally {
      vi.useRealTimers();
    }
  });
});
