import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { assemble, readNotes } from '../../server/import/index.ts';
import { type Case, cases, saidIn } from './cases.ts';

/** Lines that a careful person writes and the reader does not, each with the reason: `style: title`. */
const known: Readonly<Record<string, string>> = {
  '10-csv: commas and quotes': 'quoted "fat" is kept as a word of its own, and mentioned',
  '11-pasted: a page with its title and foot':
    'the names stand over other columns than their own: the columns are asked',
};

const nameOf = ({ style, title }: Case): string => `${style}: ${title}`;

/** Lines of `all` that `others` lack, each counted as often as it stands there. */
function without(all: readonly string[], others: readonly string[]): string[] {
  const left = [...others];
  return all.filter((each) => {
    const at = left.indexOf(each);
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

const asked = (expected: string): string | null => /^asks (\w+)$/.exec(expected)?.[1] ?? null;

const measured = cases.map((each) => {
  const read = readNotes(each.notes, each.options);
  const question = asked(each.expected);
  const expected = question === null ? saidIn(each.expected) : [];
  const said = saidIn(read.text);
  return {
    each,
    read,
    question,
    missing: without(expected, said),
    extra: without(said, expected),
    count: expected.length,
  };
});

describe('the written-out notes', () => {
  test('are at least sixty, in at least twelve styles', () => {
    expect(cases.length).toBeGreaterThanOrEqual(60);
    expect(new Set(cases.map(({ style }) => style)).size).toBeGreaterThanOrEqual(12);
  });

  test.each(measured.map((each) => [nameOf(each.each), each] as const))(
    '%s',
    (name, { read, question, missing, extra }) => {
      if (question !== null) {
        expect(read.questions.filter(({ blocking }) => blocking).map(({ about }) => about)).toEqual([question]);
        return;
      }
      if (known[name] === undefined) expect({ missing, extra }).toEqual({ missing: [], extra: [] });
      else
        expect(missing.length + extra.length, 'it is read now: take it off the list of known ones').toBeGreaterThan(0);
    },
  );

  test('have at least 95 of 100 of their lines as a careful person writes them', () => {
    const lines = measured.reduce((sum, { count }) => sum + count, 0);
    const missing = measured.reduce((sum, each) => sum + each.missing.length, 0);
    expect(lines).toBeGreaterThan(200);
    expect((lines - missing) / lines).toBeGreaterThanOrEqual(0.95);
  });

  test('have no line otherwise than a careful person writes it without a word about it', () => {
    for (const { each, read, extra } of measured) {
      const { units, bottomUp } = read;
      const sure = read.entries.filter(({ status }) => status === 'understood');
      const said = saidIn(assemble(sure, { units, gallon: null, pack: null, bottomUp }));
      expect(
        extra.filter((line) => said.includes(line)),
        nameOf(each),
      ).toEqual([]);
    }
  });
});

describe('every reading', () => {
  test.each(measured.map((each) => [nameOf(each.each), each] as const))(
    '%s: keeps every line and has no fault',
    (_, { each, read }) => {
      if (read.questions.some(({ blocking }) => blocking)) return;
      const comments = read.text
        .split('\n')
        .filter((text) => text.startsWith('#'))
        .map((text) => text.replace(/^# ?(?:: )?/, ''));
      for (const line of each.notes.split('\n')) if (line.trim() !== '') expect(comments).toContain(line.trim());
      const faults = parseText(read.text).lines.flatMap(({ problems }) =>
        problems.filter(({ code }) => code !== 'unknown-term'),
      );
      expect(faults).toEqual([]);
    },
  );
});
