import { describe, expect, it } from 'vitest';
import { readTerms } from '../../grammar/terms/description.ts';
import { lookup, matchAt, nearest, normalise, termLists } from '../../grammar/terms/index.ts';
import { piecesOf } from '../../grammar/terms/pieces.ts';
import type { ListId } from '../../grammar/terms/term.ts';

const unitSpellings = new Set(
  (
    'm cm mm ft in l ml m3 ft3 gal gpm gph lps lpm cfm cf kg g t lb lbs oz s sec min h hr hrs d day days ' +
    'kpa mpa pa bar psi kw hp w % ppm c f deg bag bags sack sacks pail pails usgpm igpm'
  ).split(' '),
);

const everyTerm = termLists.flatMap((list) => list.terms.map((term) => ({ list: list.id, term })));

const formsOf = ({ term }: (typeof everyTerm)[number]): readonly string[] => [
  ...[term.name, ...term.short],
  ...(term.ground?.adjective === undefined ? [] : [term.ground.adjective, ...(term.ground.adjectiveShort ?? [])]),
];

describe('lists of terms', () => {
  it('spell no term like a unit', () => {
    // `ML` is a class symbol of the standard; symbols are told by their capitals and never stand after a number.
    const worded = everyTerm.filter(({ list }) => list !== 'class-symbol');
    const clashes = worded.flatMap(formsOf).filter((form) => unitSpellings.has(normalise(form)));
    expect(clashes).toEqual([]);
  });

  it('give every term of a list its own id', () => {
    for (const { id, terms } of termLists) expect(new Set(terms.map((term) => term.id)).size, id).toBe(terms.length);
  });

  it('give a form to one term of a list only', () => {
    const owners = new Map<string, string>();
    const clashes = everyTerm.flatMap((entry) =>
      formsOf(entry).flatMap((form) => {
        const key = `${entry.list} ${normalise(form)}`;
        const owner = owners.get(key);
        owners.set(key, owner ?? entry.term.id);
        return owner === undefined || owner === entry.term.id ? [] : [`${key}: ${owner}, ${entry.term.id}`];
      }),
    );
    expect(clashes).toEqual([]);
  });

  it('write short forms in lower case without full stops or doubles', () => {
    for (const { term } of everyTerm) {
      for (const form of term.short) expect(form, term.id).toMatch(/^[a-z0-9&+/() ]+$/);
      expect(new Set(term.short).size, `${term.id}: ${term.short}`).toBe(term.short.length);
      expect(term.short, term.id).not.toContain(term.name);
    }
  });

  it('explain every term in one sentence and say where it is from', () => {
    for (const { term } of everyTerm) {
      expect(term.meaning, term.id).toMatch(/^\S.*\.$/);
      expect(term.source, term.id).not.toBe('');
    }
  });

  it('say of every material and formation what the ground is, and of every fill its family', () => {
    for (const { list, term } of everyTerm) {
      expect(term.ground !== undefined, term.id).toBe(list === 'material' || list === 'formation');
      expect(term.fill !== undefined, term.id).toBe(list === 'fill-material');
    }
  });

  // ASTM D2487-17, table 1 and figures 1, 3 and 4: fifteen group symbols and eleven dual ones.
  it('hold the class symbols of the standard', () => {
    const symbols = termLists.find(({ id }) => id === 'class-symbol')?.terms.map(({ id }) => id) ?? [];
    expect(symbols).toHaveLength(26);
    expect(symbols).toEqual(expect.arrayContaining(['GW', 'SM', 'CL-ML', 'PT', 'GC-GM', 'SC-SM']));
  });
});

describe('patterns', () => {
  // FGDC-STD-013-2006, lithologic patterns: 607 massive sand or sandstone, 616 silt or siltstone, 620 clay or clay shale, …
  it.each([
    ['sandstone', 607],
    ['silt', 616],
    ['clay', 620],
    ['chalk', 626],
    ['limestone', 627],
    ['dolomite', 642],
    ['peat', 657],
    ['coal', 658],
    ['underclay', 660],
    ['gypsum', 667],
    ['till', 681],
    ['sand till', 682],
    ['ablation till', 682],
    ['clay till', 683],
    ['silt till', 683],
    ['basal till', 683],
    ['loess', 684],
    ['quartzite', 702],
    ['slate', 703],
    ['schist', 705],
    ['gneiss', 708],
    ['soapstone', 710],
    ['basalt', 717],
    ['granite', 718],
    ['porphyry', 729],
    ['quartz', 732],
  ])('of %s has the standard’s number', (name, number) => {
    expect(lookup(name).find(({ list }) => list === 'material')?.term.ground?.fgdc).toBe(number);
  });
});

describe('lookup', () => {
  const idsOf = (form: string): readonly string[] => lookup(form).map(({ list, term }) => `${list} ${term.id}`);

  it('finds short forms whatever their case and stops', () => {
    expect(idsOf('Lst.')).toContain('material limestone');
    expect(idsOf('GRY')).toContain('colour grey');
    expect(idsOf('DTH')).toEqual(['hole-method down-the-hole-hammer']);
  });

  it('tells adjectives from the materials that they come from', () => {
    expect(lookup('slty').map(({ term, adjective }) => [term.id, adjective])).toContainEqual(['silt', true]);
    expect(lookup('silt').map(({ term, adjective }) => [term.id, adjective])).toContainEqual(['silt', false]);
  });

  it('gives nothing for a word that no list has', () => {
    expect(lookup('zorble')).toEqual([]);
    expect(lookup('')).toEqual([]);
  });
});

describe('matchAt', () => {
  const found = (text: string, lists: readonly ListId[]) => {
    const match = matchAt(text.split(' '), 0, lists);
    return match === null ? null : [match.length, match.sense.term.id];
  };

  it('takes the longest form', () => {
    expect(found('air rotary 254', ['hole-method'])).toEqual([2, 'air-rotary']);
    expect(found('down the hole hammer', ['hole-method'])).toEqual([4, 'down-the-hole-hammer']);
    expect(found('neat cement tremie', ['fill-material', 'placement'])).toEqual([2, 'neat-cement']);
  });

  it('reads short forms within a form of several words', () => {
    expect(found('wtr brg sd', ['moisture'])).toEqual([2, 'water-bearing']);
    expect(found('sd rk', ['material'])).toEqual([2, 'sandstone']);
  });

  it('keeps to the lists asked for, the first one first', () => {
    expect(found('driven', ['casing-state'])).toEqual([1, 'driven']);
    expect(found('driven', ['material'])).toBeNull();
    expect(matchAt(['ss'], 0, ['casing-material', 'material'])?.sense.term.id).toBe('stainless-steel');
    expect(matchAt(['ss'], 0, ['material', 'casing-material'])?.sense.term.id).toBe('sandstone');
    expect(matchAt([], 0, ['material'])).toBeNull();
  });
});

describe('nearest', () => {
  const near = (form: string, ...lists: ListId[]): readonly string[] =>
    nearest(form, lists, 3).map(({ term }) => term.id);

  it('finds terms one slip away', () => {
    expect(near('limestnoe', 'material')[0]).toBe('limestone');
    expect(near('graval', 'material')).toContain('gravel');
    expect(near('bentonit chips', 'fill-material')[0]).toBe('bentonite-chips');
  });

  it('gives no more than asked, and nothing for what is like no term', () => {
    expect(nearest('sandd', ['material'], 1)).toHaveLength(1);
    expect(near('qqqqqqqq', 'material')).toEqual([]);
  });
});

describe('readTerms', () => {
  it('reads the terms of the lists given and hands back the rest', () => {
    const { found, unknown } = readTerms(piecesOf('steel welded zorble wire-wound'), [
      'casing-material',
      'joint-type',
      'screen-kind',
    ]);
    expect(found.map(({ term, start, end }) => [term.id, start, end])).toEqual([
      ['steel', 0, 5],
      ['welded', 6, 12],
      ['wire-wound', 20, 30],
    ]);
    expect(unknown).toEqual([{ text: 'zorble', start: 13, end: 19 }]);
  });
});
