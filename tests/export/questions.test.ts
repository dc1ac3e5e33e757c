import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import {
  type CrewQuestion,
  questionListHtml,
  questionsFor,
  questionsText,
} from '../../server/export/questions/index.ts';
import { buildLog } from '../../server/model/index.ts';
import { hostileTexts } from '../drawing/arbitrary.ts';
import { contextOf, findingsIn } from '../rules/checked.ts';

const questionsIn = (text: string): readonly CrewQuestion[] =>
  questionsFor(contextOf(text).record, findingsIn(text), text.split('\n'));

const told = (questions: readonly CrewQuestion[]): string[] =>
  questions.map(({ number, part, about, written, says }) => `${number} ${part} ${written.line + 1} ${about}: ${says}`);

const log = [
  'well KH-04',
  'owner ?',
  'hole',
  '  0 - 7.2 254',
  '  - 61 152',
  'strata',
  '  0 - 3.8 clay',
  '  - 6? sand',
  '  - 61 limestone # seen twice',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
  '  shoe 7.2',
  '  centralizers ?',
  '  grout 0 - 7.2 neat cement, 0.18 m3',
  'water',
  '  38.5? fresh, ? L/min',
  'test pump ? L/min',
  '  0 5.2',
  '  1 ?',
].join('\n');

describe('the questions', () => {
  test('are every ?, every doubtful value and what only the crew can settle, by depth', () => {
    expect(told(questionsIn(log))).toEqual([
      '1 well 2 owner: Not written down: owner.',
      '2 hole 12 centralizers of casing 1: Not written down: depths.',
      expect.stringContaining('3 hole 13 grout of casing 1, 0 – 7.2 m: Grout 0 – 7.2 m: 0.18 m³ placed, but'),
      '4 hole 8 strata, 3.8 – 6? m: Marked as doubtful: depth, "6?".',
      expect.stringContaining('5 hole 8 strata, 3.8 – 6? m: Rock begins at about 6 m'),
      '6 hole 15 water found, 38.5? m: Marked as doubtful: depth, "38.5?".',
      '7 hole 15 water found, 38.5? m: Not written down: what this depth adds.',
      '8 after 16 test 1: Not written down: rate.',
      '9 after 18 reading of test 1: Not written down: level.',
    ]);
  });

  test('show what was written, without the comments, and what stands beside it', () => {
    const strata = questionsIn(log).find(({ written }) => written.line === 7);
    expect(strata?.written.text).toBe('- 6? sand');
    expect(strata?.beside).toEqual([
      { line: 6, text: '0 - 3.8 clay' },
      { line: 8, text: '- 61 limestone' },
    ]);
    const grout = questionsIn(log).find(({ written }) => written.line === 12);
    expect(grout?.beside).toEqual([{ line: 9, text: 'casing +0.45 - 7.2 steel 168.3 x 6.4' }]);
  });

  test('of a finding leave out what the writer of the log is told to do, and ask', () => {
    const grout = questionsIn(log).find(({ written }) => written.line === 12);
    expect(grout?.says).toMatch(/part of it stands empty\.$/);
    expect(grout?.asks).toBe('Was more placed than is written, or is a volume or a diameter wrong?');
  });

  test('leave out what is only about so much, and what a desk settles', () => {
    expect(questionsIn('strata\n  0 - ~3.8 clay\n  - 9 claq')).toEqual([]);
  });

  test('need no lines of the log', () => {
    const questions = questionsFor(contextOf(log).record, [], []);
    expect(questions.map(({ written, beside }) => [written.text, beside])).toEqual(questions.map(() => ['', []]));
    expect(questions).toHaveLength(7);
  });
});

describe('as text', () => {
  test('each has its number, its place and room for the answer', () => {
    const text = questionsText('KH-04', questionsIn(log));
    expect(text.startsWith('Questions for the crew: KH-04\n=============================\n\n9 questions came up')).toBe(
      true,
    );
    expect(text.match(/^\d+\. /gm)).toHaveLength(9);
    expect(text.match(/Answer: _+$/gm)).toHaveLength(9);
    expect(text).toContain('   Written: 38.5? fresh, ? L/min  (line 15)\n');
    expect(text.indexOf('The well\n')).toBeLessThan(text.indexOf('Down the hole\n'));
    expect(text.indexOf('Down the hole\n')).toBeLessThan(text.indexOf('Tests and finishing\n'));
  });

  test('says so where nothing is open, and counts one as one', () => {
    expect(questionsText('KH-04', [])).toContain('Nothing in this log is left open for the crew.');
    expect(questionsText('KH-04', questionsIn('well A\nowner ?'))).toContain('One question came up');
  });
});

describe('as HTML', () => {
  test('goes on counting from part to part, and leads to the lines', () => {
    const html = questionListHtml(questionsIn(log)) ?? '';
    expect([...html.matchAll(/<li value="(\d+)" data-line="(\d+)">/g)].map(([, n, line]) => `${n}:${line}`)).toEqual([
      '1:1',
      '2:11',
      '3:12',
      '4:7',
      '5:7',
      '6:14',
      '7:14',
      '8:15',
      '9:17',
    ]);
    expect(html.match(/<h3>/g)).toHaveLength(3);
    expect(html.match(/class="answer"/g)).toHaveLength(9);
    expect(html).not.toMatch(/style=|<script/);
  });

  test('is nothing where nothing is open', () => {
    expect(questionListHtml([])).toBeNull();
  });

  test.each(hostileTexts.filter((text) => !/[\r\n]/.test(text)))('escapes what the log says: %j', (hostile) => {
    const html = questionListHtml(questionsIn(`strata\n  0 - 3? ${hostile}\n  - 9 clay`)) ?? '';
    expect(html.replace(/<\/?(p|h3|ol|li|code|span)( [a-z-]+="[^"<>]*")*>/g, '')).not.toMatch(/[<>]/);
  });
});

test('no text makes it fail, and the same text gives the same list', () => {
  const lines = fc.array(fc.constantFrom(...log.split('\n'), '?', '  - ? ?', 'grout ? - ?', '', 'test', '  9 ?'), {
    maxLength: 25,
  });
  fc.assert(
    fc.property(lines, (some) => {
      const text = some.join('\n');
      const questions = questionsIn(text);
      expect(questions.map(({ number }) => number)).toEqual(questions.map((_, index) => index + 1));
      expect(questionsIn(text)).toEqual(questions);
      const depths = questions.filter(({ part }) => part === 'hole').map(({ depth }) => depth ?? -1e9);
      expect(depths).toEqual([...depths].sort((a, b) => a - b));
      const open = buildLog(parseText(text)).questions.filter(({ kind }) => kind !== 'approximate');
      expect(questions.length).toBeGreaterThanOrEqual(open.length);
    }),
    { numRuns: 60 },
  );
});
