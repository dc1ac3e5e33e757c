import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analysis/index.ts';
import type { Suggestion } from '../../server/features/completion/suggestion.ts';
import { allWords, type UsedWords, usedWords } from '../../server/features/completion/used-words.ts';
import { complete } from '../../server/features/completion.ts';
import { describeSuggestion } from '../../server/features/completion-docs.ts';
import { readPack } from '../../server/packs/read-pack.ts';
import { edited, marked, settings, snapshotOf } from './fixture.ts';

const offered = (text: string): readonly Suggestion[] => {
  const { snapshot, at } = marked(text);
  return complete(snapshot, at)?.suggestions ?? [];
};

const labels = (text: string): readonly string[] => offered(text).map(({ label }) => label);

/** The text after a suggestion is taken. */
const taken = (text: string, label: string): string => {
  const { snapshot, at, lines } = marked(text);
  const completion = complete(snapshot, at);
  const suggestion = completion?.suggestions.find((each) => each.label === label);
  if (completion === null || suggestion === undefined) throw new Error(`${label} is not offered`);
  const span = suggestion.from === null ? completion.replace : { ...completion.replace, start: suggestion.from };
  return edited(lines, [{ span, text: suggestion.insert }]);
};

const stop = (number: number): string => `\${${number}:?}`;

describe('at the start of a line', () => {
  test('an empty file is offered its head first', () => {
    expect(labels('|').slice(0, 3)).toEqual(['well', 'units', 'rules']);
  });

  test('what hangs on the open string comes first', () => {
    expect(labels('casing 0 - 7.2 steel\n  |').slice(0, 4)).toEqual(['shoe', 'centralizers', 'joints', 'screen']);
    expect(labels('test pump 40 L/min\n0 5.2\n|').slice(0, 3)).toEqual(['rate', 'recovery', 'observed']);
  });

  test('a keyword half typed does not hide what hangs on the section', () => {
    expect(labels('casing 0 - 7.2 steel\n  sh|')[0]).toBe('shoe');
  });

  test('a head line that is given is not offered again', () => {
    expect(labels('well KH-04\n|')).not.toContain('well');
    expect(labels('note one\n|')).toContain('note');
  });

  test('other spellings are matched', () => {
    const geology = offered('ge|').find(({ label }) => label === 'strata');
    expect(geology?.filter).toContain('geology');
  });

  test('a snippet has a stop for each depth and makes none up', () => {
    expect(taken('ca|', 'casing')).toBe(`casing ${stop(1)} - ${stop(2)} $0`);
    expect(taken('casing 0 - 7.2 steel\n  sh|', 'shoe')).toBe(`casing 0 - 7.2 steel\n  shoe ${stop(1)} $0`);
    expect(taken('st|', 'strata')).toBe('strata\n  $0');
  });

  test('every keyword can be explained', () => {
    const docs = offered('|').map(({ about }) => about && describeSuggestion(about));
    expect(docs.every((doc) => doc?.includes('```drillhand'))).toBe(true);
  });
});

describe('packs', () => {
  const limit = { value: 0.6, unit: 'm', text: '60 cm', source: 'Fen code, section 4', known: 'read', date: null };
  const fen = { id: 'fen-1', title: 'The Fen', notice: 'Ask the board.', limits: { 'stickup-least': limit } };

  test('one of the workspace is explained: what it asks, by what source, and that it is no law', () => {
    const read = readPack(JSON.stringify(fen));
    const own = { packs: 'pack' in read ? [read.pack] : [], unread: [] };
    const snapshot = analyse(['rules fen'], { ...settings, own }, 1);
    const found = complete(snapshot, { line: 0, column: 9 })?.suggestions.find(({ label }) => label === 'fen-1');
    const text = found?.about ? (describeSuggestion(found.about) ?? '') : '';
    expect(text).toContain('**fen-1**: The Fen');
    expect(text).toMatch(/least height of the casing above ground: 60 cm \(Fen code, section 4, read\)/);
    expect(text).toContain('not the law');
  });
});

describe('depths', () => {
  test('the next interval begins at the base above', () => {
    const [first] = offered('strata\n  0 - 3.8 clay\n  |');
    expect(first).toMatchObject({ label: '- ', detail: 'from 3.8, the base above' });
  });

  test('grout goes on from the fill above, not from a single depth', () => {
    const first = offered('strata\n  0 - 3 clay\n  - 4.5 sand\n\n  # note\n|')[0];
    expect(first?.detail).toBe('from 4.5, the base above');
  });

  test('after the dash: the bottom of the hole', () => {
    const found = offered('hole\n  0 - 61 152\nstrata\n  0 - |');
    expect(found.map(({ label, detail }) => [label, detail])).toEqual([['td', 'bottom of the hole, 61 m']]);
  });

  test('what hangs on a string is offered its foot', () => {
    const string = 'casing +0.45 - 7.2 steel\n';
    expect(labels(`${string}  shoe |`)).toEqual(['7.2']);
    expect(labels(`${string}  grout 0 - |`)).toEqual(['7.2', 'td']);
  });

  test('a foot that nobody wrote down is not offered', () => {
    expect(labels('casing +0.45 - ? steel\n  shoe |')).toEqual([]);
  });
});

describe('items', () => {
  const grout = 'casing 0 - 7.2 steel\n  grout 0 - 7.2';

  test('terms and labels of the items that the line still lacks', () => {
    expect(labels(`${grout} |`)).toEqual(expect.arrayContaining(['neat cement', 'tremie', 'w/c', 'bentonite chips']));
    const later = labels(`${grout} neat cement, w/c 0.5, |`);
    expect(later).not.toContain('neat cement');
    expect(later).not.toContain('w/c');
    expect(later).toContain('tremie');
  });

  test('what stands after the cursor is not lacking', () => {
    expect(labels(`${grout} | neat cement`)).not.toContain('bentonite chips');
  });

  test('short forms are matched', () => {
    const brown = offered('strata\n  0 - 3 clay, b|').find(({ label }) => label === 'brown');
    expect(brown?.filter.split(' ')).toContain('brn');
    expect(brown?.about).toMatchObject({ kind: 'term', list: 'colour' });
  });

  test('a term of several words replaces those that are typed', () => {
    expect(taken(`${grout} neat ce|`, 'neat cement')).toBe(`${grout} neat cement`);
    expect(taken(`${grout} tr|`, 'tremie')).toBe(`${grout} tremie`);
  });

  test('a label brings the blank before its value', () => {
    expect(taken(`${grout} neat cement, w|`, 'w/c')).toBe(`${grout} neat cement, w/c `);
  });

  test('no items before the depths', () => {
    expect(labels('strata\n  0 |')).not.toContain('clay');
  });

  test('terms are explained when asked', () => {
    const clay = offered('strata\n  0 - 3 cl|').find(({ label }) => label === 'clay');
    expect(clay?.about && describeSuggestion(clay.about)).toContain('**clay**');
  });
});

describe('units', () => {
  const grout = 'casing 0 - 7.2 steel\n  grout 0 - 7.2 neat cement';

  test('a number that waits for its unit is offered those of the items that lack', () => {
    const found = labels(`${grout}, 0.29 |`);
    expect(found[0]).toBe('m3');
    expect(found).toEqual(expect.arrayContaining(['bags', 'kg', 'L']));
    expect(labels(`${grout}, 0.29 m3, 9 |`)[0]).toBe('bags');
  });

  test('right behind the number there are units alone', () => {
    expect(offered(`${grout}, 0.29|`).every(({ kind }) => kind === 'unit')).toBe(true);
    expect(taken(`${grout}, 0.29|`, 'm3')).toBe(`${grout}, 0.29m3`);
  });

  test('a file in feet is offered its own units first, and gallons by name', () => {
    const found = labels('units ft in\nwater\n  38 fresh, 25|');
    expect(found.indexOf('gpm-us')).toBeLessThan(found.indexOf('L/min'));
    expect(found).not.toContain('gpm');
    expect(labels('units ft in gal-us\nwater\n  38 fresh, 25|')).toContain('gpm');
  });

  test('a depth is offered lengths once a letter of one is typed: it has the unit of the file without', () => {
    expect(labels('strata\n  0 - 38|')).toEqual([]);
    expect(labels('strata\n  0 - 38m|')).toEqual(['m', 'mm']);
    expect(labels('strata\n  0 - 38f|')).toEqual(['ft']);
  });

  test('a number that is read without a unit is not asked for one', () => {
    expect(offered('hole\n  0 - 7.2 254 |').some(({ kind }) => kind === 'unit')).toBe(false);
  });
});

describe('what is shown without being asked for', () => {
  const unasked = (text: string): boolean => {
    const { snapshot, at } = marked(text);
    return complete(snapshot, at)?.unasked ?? false;
  };

  test.each(['rules |', 'casing 0 - 7.2 steel\n  shoe |', 'test pump 40 |', 'strata\n  0 - |'])(
    '%j waits for it',
    (text) => {
      expect(unasked(text)).toBe(true);
    },
  );

  test.each(['strata\n  0 - 3 clay |', '  |', 'strata\n  0 - 3 clay\n  |', 'owner |'])('%j may be done', (text) => {
    expect(unasked(text)).toBe(false);
  });
});

describe('words of other lines', () => {
  test('packs after rules, units after units', () => {
    expect(labels('rules |')).toContain('general');
    expect(labels('rules general |')).not.toContain('general');
    expect(labels('units ft |')).toEqual(expect.arrayContaining(['in', 'gal-us', 'gal-imp']));
  });

  test('after allow: the rules that speak of the line, and of the line below where it stands alone', () => {
    expect(labels('strata\n  0 - 3 claq  # allow |')).toEqual(['unknown-term']);
    expect(labels('strata\n# allow |\n  0 - 3 claq')).toEqual(['unknown-term']);
    expect(labels('strata\n  0 - 3 claq  # |')).toEqual(['allow']);
    expect(taken('strata\n  0 - 3 claq  # allow un|', 'unknown-term')).toBe(
      'strata\n  0 - 3 claq  # allow unknown-term: ',
    );
  });

  test.each(['strata\n  0 - 3 clay ; c|', '# some c|', 'note c|', 'owner c|'])('nothing in %j', (text) => {
    expect(labels(text)).toEqual([]);
  });

  test('nothing on a line too long to be read', () => {
    expect(labels(`strata\n  0 - 3 ${'clay '.repeat(2000)}|`)).toEqual([]);
  });
});

describe('the next section', () => {
  test('behind an empty line what a log of this kind lacks comes first', () => {
    expect(labels('well KH-04\nhole\n  0 - 61 152\n\n|').slice(0, 3)).toEqual(['strata', 'casing', 'water']);
    expect(labels('use monitoring\nhole\n  0 - 61 152\nstrata\n  0 - 61 clay\n\n|').slice(0, 2)).toEqual([
      'casing',
      'screen',
    ]);
    expect(labels('status dry\nhole\n  0 - 61 152\nstrata\n  0 - 61 clay\n\n|')[0]).toBe('abandonment');
    expect(labels('hole\n  0 - 61 152 air rotary\nstrata\n  0 - 61 clay\ncasing 0 - 7 steel\n\n|')[0]).toBe('drilling');
  });

  test('what the string lacks comes before what it has', () => {
    expect(labels('casing 0 - 7.2 steel\n  shoe 7.2\n  |')[0]).toBe('centralizers');
  });

  test('whole sections come behind the keywords, in the units of the file', () => {
    const whole = offered('units ft in\n\nca|').find(({ kind }) => kind === 'template');
    expect(whole?.label).toBe('casing: with shoe, centralizers and grout');
    expect(whole?.insert).toContain('ft3');
    expect(labels('ca|').indexOf('casing')).toBeLessThan(labels('ca|').indexOf(whole?.label ?? ''));
  });
});

describe('what was used before', () => {
  const log = 'strata\n  0 - 3 till, brown\n  - 6 till, grey\n  - 9 gravel, grey\n';

  test('comes first, the most used before the others', () => {
    const found = labels(`${log}  - 12 |`);
    expect(found.slice(0, 2).toSorted()).toEqual(['grey', 'till']);
    expect(found.slice(2, 4).toSorted()).toEqual(['brown', 'gravel']);
  });

  test('in the logs beside this one comes next', () => {
    const { snapshot, at } = marked('strata\n  0 - 3 marl\n  - 6 |');
    const used = allWords([usedWords(snapshotOf(log).tree.lines)]);
    const found = complete(snapshot, at, { used, today: null })?.suggestions.map(({ label }) => label);
    expect(found?.[0]).toBe('marl');
    expect(found?.slice(1, 3).toSorted()).toEqual(['grey', 'till']);
  });

  test('the material above is not taken for a guess at the next', () => {
    expect(labels('strata\n  0 - 3 till, brown\n  - 6 gravel, grey\n  - 9 |').slice(0, 4).toSorted()).toEqual([
      'brown',
      'gravel',
      'grey',
      'till',
    ]);
  });
});

describe('sizes of pipe', () => {
  // ASME B36.10M: 6 in schedule 40 is 6.625 x 0.280 in, 18.97 lb/ft (28.26 kg/m) with plain ends.
  test('with wall and weight', () => {
    const six = offered('casing +0.45 - 7.2 steel |').find(({ label }) => label === '168.3 x 7.1');
    expect(six?.detail).toBe('6 in sch 40 steel, 28.3 kg/m');
    const inches = offered('units ft in\ncasing +2 - 40 steel |').find(({ label }) => label === '6.625 x 0.28');
    expect(inches?.detail).toBe('6 in sch 40 steel, 19.0 lb/ft');
  });

  test('by the nominal size that is typed', () => {
    expect(taken('casing +0.45 - 7.2 steel 6|', '168.3 x 7.1')).toBe('casing +0.45 - 7.2 steel 168.3 x 7.1');
    expect(labels('casing +0.45 - 7.2 steel 6|')).not.toContain('114.3 x 6');
  });

  test('of the material that the line names', () => {
    expect(
      offered('casing 0 - 7.2 pvc |')
        .filter(({ kind }) => kind === 'size')
        .every(({ detail }) => detail.includes('plastic')),
    ).toBe(true);
    expect(offered('casing 0 - 7.2 concrete |').some(({ kind }) => kind === 'size')).toBe(false);
  });

  test.each(['casing +0.45 - 7|', 'casing +0.45 |', 'casing 0 - 7.2 steel 168.3 x 6.4 |', 'hole\n  0 - 6|'])(
    'none in %j',
    (text) => {
      expect(offered(text).some(({ kind }) => kind === 'size')).toBe(false);
    },
  );
});

const began = 'began 2026-05-04\nfinished 2026-05-06\n';
const noWords: UsedWords = new Map();

describe('dates', () => {
  /** The week behind 2026-05-06 or 2026-05-04. */
  const week = (first: number): readonly string[] =>
    [0, 1, 2, 3, 4, 5, 6].map((day) => `2026-05-${String(first + day).padStart(2, '0')}`);

  test('those of the log, the nearest above first, then today, the days of the work and the week behind it', () => {
    const { snapshot, at } = marked(`${began}reported |`);
    const found = complete(snapshot, at, { used: noWords, today: '2026-06-01' });
    const dates = ['2026-05-06', '2026-05-04', '2026-06-01', '2026-05-05'];
    expect(found?.suggestions.map(({ label }) => label)).toEqual([...dates, ...week(7)]);
    expect(found?.unasked).toBe(true);
  });

  test('come by themselves where nothing else is usually said before them', () => {
    const first = (text: string): string | undefined => labels(began + text)[0];
    expect(first('water\n  level 5.2 |')).toBe('2026-05-06');
    expect(first('test bail 40 L/min |')).toBe('2026-05-06');
    expect(first('disinfection 100 mg/L, 12 h, |')).toBe('2026-05-06');
    expect(first('casing 0 - 7 steel 168.3 x 6.4 |')).not.toBe('2026-05-06');
    expect(first('casing 0 - 7 steel 168.3 x 6.4\n  grout 0 - 7 neat cement, |')).not.toBe('2026-05-06');
  });

  test('are found by the day alone', () => {
    expect(labels(`${began}reported 05|`)).toContain('2026-05-05');
    expect(labels(`${began}reported 04|`)).not.toContain('2026-05-05');
    expect(taken(`${began}reported 05|`, '2026-05-05')).toBe(`${began}reported 2026-05-05`);
  });

  test('work of many weeks is not told day by day', () => {
    const dates = ['2026-05-06', '2026-01-04', ...week(7)];
    expect(labels('began 2026-01-04\nfinished 2026-05-06\nreported |')).toEqual(dates);
    const backwards = ['2026-05-04', '2026-05-06', ...week(5).filter((date) => date !== '2026-05-06')];
    expect(labels('began 2026-05-06\nfinished 2026-05-04\nreported |')).toEqual(backwards);
  });

  test('none is made up', () => {
    expect(labels('reported |')).toEqual([]);
    expect(labels('reported 05-04|')).toEqual([]);
  });

  const datesAt = (text: string, today: string | null): readonly string[] => {
    const { snapshot, at } = marked(text);
    return complete(snapshot, at, { used: noWords, today })?.suggestions.map(({ label }) => label) ?? [];
  };

  test('a day that nobody named yet is the next such day of the log', () => {
    expect(datesAt('began 2026-05-30\nfinished 02|', null)).toEqual(['2026-06-02']);
    expect(datesAt('began 2026-02-03\nfinished 31|', null)).toEqual([]);
    expect(taken('began 2026-05-30\nfinished 02|', '2026-06-02')).toBe('began 2026-05-30\nfinished 2026-06-02');
  });

  test('a month and day is the last such day until today, in the year before where it must', () => {
    expect(datesAt('began 05-04|', '2026-11-25')).toEqual(['2026-05-04']);
    expect(datesAt('began 12-04|', '2026-11-25')).toEqual(['2025-12-04']);
    expect(datesAt('began 25|', '2026-11-25')).toEqual(['2026-11-25']);
    expect(datesAt('began 26|', '2026-11-25')).toEqual(['2026-10-26']);
    expect(datesAt('began 02-30|', '2026-11-25')).toEqual([]);
    expect(datesAt('began 05-1|', '2026-11-25')).toHaveLength(10);
    expect(datesAt('began 3|', '2026-11-25')).toEqual(['2026-10-31', '2026-10-30']);
  });

  test('where something else comes next, only dates that are known', () => {
    const grout = 'casing 0 - 7 steel 168.3 x 6.4\n  grout 0 - 7 neat cement, 10-|';
    const found = datesAt(`began 2026-05-04\n${grout}`, '2026-11-25');
    expect(found.filter((label) => /^\d{4}-/.test(label))).toEqual([]);
  });
});

describe('what was said before in words of its own', () => {
  const beside = [
    'strata\n  0 - 3 clay ; width of the drive shoe\n  - 4 sand ; wet\n  - 5 marl ; width of the drive shoe',
    'shift 2026-05-05 07:00 - 17:30, 0 - 42.7, crew RB KT, rain 4 C',
  ].map((text) => usedWords(snapshotOf(text).tree.lines));

  const found = (text: string) => {
    const { snapshot, at } = marked(text);
    return complete(snapshot, at, { used: allWords(beside), today: null });
  };
  const said = (text: string): readonly string[] => found(text)?.suggestions.map(({ label }) => label) ?? [];

  test('a remark is offered as soon as it begins as one of the log or its folder does', () => {
    expect(said('hole\n  0 - 18 187 ; w|')).toEqual(['width of the drive shoe']);
    expect(said('hole\n  0 - 18 187 ; width of|')).toEqual(['width of the drive shoe']);
    expect(said('hole\n  0 - 18 187 ; width of the drive shoe|')).toEqual([]);
    expect(said('hole\n  0 - 18 187 ; x|')).toEqual([]);
    const own = 'strata\n  0 - 3 clay ; width at the top\n  - 4 sand ; w|';
    expect(said(own)).toEqual(['width at the top', 'width of the drive shoe']);
  });

  test('and takes the place of the whole remark', () => {
    const at = found('hole\n  0 - 18 187 ; width o|');
    expect(at?.suggestions.map(({ from }) => from)).toEqual(['  0 - 18 187 ; '.length]);
  });

  test('none where nothing of it is typed, which would stand in the way of the next line', () => {
    expect(said('hole\n  0 - 18 187 ; |')).toEqual([]);
  });

  test('the crew of another shift', () => {
    expect(said('shift 2026-05-06 07:00 - 17:30, cr|')[0]).toBe('crew RB KT');
    const again = 'shift 2026-05-05 07:00 - 17:30, crew TO BT\nshift 2026-05-06 07:00 - 17:30, cr|';
    expect(said(again).slice(0, 2)).toEqual(['crew TO BT', 'crew RB KT']);
    expect(said('shift 2026-05-06 07:00 - 17:30, crew TO BT, cr|')).not.toContain('crew RB KT');
  });
});

describe('the place of a well', () => {
  test('its grid first, and behind two coordinates their datum and how good they are', () => {
    expect(labels('place |')).toEqual(['utm']);
    expect(labels('place 44.6128 -78.3042 |').slice(0, 2)).toEqual(['WGS84', 'NAD83']);
    expect(labels('place 44.6128 -78.3042 NAD83 |')).toEqual(['accuracy']);
    expect(taken('place 44.6128 -78.3042 NAD83 a|', 'accuracy')).toBe('place 44.6128 -78.3042 NAD83 accuracy ');
    expect(labels('place utm 17T 712345 4943210 N|').slice(0, 2)).toEqual(['NAD83', 'NAD83 CSRS']);
  });
});

describe('the head', () => {
  const beside = [
    'contractor Quillback Drilling\nlocation lot 9, con 3, Fenmarrow Township\nlicence ?',
    'contractor Quillback Drilling\ntechnician T. Orme',
    'contractor Stillwater Wells',
  ].map((text) => usedWords(snapshotOf(text).tree.lines));

  const besides = (text: string) => {
    const { snapshot, at } = marked(text);
    return complete(snapshot, at, { used: allWords(beside), today: null });
  };
  const values = (text: string): readonly string[] => besides(text)?.suggestions.map(({ label }) => label) ?? [];

  test('is offered what the logs beside it say, the commonest first', () => {
    expect(values('contractor |')).toEqual(['Quillback Drilling', 'Stillwater Wells']);
    expect(besides('contractor |')?.unasked).toBe(true);
    expect(values('technician |')).toEqual(['T. Orme']);
    expect(values('licence |')).toEqual([]);
    expect(values('owner |')).toEqual([]);
  });

  test('takes the units of the logs beside it, their comments left out', () => {
    const { snapshot, at } = marked('units |');
    const used = usedWords(snapshotOf('units m mm   # of bare numbers').tree.lines);
    const found = complete(snapshot, at, { used, today: null })?.suggestions.map(({ label }) => label) ?? [];
    expect(found.slice(0, 3)).toEqual(['m mm', 'm', 'ft']);
  });

  test('names other wells by their ids, and none where a well says its own', () => {
    const wells = ['well KH-02', 'well KH-04', 'well OB-11'].map((text) => usedWords(snapshotOf(text).tree.lines));
    const idsFor = (text: string): readonly string[] => {
      const { snapshot, at } = marked(text);
      const found = complete(snapshot, at, { used: allWords(wells), today: null });
      return found?.suggestions.map(({ label }) => label) ?? [];
    };
    expect(idsFor('well KH-04\nreplaces |')).toEqual(['KH-02', 'OB-11']);
    expect(idsFor('well KH-04\nnested KH|')).toEqual(['KH-02']);
    expect(idsFor('well |')).toEqual([]);
  });

  test('a value goes on with what is typed of it', () => {
    const found = besides('contractor Quillback Dr|');
    expect(found?.suggestions.map(({ label, from }) => [label, from])).toEqual([['Quillback Drilling', 11]]);
    expect(values('contractor Otter|')).toEqual([]);
  });

  test('the list opens again behind a keyword for which something is known', () => {
    const opening = (text: string): readonly string[] =>
      besides(text)
        ?.suggestions.filter(({ opens }) => opens)
        .map(({ label }) => label) ?? [];
    expect(opening('|')).toEqual(['contractor', 'technician']);
    expect(opening('began 2026-05-04\n|')).toEqual(expect.arrayContaining(['contractor', 'finished']));
  });

  test('of a place in words, its last part is offered after a comma', () => {
    expect(values('location |')).toEqual([]);
    expect(values('location lot 30, con 2, |')).toEqual(['Fenmarrow Township']);
  });
});

describe('a slip', () => {
  test('is offered the names that are spelled nearly like it', () => {
    expect(labels('strata\n  0 - 3 limstone|')[0]).toBe('limestone');
    expect(labels('stratta|')[0]).toBe('strata');
    expect(taken('strata\n  0 - 3 limstone|', 'limestone')).toBe('strata\n  0 - 3 limestone');
  });

  test('a word that something begins with is no slip', () => {
    expect(labels('strata\n  0 - 3 limes|')[0]).toBe('limestone');
    expect(offered('strata\n  0 - 3 lim|').some(({ detail }) => detail.startsWith('spelled'))).toBe(false);
  });
});
