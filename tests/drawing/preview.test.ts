import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { type Noticed, previewSections } from '../../server/drawing/index.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from '../record/record-of.ts';
import { arbitraryOf, hostileTexts } from './arbitrary.ts';
import { busyLog, handLogs, sampleLogs } from './logs.ts';
import { readXml } from './read-xml.ts';

const noticed = (severity: Noticed['severity'], line: number, message = 'a message'): Noticed => ({
  rule: 'a-rule',
  severity,
  message,
  span: { line },
});

const findings: readonly Noticed[] = [
  noticed('warning', 7, 'the grout is short'),
  noticed('error', 4, 'layers overlap'),
  noticed('hint', 9),
  noticed('warning', 3),
];

const previewBody = (record: WellRecord, noticedThere: readonly Noticed[]): string =>
  previewSections(record, noticedThere)
    .map(({ html }) => html)
    .join('\n');

const sectionsOf = (html: string): string[] =>
  [...html.matchAll(/<section data-section="([^"]*)"/g)].map((match) => match[1] ?? '');

const pageElements =
  'section h1 h2 p figure svg title desc defs pattern g rect path ellipse text table caption thead tbody tr th td ul li strong span'.split(
    ' ',
  );

/* The fragment has no void elements, so that it can be read as XML. */
const asXml = (html: string): string => `<main>${html}</main>`;

function expectPlain(html: string): void {
  expect(XMLValidator.validate(asXml(html))).toBe(true);
  const { elements, attributes } = readXml(asXml(html));
  expect([...elements].filter((name) => name !== 'main' && !pageElements.includes(name))).toEqual([]);
  expect(
    [...attributes].filter((name) => name.startsWith('on') || ['style', 'href', 'src', 'xlink:href'].includes(name)),
  ).toEqual([]);
}

describe.each([...handLogs, ...sampleLogs])('the page of %s', (_, text) => {
  const html = previewBody(recordOf(text), findings);

  test('is plain: no script, no style, nothing that loads', () => {
    expectPlain(html);
  });

  test('has one section of each name, the summary first, then the drawing', () => {
    const sections = sectionsOf(html);
    expect(new Set(sections).size).toBe(sections.length);
    expect(sections.slice(0, 2)).toEqual(['summary', 'drawing']);
    expect(sections.slice(-2)).toEqual(['findings', 'cautions']);
  });

  test('every table has a caption, every head a scope', () => {
    const tables = html.match(/<table>/g) ?? [];
    expect(html.match(/<table>\n<caption>[^<]+<\/caption>/g) ?? []).toHaveLength(tables.length);
    expect(html.match(/<th(?! scope="(?:row|col)")[ >]/g)).toBeNull();
  });

  test('everything that comes from a line can be reached by keyboard', () => {
    const parts = html.match(/<g [^>]*data-line="\d+"[^>]*>/g) ?? [];
    expect(parts.filter((tag) => !tag.includes('tabindex="0"'))).toEqual([]);
    const rows = html.match(/<(tr|li) data-line="\d+".*?<\/\1>/g) ?? [];
    expect(rows.length + parts.length).toBeGreaterThan(0);
    expect(rows.filter((row) => !/<span class="to-line" role="link" tabindex="0">[^<]/.test(row))).toEqual([]);
  });
});

describe('the page', () => {
  const html = previewBody(recordOf(busyLog), findings);

  test('sums up the findings in words', () => {
    expect(html).toContain('<p data-summary="" class="summary">1 error, 2 warnings, 1 hint.</p>');
    expect(previewBody(recordOf(busyLog), [])).toContain('>No errors, no warnings.</p>');
  });

  test('names the well', () => {
    expect(html).toContain('<h1 data-line="0">FM-12</h1>');
    expect(previewBody(recordOf(''), [])).toContain('<h1>Unnamed well</h1>');
  });

  test('lists findings by weight, each with its severity in words and its line', () => {
    const items = [...html.matchAll(/<li data-line="(\d+)" data-severity="(\w+)"><strong class="severity">(\w+)</g)];
    expect(items.map((match) => match.slice(1))).toEqual([
      ['4', 'error', 'Error'],
      ['3', 'warning', 'Warning'],
      ['7', 'warning', 'Warning'],
      ['9', 'hint', 'Hint'],
    ]);
  });

  test('follows the order of a well record', () => {
    expect(sectionsOf(html)).toEqual(
      'summary drawing plots header hole strata strings drilling water tests equipment questions figures findings cautions'.split(
        ' ',
      ),
    );
  });

  test('shows each figure with its formula, the numbers put in, and its source', () => {
    const record = recordOf(busyLog);
    const { texts } = readXml(asXml(html));
    for (const figure of record.figures) {
      expect(html).toContain(`data-figure="${figure.id}"`);
      for (const input of figure.inputs) expect(texts).toContain(`${input.name} = ${input.text}`);
      expect(texts).toContain(figure.formula);
      expect(texts).toContain(figure.source);
    }
    expect(record.figures.length).toBeGreaterThan(10);
  });

  test('shows what a figure waits for', () => {
    const waiting = recordOf(busyLog).figures.filter((figure) => figure.waitsFor.length > 0);
    expect(waiting.length).toBeGreaterThan(0);
    expect(html.match(/class="waits">Waits for /g)).toHaveLength(waiting.length);
  });

  test('gives each caution once, and says that it is no law', () => {
    const cautions = new Set(recordOf(busyLog).figures.flatMap(({ caution }) => caution ?? []));
    const list = html.slice(html.indexOf('<ul class="cautions">'));
    expect(list.match(/<li /g)).toHaveLength(cautions.size);
    expect(html).toContain('a help, not the law');
  });
});

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;
const anyFindings = fc.array(
  fc.record({
    rule: fc.constantFrom(...hostileTexts),
    message: fc.constantFrom(...hostileTexts),
    severity: fc.constantFrom('error', 'warning', 'information', 'hint'),
    span: fc.record({ line: fc.nat(1000) }),
  }),
  { maxLength: 4 },
);

test('random records and findings make a plain page', () => {
  fc.assert(
    fc.property(records, anyFindings, (record, noticedThere) => {
      expectPlain(previewBody(record, noticedThere));
    }),
    { numRuns: 60 },
  );
});

test.each(hostileTexts)('a remark, a header and a finding stay text: %j', (text) => {
  const record = recordOf('well A\nhole\n  0 - 5 100\nstrata\n  0 - 5 clay\n');
  const field = { text, span: { line: 0, start: 0, end: 1 } };
  const stratum = record.log.strata.map((each) => ({ ...each, remark: field }));
  const log = { ...record.log, header: { well: field, site: field }, strata: stratum };
  expectPlain(previewBody({ ...record, log }, [noticed('error', 0, text)]));
});
