/** Made-up logs of any length, the same every time: as notation, and the same record as JSON and as YAML. */

interface Layer {
  readonly top: number;
  readonly bottom: number;
  readonly material: string;
  readonly with: readonly { readonly material: string; readonly amount: string }[];
  readonly colour: string;
  readonly qualities: readonly string[];
  readonly remark: string | null;
}

/** One log in three notations; each has the layer that is edited on a line of its own. */
export interface WrittenLog {
  readonly well: string;
  readonly json: string;
  readonly yaml: string;
}

/** The letter that is written over in the layer at the middle: `limestone` becomes `limestome` and is mended again. */
export interface EditPlace {
  readonly line: number;
  readonly character: number;
}

export const letters = ['m', 'n'] as const;

type Random = () => number;

/** Numbers from 0 to 1 by a linear congruential generator (the constants are those of Numerical Recipes, from memory). */
function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;

const soils = ['clay', 'silt', 'sand', 'gravel', 'till', 'fine sand', 'loam', 'hardpan', 'cobbles', 'peat', 'marl'];
const rocks = ['limestone', 'dolomite', 'shale', 'sandstone', 'granite', 'gneiss', 'siltstone', 'basalt', 'schist'];
const colours = ['brown', 'grey', 'black', 'red', 'yellow', 'green', 'blue', 'tan', 'buff', 'white'];
const seconds = ['clay', 'silt', 'sand', 'gravel', 'boulders', 'shale', 'chert', 'cobbles', 'quartz'];
const amounts = ['with', 'some', 'trace', 'little', 'occasional'];
const qualities = [
  ...['dry', 'moist', 'wet', 'damp', 'saturated', 'soft', 'firm', 'stiff', 'very stiff', 'hard', 'loose', 'dense'],
  ...['compact', 'sticky', 'plastic', 'friable', 'fractured', 'massive', 'weathered', 'broken', 'layered', 'bedded'],
  ...['laminated', 'fossiliferous', 'calcareous', 'water bearing', 'coarse', 'rounded', 'angular', 'well sorted'],
];
const remarks = [
  'drilled easily',
  'bit chattered',
  'soft seam',
  'lost some returns',
  'cuttings damp',
  'driller unsure',
];

/** What the driller wrote for a word, most often as it stands. */
const shortForms: Readonly<Record<string, string>> = {
  brown: 'br',
  grey: 'gray',
  limestone: 'ls',
  sandstone: 'ss',
  shale: 'sh',
  gravel: 'grvl',
  'very stiff': 'v stiff',
  'water bearing': 'wb',
  fractured: 'frac',
};

const layerAt = (random: Random, top: number, at: number): Layer => {
  const material = pick(random, at % 3 === 0 ? rocks : soils);
  const count = Math.floor(random() * 3);
  return {
    top,
    bottom: Math.round((top + 0.1 + random() * 0.6) * 100) / 100,
    material,
    with: random() < 0.4 ? [{ material: pick(random, seconds), amount: pick(random, amounts) }] : [],
    colour: pick(random, colours),
    qualities: [...new Set(Array.from({ length: count }, () => pick(random, qualities)))],
    remark: random() < 0.15 ? pick(random, remarks) : null,
  };
};

/** One line in two hundred has a slip of spelling, which every checker is to find. */
const misspelt = (layer: Layer): Layer => ({ ...layer, material: `${layer.material.slice(0, -1)}q` });

export const middleOf = (count: number): number => Math.floor(count / 2);

function layersOf(count: number): Layer[] {
  const random = randomFrom(count);
  const layers: Layer[] = [];
  let top = 0;
  for (let at = 0; at < count; at += 1) {
    const layer = layerAt(random, top, at);
    top = layer.bottom;
    if (at === middleOf(count)) layers.push({ ...layer, material: 'limestone' });
    else layers.push(at % 200 === 100 ? misspelt(layer) : layer);
  }
  return layers;
}

const written = (random: Random, word: string): string => (random() < 0.4 ? (shortForms[word] ?? word) : word);

function descriptionOf(layer: Layer, random: Random, spelledOut: boolean): string {
  const word = (text: string): string => (spelledOut ? text : written(random, text));
  const parts = [
    random() < 0.5 ? `${word(layer.material)}, ${word(layer.colour)}` : `${word(layer.colour)} ${word(layer.material)}`,
    ...layer.qualities.map(word),
    ...layer.with.map(({ material, amount }) => `${amount} ${word(material)}`),
  ];
  return parts.join(', ');
}

function layerLine(layer: Layer, random: Random, spelledOut: boolean): string {
  const depths = layer.top === 0 || random() < 0.3 ? `${layer.top} - ${layer.bottom}` : `- ${layer.bottom}`;
  const remark = layer.remark === null ? '' : `  ; ${layer.remark}`;
  return `  ${depths}  ${descriptionOf(layer, random, spelledOut)}${remark}`;
}

const header = [
  'well KH-09',
  'units m mm',
  'owner Kestrel Hollow Water Co-op',
  'began 2026-05-04',
  'finished 2026-05-06',
];

function wellText(layers: readonly Layer[], bottom: number): string {
  const random = randomFrom(layers.length + 1);
  const middle = middleOf(layers.length);
  return [
    ...header,
    'hole',
    '  0 - 7.2  254  air rotary',
    `  - ${bottom}  152  down-the-hole hammer`,
    'strata',
    ...layers.map((layer, at) => layerLine(layer, random, at === middle)),
    'casing +0.45 - 7.2 steel 168.3 x 6.4 welded',
    '  shoe 7.2',
    '  centralizers 1.5 4 6.7',
    '  joints 6.1 1.55',
    '  grout 0 - 7.2 neat cement, 0.29 m3, 9 x 40 kg bags, w/c 0.5, tremie, 2026-05-05 09:30',
    '',
  ].join('\n');
}

const recordOf = (bottom: number) => ({
  well: 'KH-09',
  units: { depth: 'm', diameter: 'mm' },
  owner: 'Kestrel Hollow Water Co-op',
  began: '2026-05-04',
  finished: '2026-05-06',
  hole: [
    { top: 0, bottom: 7.2, diameter: 254, method: 'air rotary' },
    { top: 7.2, bottom, diameter: 152, method: 'down-the-hole hammer' },
  ],
  casing: [
    {
      top: -0.45,
      bottom: 7.2,
      material: 'steel',
      outside: 168.3,
      wall: 6.4,
      joint: 'welded',
      shoe: 7.2,
      centralizers: [1.5, 4, 6.7],
      joints: [6.1, 1.55],
      grout: [
        {
          top: 0,
          bottom: 7.2,
          material: 'neat cement',
          volume: 0.29,
          bags: { count: 9, mass: 40 },
          waterCement: 0.5,
          placement: 'tremie',
          placed: '2026-05-05',
        },
      ],
    },
  ],
});

/** The layer without what it does not say, as one would write it by hand. */
const layerJson = (layer: Layer): string =>
  JSON.stringify({
    top: layer.top,
    bottom: layer.bottom,
    material: layer.material,
    colour: layer.colour,
    ...(layer.qualities.length > 0 && { qualities: layer.qualities }),
    ...(layer.with.length > 0 && { with: layer.with }),
    ...(layer.remark !== null && { remark: layer.remark }),
  });

function jsonText(layers: readonly Layer[], bottom: number): string {
  const head = JSON.stringify(recordOf(bottom), null, 2).slice(0, -2);
  return `${head},\n  "strata": [\n${layers.map((layer) => `    ${layerJson(layer)}`).join(',\n')}\n  ]\n}\n`;
}

/** Block style at the head, one layer a line below it; what stands on a line is valid YAML as it is valid JSON. */
function yamlText(layers: readonly Layer[], bottom: number): string {
  const head = Object.entries(recordOf(bottom)).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
  return [...head, 'strata:', ...layers.map((layer) => `  - ${layerJson(layer)}`), ''].join('\n');
}

export function logOf(count: number): WrittenLog {
  const layers = layersOf(count);
  const bottom = layers.at(-1)?.bottom ?? 0;
  return {
    well: wellText(layers, bottom),
    json: jsonText(layers, bottom),
    yaml: yamlText(layers, bottom),
  };
}

/** Where the letter stands that the benchmark writes over. */
export function editPlace(text: string, count: number): EditPlace {
  const lines = text.split('\n');
  const first = lines.findIndex((line) => /^\s*"?strata"?:?/.test(line)) + 1;
  const line = first + middleOf(count);
  return { line, character: (lines[line] ?? '').indexOf('limestone') + 'limesto'.length };
}

/** The words that the schema may name. */
export const vocabulary = { materials: [...soils, ...rocks, ...seconds, 'topsoil'], colours, amounts, qualities };
