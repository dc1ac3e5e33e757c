import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { checkedFigures } from '../../server/drawing/figures-html.ts';
import type { Noticed } from '../../server/drawing/findings-html.ts';
import type { ReportedFinding } from '../../server/export/format.ts';
import { recordHtml } from '../../server/export/index.ts';
import { inBothWords, otherPieces, tablesInBothUnits } from '../../server/export/record-page/both-units.ts';
import { cautionLetter } from '../../server/export/record-page/figures.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { arbitraryOf, hostileTexts } from '../drawing/arbitrary.ts';
import { busyLog, handLogs, sampleLogs } from '../drawing/logs.ts';
import { recordOf } from '../record/record-of.ts';

const metric = `well M-1
ground 287.4 m
contractor Sedgewick and Marl
licence 4411
owner Larchfield Orchard
hole
  0 - 61 254
strata
  0 - 61 clay
casing +0.45 - 7.2 steel 168.3 x 6.4
  grout 0 - 7.2 neat cement, 0.29 m3, 9 x 40 kg bags
water
  38.5 fresh, 25 L/min
test pump 40 L/min, 2026-05-07 08:00
  0 5.2
  60 11.9
`;

const tables = (text: string): string =>
  tablesInBothUnits(recordOf(text).log)
    .map(({ html }) => html.replace(/<[^>]*>/g, '|').replace(/\|+/g, '|'))
    .join('\n');

describe('both units', () => {
  // 1 ft = 0.3048 m, 1 in = 25.4 mm, 1 US gal = 3.785411784 L, 1 lb = 0.45359237 kg: NIST SP 811 (2008), appendix B.
  test.each([
    ['0 – 61 |(0 – 200)', 'depths'],
    ['254 mm |(10.00 in)', 'a diameter'],
    ['287.4 m |(942.9 ft)', 'an elevation'],
    ['25 L/min |(6.6 US gal/min)', 'a rate'],
    ['0.29 m³ |(10.2 ft³)', 'a volume'],
    ['9 bags × 40 kg |(9 bags × 88 lb)', 'a mass'],
  ])('%s', (cell) => {
    expect(tables(metric)).toContain(cell);
  });

  test('feet have metres in brackets', () => {
    expect(tables('units ft in gal-us\nhole\n  0 - 60 10\nwater\n  31 fresh, 5 gpm\n')).toMatch(
      /0 – 60 \|\(0 – 18\.3\)\|10 in \|\(254 mm\)[\s\S]*5 US gal\/min \|\(19 L\/min\)/,
    );
  });

  test('captions and headings name both, once', () => {
    expect(tables(metric)).toContain('The hole, depths in m (ft) below ground');
    expect(tables(metric)).toContain('Level, m (ft)');
  });

  test('only what differs is said again', () => {
    expect(otherPieces('neat cement, 1 m3, tremie', 'neat cement, 35 ft3, tremie')).toBe('35 ft3');
    expect(otherPieces('a, b', 'a, b')).toBe('');
    expect(inBothWords('Level, m', 'Level, ft')).toBe('Level, m (ft)');
    expect(inBothWords('Casing 1, 0 – 7.2 m', 'Casing 1, 0 – 23.6 ft')).toBe('Casing 1, 0 – 7.2 m (23.6 ft)');
  });

  test('what nobody knows stays a question', () => {
    expect(tables('hole\n  0 - ? ?\n')).not.toMatch(/NaN|null|undefined/);
  });
});

describe('the check of a figure', () => {
  const record = recordOf(busyLog);
  const noticed = (severity: Noticed['severity'], line: number): ReportedFinding => ({
    rule: 'a-rule',
    severity,
    message: 'a message',
    span: { line, start: 0, end: 1 },
  });

  test('waits where a fact lacks, whatever else is said', () => {
    const marks = checkedFigures(record.figures, []);
    const waiting = marks.filter(({ figure }) => figure.waitsFor.length > 0);
    expect(waiting.length).toBeGreaterThan(0);
    expect(new Set(waiting.map(({ check }) => check))).toEqual(new Set(['waits']));
  });

  test('speaks of an error or a warning on a line that the figure rests on, and of no hint', () => {
    const sound = checkedFigures(record.figures, []).find(({ check }) => check === 'agrees');
    const line = sound?.figure.lines[0] ?? -1;
    const checkWith = (finding: ReportedFinding) =>
      checkedFigures(record.figures, [finding]).find(({ figure }) => figure.id === sound?.figure.id)?.check;
    expect(line).toBeGreaterThanOrEqual(0);
    expect(checkWith(noticed('warning', line))).toBe('finding');
    expect(checkWith(noticed('error', line))).toBe('finding');
    expect(checkWith(noticed('hint', line))).toBe('agrees');
  });

  test('is doubtful where a value is', () => {
    const unsure = recordOf('hole\n  0 - 61 254\ncasing 0 - 7.2? steel 168.3 x 6.4\n');
    const doubtful = unsure.figures.filter(({ doubtful, waitsFor }) => doubtful && waitsFor.length === 0);
    const marks = checkedFigures(doubtful, []);
    expect(marks.length).toBeGreaterThan(0);
    expect(new Set(marks.map(({ check }) => check))).toEqual(new Set(['doubtful']));
  });
});

describe('the page', () => {
  const html = recordHtml(recordOf(metric), [], { today: '2026-11-25', lines: metric.split('\n') });
  const sections = (page: string): string[] =>
    [...page.matchAll(/<section data-section="([^"]*)"/g)].map((match) => match[1] ?? '');

  test('has the sections of a well record in their order, then what is made of them, then the lines to sign on', () => {
    expect(sections(html)).toEqual(
      'head header hole strata strings water tests drawing plots figures findings signatures reckoning'.split(' '),
    );
  });

  test('says when it was drawn up, and that it is a help and not the law', () => {
    expect(html).toContain('Drawn up 2026-11-25.');
    expect(html).toContain('a help, not the law');
    expect(recordHtml(recordOf(''), [])).not.toContain('Drawn up');
  });

  test('has lines to sign on with the names that the log has', () => {
    expect(html).toContain('<span>Sedgewick and Marl, 4411</span><small>Driller</small>');
    expect(html).toContain('<span>Larchfield Orchard</span><small>Owner or agent</small>');
  });

  test('has every caution right under the figures, and each figure its letter', () => {
    const figures = html.slice(html.indexOf('data-section="figures"'), html.indexOf('data-section="findings"'));
    const cautions = new Set(recordOf(metric).figures.flatMap(({ caution }) => caution ?? []));
    expect(cautions.size).toBeGreaterThan(3);
    expect(figures.match(/<li><strong>[a-z]+<\/strong>/g)).toHaveLength(cautions.size);
    const lettered = figures.match(/<td data-label="Caution">[a-z]+<\/td>/g) ?? [];
    expect(lettered).toHaveLength(recordOf(metric).figures.filter(({ caution }) => caution !== null).length);
  });

  test('tells what is due and in how many days', () => {
    const montana = `rules montana-36-21\nbegan 2026-10-01\nfinished 2026-10-03\n${metric}`;
    const page = recordHtml(recordOf(montana), [], { today: '2026-11-25' });
    expect(sections(page)).toContain('due');
    expect(page).toMatch(/<li>Record due \d{4}-\d\d-\d\d, in \d+ days/);
  });

  test('asks the crew what the notes leave open, with room for the answer', () => {
    const open = 'well M-2\nhole\n  0 - 61 ?\n';
    const page = recordHtml(recordOf(open), [], { lines: open.split('\n') });
    expect(sections(page)).toContain('questions');
    expect(page).toMatch(/<span class="answer"><\/span>/);
  });

  test('has the drawing on sheets of paper', () => {
    expect(html).toMatch(/<figure class="sheet">\n<svg [^>]*width="210mm" height="297mm"/);
  });

  test('letters go on after z', () => {
    expect([0, 25, 26, 27, 52].map(cautionLetter)).toEqual(['a', 'z', 'aa', 'ab', 'ba']);
  });
});

/* Only the void elements and the declaration are no XML. */
const asXml = (html: string): string =>
  html
    .replace('<!doctype html>\n', '')
    .replace(/<meta [^>]*>/g, '')
    .replace(/<style>[\s\S]*?<\/style>/, '');

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

describe('whatever the record says', () => {
  test.each([...handLogs, ...sampleLogs])('the page of %s is well-formed', (_, text) => {
    expect(XMLValidator.validate(asXml(recordHtml(recordOf(text), [], { lines: text.split('\n') })))).toBe(true);
  });

  test('the page of random records is well-formed, and runs nothing', () => {
    fc.assert(
      fc.property(records, (record) => {
        const page = recordHtml(record, []);
        expect(XMLValidator.validate(asXml(page))).toBe(true);
        expect(page).not.toMatch(/<script|<img|<iframe|\son\w+="/i);
      }),
      { numRuns: 30 },
    );
  });

  test.each(hostileTexts)('hostile names stay text: %j', (text) => {
    const record = recordOf(metric);
    const field = { text, span: { line: 0, start: 0, end: 1 } };
    const header = { well: field, owner: field, contractor: field, licence: field, site: field };
    const page = recordHtml({ ...record, log: { ...record.log, header } }, []);
    expect(XMLValidator.validate(asXml(page))).toBe(true);
  });
});
