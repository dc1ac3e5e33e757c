import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import type { Quantity } from '../../grammar/tree.ts';
import { toSi, unitById } from '../../grammar/units.ts';
import { readNotes } from '../../server/import/index.ts';

/** A layer of a made-up log: its base in tenths of its unit, and its principal material in the notation's own word. */
interface Layer {
  readonly base: number;
  readonly material: string;
  readonly colour: string;
}

/** Words as crews write them, by the notation's own. */
const materials: Readonly<Record<string, readonly string[]>> = {
  topsoil: ['topsoil', 'top soil', 'ts'],
  clay: ['clay', 'cl', 'Clay'],
  sand: ['sand', 'sd', 'Sand'],
  gravel: ['gravel', 'gvl', 'grvl'],
  till: ['till', 'glacial till'],
  limestone: ['lime', 'limestone', 'lst'],
  shale: ['shale', 'sh'],
  granite: ['granite', 'Granite'],
  hardpan: ['hardpan', 'hard pan'],
};

const colours: Readonly<Record<string, readonly string[]>> = {
  brown: ['brown', 'brn'],
  grey: ['grey', 'gray', 'gry'],
  red: ['red'],
  blue: ['blue', 'blu'],
};

const layers: fc.Arbitrary<readonly Layer[]> = fc
  .array(
    fc.record({
      thickness: fc.integer({ min: 1, max: 400 }),
      material: fc.constantFrom(...Object.keys(materials)),
      colour: fc.constantFrom(...Object.keys(colours)),
    }),
    { minLength: 3, maxLength: 12 },
  )
  .map((each) => {
    let base = 0;
    return each.map(({ thickness, material, colour }) => {
      base += thickness;
      return { base, material, colour };
    });
  });

type Unit = 'm' | 'ft';

interface Written {
  readonly layers: readonly Layer[];
  readonly unit: Unit;
  /** Which of the spellings is written, and how figures carry their unit. */
  readonly pick: number;
}

const written: fc.Arbitrary<Written> = fc.record({
  layers,
  unit: fc.constantFrom<Unit>('m', 'ft'),
  pick: fc.nat({ max: 5 }),
});

const figure = (tenths: number): string =>
  tenths % 10 === 0 ? String(tenths / 10) : `${Math.floor(tenths / 10)}.${tenths % 10}`;

const spelling = (forms: readonly string[] | undefined, pick: number): string => forms?.[pick % forms.length] ?? '';

const words = ({ material, colour }: Layer, pick: number): string =>
  pick % 2 === 0
    ? `${spelling(colours[colour], pick)} ${spelling(materials[material], pick)}`
    : `${spelling(materials[material], pick)}, ${spelling(colours[colour], pick)}`;

const marks: Readonly<Record<Unit, readonly string[]>> = { m: [' m', 'm', ' metres'], ft: ["'", ' ft', ' feet'] };

const topOf = ({ layers: all }: Written, at: number): number => all[at - 1]?.base ?? 0;

const eachLine = (log: Written, line: (layer: Layer, top: number, mark: string) => string): string =>
  log.layers.map((layer, at) => line(layer, topOf(log, at), spelling(marks[log.unit], log.pick))).join('\n');

/** The same log as different crews write it. */
const styles: Readonly<Record<string, (log: Written) => string>> = {
  'depths first, unit on both': (log) =>
    eachLine(
      log,
      (layer, top, mark) => `${figure(top)}${mark} - ${figure(layer.base)}${mark} ${words(layer, log.pick)}`,
    ),
  'depths first, to, unit once': (log) =>
    eachLine(log, (layer, top, mark) => `${figure(top)} to ${figure(layer.base)}${mark} ${words(layer, log.pick)}`),
  'words first': (log) =>
    eachLine(log, (layer, top, mark) => `${words(layer, log.pick)} ${figure(top)}–${figure(layer.base)}${mark}`),
  'words first, with a leader': (log) =>
    eachLine(log, (layer, top, mark) => `${words(layer, 2)} ........ ${figure(top)} - ${figure(layer.base)}${mark}`),
  'bases alone': (log) =>
    eachLine(log, (layer, _, mark) => `${words(layer, log.pick)} to ${figure(layer.base)}${mark}`),
  'thickness of each': (log) =>
    eachLine(log, (layer, top, mark) => `${figure(layer.base - top)}${mark} of ${words(layer, 2 * log.pick)}`),
  'bottom up': (log) =>
    eachLine(log, (layer, top, mark) => `${figure(top)} - ${figure(layer.base)}${mark} ${words(layer, log.pick)}`)
      .split('\n')
      .reverse()
      .join('\n'),
  CSV: (log) =>
    `From (${log.unit}),To (${log.unit}),Description\n${eachLine(log, (layer, top) => `${figure(top)},${figure(layer.base)},"${words(layer, log.pick)}"`)}`,
  'a pasted table of thicknesses': (log) =>
    `Material\tThickness (${log.unit})\n${eachLine(log, (layer, top) => `${words(layer, log.pick)}\t${figure(layer.base - top)}`)}`,
  'a web page': (log) =>
    `| Depth, ${log.unit} | Formation |\n|---|---|\n${eachLine(log, (layer, top) => `| ${figure(top)} - ${figure(layer.base)} | ${words(layer, log.pick)} |`)}`,
};

interface Read {
  readonly top: number;
  readonly base: number;
  readonly material: string;
}

function metres(quantity: Quantity | null, id: string): number {
  const unit = unitById(id);
  return unit === undefined || quantity === null || quantity.number === null ? Number.NaN : toSi(quantity.number, unit);
}

/** What a log's `strata` says, in metres. */
function strataIn(text: string, unit: Unit): Read[] {
  return parseText(text).lines.flatMap(({ row, depths, items }): Read[] => {
    const description = items.find(({ slot }) => slot === 'description')?.value;
    if (row !== 'strata.line' || depths?.kind !== 'interval' || description?.kind !== 'description') return [];
    const { from, to } = depths;
    return [
      {
        top: metres(from, from?.unit?.id ?? to.unit?.id ?? unit),
        base: metres(to, to.unit?.id ?? unit),
        material: description.description.principal?.id ?? '',
      },
    ];
  });
}

test.each(Object.entries(styles))('a random log written in the style "%s" is read back as it was', (_, write) => {
  fc.assert(
    fc.property(written, (log) => {
      const read = readNotes(write(log));
      expect(read.questions).toEqual([]);
      const found = strataIn(read.text, log.unit);
      const factor = log.unit === 'm' ? 0.1 : 0.03048;
      expect(found.map(({ material }) => material)).toEqual(log.layers.map(({ material }) => material));
      for (const [at, { top, base }] of found.entries()) {
        expect(top).toBeCloseTo(topOf(log, at) * factor, 9);
        expect(base).toBeCloseTo((log.layers[at]?.base ?? 0) * factor, 9);
      }
    }),
    { numRuns: 100 },
  );
});
