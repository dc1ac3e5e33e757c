import fc from 'fast-check';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { gwmlFormat } from '../../server/export/gwml/index.ts';
import { busyLog, sampleLogs, shallowLog } from '../drawing/logs.ts';
import { recordOf } from '../record/record-of.ts';
import { contextOf } from './context-of.ts';

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Element[];
  readonly text: string;
}

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: '',
  parseTagValue: false,
});

type Parsed = Readonly<Record<string, unknown>>;

function elementOf(parsed: Parsed): Element {
  const name = Object.keys(parsed).find((key) => key !== ':@') ?? '';
  const inside = parsed[name] as readonly Parsed[];
  return {
    name,
    attributes: (parsed[':@'] ?? {}) as Record<string, string>,
    children: inside.filter((each) => !('#text' in each)).map(elementOf),
    text: inside.map((each) => String(each['#text'] ?? '')).join(''),
  };
}

async function textOf(log: string): Promise<string> {
  const { files } = await gwmlFormat.make(recordOf(log), contextOf(log));
  return String(files[0]?.content);
}

async function wellOf(log: string): Promise<Element> {
  const text = await textOf(log);
  expect(XMLValidator.validate(text)).toBe(true);
  const [, root] = parser.parse(text) as readonly [Parsed, Parsed];
  return elementOf(root);
}

const everyElement = (element: Element): Element[] => [element, ...element.children.flatMap(everyElement)];
const all = (element: Element, name: string): Element[] => everyElement(element).filter((each) => each.name === name);
const only = (element: Element, name: string): Element => {
  const [found, more] = all(element, name);
  if (found === undefined || more !== undefined) expect.fail(`${all(element, name).length} elements ${name}`);
  return found;
};
const quantity = (element: Element): [number, string | undefined] => [
  Number(only(element, 'swe:value').text),
  only(element, 'swe:uom').attributes.code,
];

/* The order of OGC 16-032r2 (gwml2-well.xsd); elements out of order make a document that no reader takes. */
const orderOfWell = [
  'gml:description',
  'gml:name',
  'sam:sampledFeature',
  'sams:shape',
  'gwml2w:gwWellConstructedDepth',
  'gwml2w:gwWellConstruction',
  'gwml2w:gwWellLocation',
  'gwml2w:gwWellPurpose',
  'gwml2w:gwWellReferenceElevation',
  'gwml2w:gwWellStaticWaterDepth',
  'gwml2w:gwWellStatus',
  'gwml2w:gwWellTotalLength',
  'gwml2w:gwWellYield',
  'gwml2w:gwWellLicence',
  'gwml2w:gwWellGeology',
];

describe.each<readonly [string, string]>([['shallow', shallowLog], ['busy', busyLog], ...sampleLogs])(
  'the document of %s',
  (_, log) => {
    test('is a well whose parts stand in the order of the standard', async () => {
      const well = await wellOf(log);
      expect(well.name).toBe('gwml2w:GW_Well');
      const places = well.children.map(({ name }) => orderOfWell.indexOf(name));
      expect(places).not.toContain(-1);
      expect(places).toEqual(places.toSorted((a, b) => a - b));
    });

    test('gives each part an id of its own, and points at none that is not there', async () => {
      const elements = everyElement(await wellOf(log));
      const ids = elements.flatMap(({ attributes }) => attributes['gml:id'] ?? []);
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) expect(id).toMatch(/^[A-Za-z_][\w.-]*$/);
      const targets = elements
        .flatMap(({ attributes }) => attributes['xlink:href'] ?? [])
        .filter((each) => each.startsWith('#'));
      for (const target of targets) expect(ids).toContain(target.slice(1));
    });

    test('has every layer of the log, in metres', async () => {
      const layers = all(await wellOf(log), 'gwml2w:LogValue');
      const { strata } = recordOf(log).log;
      expect(layers).toHaveLength(strata.length);
      for (const [at, layer] of layers.entries()) {
        const bottom = strata[at]?.interval.bottom?.value ?? null;
        if (bottom !== null) expect(quantity(only(layer, 'gwml2w:toDepth'))).toEqual([expect.closeTo(bottom, 9), 'm']);
        expect(all(layer, 'swe:value').map(({ text }) => text)).toContain(strata[at]?.description || '?');
      }
    });
  },
);

describe('what is carried', () => {
  test('casing with its sizes, above ground negative', async () => {
    const well = await wellOf('units ft in\ncasing +2 - 58 steel 10.75 x 0.365 welded, driven\n');
    const casing = only(well, 'gwml2wc:CasingComponent');
    expect(quantity(only(casing, 'gwml2wc:from'))).toEqual([-0.6096, 'm']);
    expect(quantity(only(casing, 'gwml2wc:casingExternalDiameter'))).toEqual([273.05, 'mm']);
    expect(quantity(only(casing, 'gwml2wc:casingWallThickness'))).toEqual([9.271, 'mm']);
    expect(only(casing, 'gwml2wc:casingMaterial').attributes['xlink:title']).toBe('steel');
  });

  test('grout as sealing, pack as filtration, a slot as the width of a hole of the screen', async () => {
    const well = await wellOf(busyLog);
    expect(only(well, 'gwml2wc:FiltrationComponent').children.length).toBeGreaterThan(1);
    expect(quantity(only(well, 'gwml2wc:screenHoleWidth'))).toEqual([0.508, 'mm']);
    const seals = all(well, 'gwml2wc:sealingType').map(({ attributes }) => attributes['xlink:title']);
    expect(seals).toEqual(expect.arrayContaining(['annular grout', 'annular seal', 'packer', 'shoe']));
  });

  test('the words of the line beside each part', async () => {
    const log = 'casing 0 - 10 steel 168.3\n  grout 0 - 10 neat cement, 0.3 m3, 12 x 40 kg bags ; <thin>\n';
    const sealing = only(await wellOf(log), 'gwml2wc:Sealing');
    expect(only(sealing, 'gml:description').text).toBe('grout 0 - 10 neat cement, 0.3 m3, 12 x 40 kg bags ; <thin>');
  });

  test('levels by their day, a level above ground negative', async () => {
    const well = await wellOf('water\n  level 5.2 2026-05-01\n  level +3.9\n  level ?\n');
    const levels = all(well, 'gwml2w:gwWellStaticWaterDepth');
    expect(levels.map(quantity)).toEqual([
      [5.2, 'm'],
      [-3.9, 'm'],
    ]);
    expect(levels.map((level) => all(level, 'gml:timePosition').map(({ text }) => text))).toEqual([['2026-05-01'], []]);
  });

  test('a place in the reference system of its datum, latitude first', async () => {
    const point = only(only(await wellOf('place 44.5310 -78.2064 NAD83\n'), 'gwml2w:gwWellLocation'), 'gml:Point');
    expect(only(point, 'gml:pos').text).toBe('44.531 -78.2064');
    expect(point.attributes.srsName).toBe('http://www.opengis.net/def/crs/EPSG/0/4269');
  });

  test('nothing in the place of what is not known', async () => {
    const well = await wellOf('well A\nhole\n  0 - ? ?\n');
    expect(all(well, 'swe:Quantity')).toEqual([]);
    expect(only(well, 'gwml2w:GW_Well').children.map(({ name }) => name)).not.toContain('gwml2w:gwWellLocation');
  });
});

test('any text of a user stays text, in a document that can be read', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' }), async (a, b) => {
      const log = `well ${a.replace(/[\r\n]/g, ' ')}\nowner ${b.replace(/[\r\n]/g, ' ')}<script/>]]>\nstrata\n  0 - 3 clay ; ${a.replace(/[\r\n]/g, '')}\n`;
      const text = await textOf(log);
      expect(XMLValidator.validate(text)).toBe(true);
      expect(text).not.toContain('<script');
    }),
  );
});

test('says what it does not carry', async () => {
  const left = async (log: string) => (await gwmlFormat.make(recordOf(log), contextOf(log))).left;
  expect(await left('drilling air\n 0 - 3 10 min\n')).toEqual([
    'The log gives no place.',
    'Not carried: 1 run of drilling.',
  ]);
  expect(await left('place 44 -78 WGS84\n')).toEqual([]);
});
