import { describe, expect, test } from 'vitest';
import { table } from '../../../grammar/table.ts';
import { analyse } from '../../../server/analysis/index.ts';
import { changedLines } from '../../../server/features/refactorings/change.ts';
import { sectionOfQuestions } from '../../../server/features/refactorings/missing-section.ts';
import { refactoringChanges, refactorings } from '../../../server/features/refactorings.ts';
import { marked, settings } from '../fixture.ts';

/** The titles that are offered at the cursor. */
function offered(text: string, asked = false): string[] {
  const { snapshot, at } = marked(text);
  return refactorings(snapshot, { first: at, last: at }, asked).map(({ title }) => title);
}

/** The text after the change of that title; null where it is not offered. */
function changed(text: string, words: string): string | null {
  const { snapshot, at, lines } = marked(text);
  const selection = { first: at, last: at };
  const offer = refactorings(snapshot, selection, true).find(({ title }) => title.includes(words));
  return offer === undefined
    ? null
    : changedLines(lines, refactoringChanges(snapshot, selection, offer.id, offer.name)).join('\n');
}

describe('a base that was changed', () => {
  test('takes the top of the next line with it', () => {
    expect(changed('strata\n  0 - 4.|1 clay\n  3.8 - 6.1 sand', 'next line begin')).toBe(
      'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
    );
  });

  test('in the unit that the top is written in', () => {
    // NIST SP 811: 1 ft = 0.3048 m.
    expect(changed('hole\n  0 - 3.048| 254\n  12 ft - 61 152', 'next line begin')).toBe(
      'hole\n  0 - 3.048 254\n  10 ft - 61 152',
    );
  });

  test('with its doubt and its digits, and the columns of the line', () => {
    expect(changed('strata\n  0 - ~4.10?| clay\n  3.8   - 6.1   sand', 'next line begin')).toBe(
      'strata\n  0 - ~4.10? clay\n  ~4.10? - 6.1  sand',
    );
    expect(changed('strata\n  0 - 12.25| clay\n  12    - 20      gravel', 'begin at 12.25')).toBe(
      'strata\n  0 - 12.25 clay\n  12.25 - 20      gravel',
    );
  });

  test('has nothing to offer where the two are one, or the top is not written', () => {
    expect(offered('strata\n  0 - 3.8| clay\n  3.8 - 6.1 sand')).toEqual([]);
    expect(offered('strata\n  0 - 3.8| clay\n  - 6.1 sand')).toEqual([]);
    expect(offered('strata\n  0 - ?| clay\n  3.8 - 6.1 sand')).toEqual([]);
  });
});

describe('lines out of order', () => {
  test('are sorted by their tops, comments with them', () => {
    expect(changed('strata\n  6.1 - 9 sand\n  # seen twice\n  0 - 3 cl|ay\n  3 - 6.1 silt', 'Sort')).toBe(
      'strata\n  # seen twice\n  0 - 3 clay\n  3 - 6.1 silt\n  6.1 - 9 sand',
    );
  });

  test('a top that went on from above is written where another line comes to stand there', () => {
    expect(changed('strata\n  9 - 12 sand\n  - 15 clay\n  0 - 3| silt\n  - 9 clay', 'Sort')).toBe(
      'strata\n  0 - 3 silt\n  - 9 clay\n  9 - 12 sand\n  - 15 clay',
    );
    expect(changed('strata\n  6 - 9 sand\n  - 12 ft clay\n  7| - 8 silt', 'Sort')).toContain('7 - 8 silt');
  });

  test('a top that is written out keeps its doubt and its digits', () => {
    expect(changed('strata\n  6 - ~9.0? sand\n  - 12 clay\n  7|  - 8 silt', 'Sort')).toBe(
      'strata\n  6 - ~9.0? sand\n  7  - 8 silt\n  ~9.0? - 12 clay',
    );
  });

  test('say the same depths afterwards', () => {
    const text = 'strata\n  6 - 9 sand\n  - 12 clay\n  0| - 3 silt\n  - 6 clay\n  7 - 8 peat';
    const tops = (lines: readonly string[]) =>
      analyse(lines, settings, 1)
        .log.strata.map(({ interval: { top, bottom } }) => [top?.value, bottom?.value])
        .sort();
    expect(tops((changed(text, 'Sort') ?? '').split('\n'))).toEqual(tops(text.replace('|', '').split('\n')));
  });

  test('are left where they are in order, and where nothing can be sorted', () => {
    expect(offered('strata\n  0 - 3 cl|ay\n  - 6 sand')).toEqual([]);
    expect(offered('test pump 40 L/min\n  60 5|\n  1 6')).toEqual([]);
  });

  test('a line that begins at no depth goes with the one before it', () => {
    expect(changed('water\n  54 fresh\n  38| fresh\n  quality sulphur\n  12 fresh', 'Sort')).toBe(
      'water\n  12 fresh\n  38 fresh\n  quality sulphur\n  54 fresh',
    );
    expect(changed('drilling air\n  6 - 12 18 min\n  lost 8\n  0 - 6| 20 min', 'Sort')).toBe(
      'drilling air\n  0 - 6 20 min\n  6 - 12 18 min\n  lost 8',
    );
    expect(changed('strata\n  6 - 9 sand\n  O - 7 claq\n\n  0 - 6| clay', 'Sort')).toBe(
      'strata\n\n  0 - 6 clay\n  6 - 9 sand\n  O - 7 claq',
    );
  });

  test('a base that a line goes on from is kept through what stands between', () => {
    expect(changed('drilling air\n  6 - 9 18 min\n  lost 8\n  - 12 9 min\n  0 - 6| 20 min', 'Sort')).toBe(
      'drilling air\n  0 - 6 20 min\n  6 - 9 18 min\n  lost 8\n  - 12 9 min',
    );
  });
});

describe('a section that is missing', () => {
  test('is put in as questions', () => {
    expect(changed('well A\nhole\n  0 - 9 200|', 'missing: strata')).toBe(
      'well A\nhole\n  0 - 9 200\n\nstrata\n  - ?  ?',
    );
  });

  test('asks for something on every line, and of a well that was not sealed not how it was', () => {
    expect(changed('well A\nhole\n  0 - 9 200\nstrata\n  - 9 clay\ncasing 0 - 9 steel|', 'missing: cap')).toBeNull();
    expect(changed('pump submersible\nhole\nstrata\ncasing\nwater\ntest\ndisinfection 1 h|', 'missing: cap')).toContain(
      '\n\ncap  ?',
    );
    const all = 'hole\nstrata\ncasing\nwater\ntest\npump ?\ncap ?\ndisinfection ?';
    const names = (text: string) => offered(text, true).filter((title) => title.includes('abandonment'));
    expect(names(`${all}\nstatus in use|`)).toEqual([]);
    expect(names(`${all}\nstatus abandoned|`)).toHaveLength(1);
  });

  test('of every kind reads without a fault', () => {
    const sections = table.filter(({ where, id }) => (where === 'section' || where === 'line') && id !== 'screen');
    for (const row of sections) {
      const { tree } = analyse(sectionOfQuestions(row).split('\n'), settings, 1);
      const faults = tree.lines.flatMap(({ problems }) => problems.map(({ code }) => code));
      expect(
        faults.filter((code) => code !== 'missing-value'),
        row.id,
      ).toEqual([]);
      expect(tree.lines[0]?.row, row.id).toBe(row.id);
    }
  });
});

describe('a remark that is a line', () => {
  test('water, a level, gas, returns lost', () => {
    expect(changed('strata\n  0 - 30 sand ; water at 26.4|', 'remark')).toBe(
      'strata\n  0 - 30 sand\n\nwater\n  26.4  ?',
    );
    expect(changed('strata\n  0 - 30| sand ; water at 26.4 m, 10 L/min # ask\nwater\n  12 fresh', 'remark')).toBe(
      'strata\n  0 - 30 sand                             # ask\nwater\n  12 fresh\n  26.4 m  10 L/min',
    );
    expect(changed('drilling air\n  0 - 30 18 min ; returns lost 22| - 23', 'remark')).toBe(
      'drilling air\n  0 - 30 18 min\n  lost  22 - 23',
    );
    expect(changed('strata\n  0 - 30| sand ; static level 5.2', 'remark')).toContain('water\n  level  5.2');
  });

  test('comes to stand among the lines of its section by its depth, with their indent', () => {
    expect(
      changed('water\n    9 fresh\n    # the main one\n    31 fresh\nstrata\n  0 - 30| sand ; water at 26.4', 'remark'),
    ).toBe('water\n    9 fresh\n    # the main one\n    26.4  ?\n    31 fresh\nstrata\n  0 - 30 sand');
  });

  test('leaves what else is said there, and a comment in its column', () => {
    expect(changed('strata\n  0 - 30| sand  ; soft; water at 26.4  # seen', 'remark')?.split('\n')[1]).toBe(
      '  0 - 30 sand  ; soft                 # seen',
    );
    expect(changed('strata\n  0 - 30| sand  ; water at 26.4; soft', 'remark')?.split('\n')[1]).toBe(
      '  0 - 30 sand  ; soft',
    );
  });

  test('is not offered where that line is there already', () => {
    expect(offered('water\n  26.4 m fresh\nstrata\n  0 - 30| sand ; water at 26.4')).toEqual([]);
    expect(offered('water\n  level 5.2 2026-05-07\nstrata\n  0 - 30| sand ; static level 5.2')).toEqual([]);
  });

  test('is not guessed from more than it says', () => {
    for (const remark of ['water at 26.4, perhaps', 'soft seam at 22', 'water at 26 or 27', 'no water at 26', 'water'])
      expect(offered(`strata\n  0 - 30| sand ; ${remark}`), remark).toEqual([]);
  });
});

describe('terms', () => {
  test('are written in full, and short, and mean the same', () => {
    expect(changed('strata\n  0 - 3 slty cl| brn', 'these lines in full')).toBe('strata\n  0 - 3 silty clay, brown');
    expect(changed('strata\n  0 - 3 silty cl|ay, dark grey', 'these lines short')).toBe(
      'strata\n  0 - 3 slty cl, dk gry',
    );
    const short = changed('strata\n  0 - 3 limestone|, grey, fractured', 'these lines short') ?? '';
    expect(short).toContain('lst, gry');
    expect(analyse(short.split('\n'), settings, 1).log.strata[0]?.description).toBe('limestone, grey, fractured');
  });

  test('keep the columns behind them, and are never written longer to be short', () => {
    expect(changed('strata\n  0 - 3   clay|, brown       ; soft   # KB', 'these lines short')).toBe(
      'strata\n  0 - 3   cl, brn           ; soft   # KB',
    );
    expect(offered('strata\n  0 - 3 cl, vy hd|', true)).not.toContain('Write the terms of these lines short');
  });

  test('that say more than the term do not give way to it', () => {
    expect(changed('use scho|ol', 'these lines in full')).toBeNull();
    expect(changed('strata\n  0 - 3 gneiss gry fe stain|ed', 'these lines in full')).toBe(
      'strata\n  0 - 3 gneiss grey fe stained',
    );
    expect(changed('strata\n  0 - 3 gneiss grey iron stain|ed', 'these lines short')).toContain('iron stained');
    expect(changed('casing 0 - 3 plas|tic, wld', 'these lines in full')).toBe('casing 0 - 3 plastic, welded');
    expect(changed('hole\n  0 - 9 150 dt|h', 'these lines in full')).toBe('hole\n  0 - 9 150 down-the-hole hammer');
  });

  test('in the whole file', () => {
    expect(changed('strata\n  0 - 3 cl| brn\n  - 9 sd\nhole\n  0 - 9 150 ct', 'file in full')).toBe(
      'strata\n  0 - 3 clay, brown\n  - 9 sand\nhole\n  0 - 9 150 cable tool',
    );
  });

  test('are told of only to one who asks', () => {
    expect(offered('strata\n  0 - 3 cl| brn')).toEqual([]);
    expect(offered('strata\n  0 - 3 cl| brn', true)).toContain('Write the terms of these lines in full');
  });
});

describe('units', () => {
  test('suggest themselves at the units line only', () => {
    expect(offered('units m| mm\nstrata\n  0 - 3 clay')).toEqual(['Convert the file to feet and inches']);
    expect(offered('units m mm\nstrata\n  0 - 3 cl|ay')).toEqual([]);
  });
});
