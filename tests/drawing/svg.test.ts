import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { drawingFile, drawingSvg, drawWell, testPlots } from '../../server/drawing/index.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from '../record/record-of.ts';
import { arbitraryOf } from './arbitrary.ts';
import { busyLog, deepLog, handLogs, sampleLogs } from './logs.ts';
import { readXml } from './read-xml.ts';

const draw = (text: string): string => drawingFile(drawWell(recordOf(text)));

const drawnElements = [
  '?xml',
  'svg',
  'title',
  'desc',
  'style',
  'defs',
  'pattern',
  'g',
  'rect',
  'path',
  'ellipse',
  'text',
];
const withoutTexts = (svg: string): string => svg.replace(/>[^<]*</g, '><').replace(/aria-label="[^"]*"/, '');

describe.each([...handLogs, ...sampleLogs])('the SVG of %s', (_, text) => {
  const svg = draw(text);

  test('is well-formed XML', () => {
    expect(XMLValidator.validate(svg)).toBe(true);
  });

  test('is made of shapes and text alone', () => {
    const { elements, attributes } = readXml(svg);
    expect([...elements].filter((name) => !drawnElements.includes(name))).toEqual([]);
    expect(
      [...attributes].filter((name) => name.startsWith('on') || name === 'style' || name.includes('href')),
    ).toEqual([]);
  });

  test('has no NaN and no Infinity among its numbers', () => {
    expect(withoutTexts(svg)).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  test('is the same byte for byte', () => {
    expect(draw(text)).toBe(svg);
  });
});

describe('the parts of the drawing', () => {
  const svg = draw(busyLog);
  const lines = busyLog.split('\n');
  const lineOf = (part: RegExp): number => lines.findIndex((line) => part.test(line));

  test.each([
    ['layer', /silty clay/],
    ['description', /silty clay/],
    ['hole', /0 - 60 {2}14/],
    ['string', /10\.75/],
    ['string-temporary', /temporary/],
    ['shoe', /shoe/],
    ['centralizer', /centralizers/],
    ['joint', /joints/],
    ['grout', /neat cement/],
    ['seal', /seal/],
    ['pack', /pack 120/],
    ['screen', /screen/],
    ['packer', /packer/],
    ['pitless', /pitless/],
    ['plug', /plug/],
    ['cap', /cap/],
    ['water', /31 fresh/],
    ['gas', /gas/],
    ['lost', /lost 122/],
    ['level-static', /level/],
    ['level-pumping', / {2}60 {2}88/],
    ['ground', /ground/],
    ['contact-approximate', /~31/],
    ['contact-doubtful', /44\?/],
  ])('there is a %s from its line', (name, part) => {
    expect(lineOf(part)).toBeGreaterThan(0);
    expect(svg).toContain(`<g class="dh-${name}" data-line="${lineOf(part)}">`);
  });

  test('each has its words as a title', () => {
    const parts = svg.match(/<g class="dh-[a-z-]+"[^>]*>/g) ?? [];
    const titled = svg.match(/<g class="dh-[a-z-]+"[^>]*><title>[^<]+<\/title>/g) ?? [];
    expect(parts.length).toBeGreaterThan(80);
    expect(titled).toHaveLength(parts.length);
  });

  test('the whole is a picture with a name', () => {
    expect(svg).toMatch(/<svg [^>]*role="img" aria-label="Log of FM-12\. /);
  });

  test('the horizontal exaggeration is said in words', () => {
    expect(svg).toMatch(/horizontal scale of the well is exaggerated: widths drawn [\d.]+ times larger than depths/);
  });

  test('unknown size and diameter are marked, the rest is not', () => {
    expect(svg).toContain('Diameter of the hole not known');
    expect(draw('hole\n  0 - 10 152\nstrata\n  0 - 10 clay\n')).not.toContain('class="dh-doubt"');
  });

  test('what cannot be drawn to its end is said', () => {
    const absurd = draw('hole\n  0 - 61 152\nstrata\n  0 - 20 clay\n  20 - 6100 limestone\n');
    expect(absurd).toContain('Layer on line 5 is cut short here: it reaches 6100 m.');
    expect(absurd).not.toContain('Layer on line 4');
  });

  test('an empty log says so', () => {
    expect(draw('')).toContain('Nothing is logged against depth yet.');
    expect(svg).not.toContain('Nothing is logged');
  });
});

describe('themes', () => {
  const drawing = drawWell(recordOf(busyLog));

  test('in print every colour is in the file, for programs that know no custom properties', () => {
    const print = drawingSvg(drawing, 'print');
    expect(print).not.toContain('var(');
    expect(print).toContain('<style>');
  });

  test('in the editor the page sets the colours, and there is no style', () => {
    const editor = drawingSvg(drawing, 'editor');
    const paints = editor.match(/(?:fill|stroke)="(?!none|url\(#)[^"]*"/g) ?? [];
    expect(paints.length).toBeGreaterThan(300);
    expect(paints.filter((paint) => !/="var\(--dh-[a-z-]+, #[0-9a-f]{6}\)"/.test(paint))).toEqual([]);
    expect(/<style|\sstyle=/.test(editor)).toBe(false);
  });

  test('in the editor every part from a line can be reached by keyboard', () => {
    const parts = drawingSvg(drawing, 'editor').match(/<g [^>]*data-line[^>]*>/g) ?? [];
    expect(parts.length).toBeGreaterThan(50);
    expect(parts.filter((part) => !/tabindex="0" role="img"/.test(part))).toEqual([]);
  });
});

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

test('random records: well-formed, and no text of theirs becomes anything but text', () => {
  fc.assert(
    fc.property(records, (record) => {
      const drawing = drawWell(record);
      for (const svg of [drawingFile(drawing), drawingSvg(drawing, 'editor')]) {
        expect(XMLValidator.validate(svg)).toBe(true);
        const { elements, attributes } = readXml(svg);
        expect([...elements].filter((name) => !drawnElements.includes(name))).toEqual([]);
        expect([...attributes].filter((name) => name.startsWith('on'))).toEqual([]);
        expect(withoutTexts(svg)).not.toMatch(/NaN|Infinity|undefined/);
      }
    }),
    { numRuns: 60 },
  );
});

test('a hostile name is there to be read, as it was written', () => {
  const name = `"><img src=x onerror=alert(1)> & ]]> <script>`;
  const { texts } = readXml(draw(`well ${name}\n`));
  expect(texts).toContain(`Log of ${name}`);
});

test('a small well, drawn', async () => {
  const log =
    'well SM-1\nground 100 m\nhole\n  0 - 10 200\nstrata\n  0 - 4 sand\n  - 10 limestone\ncasing +0.5 - 6 steel 150 x 5\n  grout 0 - 6 neat cement\nwater\n  8 fresh, 10 L/min\n  level 3\n';
  await expect(draw(log)).toMatchFileSnapshot('snapshots/small-well.svg');
});

test('300 layers make a file of no more than 1 MB', () => {
  expect(draw(deepLog(300)).length).toBeLessThan(1_000_000);
});

test.each(['brindle-hill', 'sallow-fen', 'thornley'])('the sample %s, drawn', async (name) => {
  const [, text = ''] = sampleLogs.find(([file]) => file === `${name}.well`) ?? [];
  await expect(draw(text)).toMatchFileSnapshot(`snapshots/${name}.svg`);
});

test('the plot of a test with an observation well', async () => {
  const [, text = ''] = sampleLogs.find(([file]) => file === 'quern-point.well') ?? [];
  const [, inTenfolds] = testPlots(recordOf(text));
  expect(inTenfolds).toBeDefined();
  if (inTenfolds) await expect(drawingFile(inTenfolds)).toMatchFileSnapshot('snapshots/quern-point-test.svg');
});
