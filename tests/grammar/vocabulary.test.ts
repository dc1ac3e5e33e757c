import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Description } from '../../grammar/terms/description.ts';
import { readDescription, writeDescription } from '../../grammar/terms/description.ts';
import { descriptionLists, longForm, lookup, termLists } from '../../grammar/terms/index.ts';
import { piecesOf } from '../../grammar/terms/pieces.ts';

const read = (text: string): Description => readDescription(piecesOf(text));

const long = (text: string): string => {
  const pieces = piecesOf(text);
  return writeDescription(readDescription(pieces), pieces);
};

const materials = (text: string): readonly (readonly [string, string | null])[] =>
  read(text).materials.map(({ term, amount }) => [term.id, amount] as const);

/** Every word of the lists that descriptions draw on, in every spelling. */
const knownWords = termLists
  .filter(({ id }) => descriptionLists.includes(id))
  .flatMap(({ terms }) => terms)
  .flatMap(({ name, short, ground }) => [
    name,
    ...short,
    ...(ground?.adjective === undefined ? [] : [ground.adjective, ...(ground.adjectiveShort ?? [])]),
  ]);

const said = (list: readonly { readonly text: string }[]): readonly string[] => list.map(({ text }) => text).sort();

/** What a description says, without places and order. */
const meaning = (description: Description) => ({
  principal: description.principal?.id ?? null,
  materials: description.materials.map(({ term, amount }) => `${term.id} ${amount}`).sort(),
  colours: said(description.colours),
  qualities: description.qualities.map(({ list, term }) => `${list} ${term.id}`).sort(),
  symbols: said(description.symbols),
  names: said(description.names),
  unknown: said(description.unknown),
});

describe('the long form', () => {
  it.each([
    ['ts dk brn', 'topsoil, dark brown'],
    ['slty cl brn stf sm gvl', 'silty clay, brown, stiff, some gravel'],
    ['sd&gvl gry wet', 'sand and gravel, grey, wet'],
    ['lst gry frac', 'limestone, grey, fractured'],
    ['lst dk gry hd', 'limestone, dark grey, hard'],
    ['dk gry frac lst', 'limestone, dark grey, fractured'],
    ['SLTY CL BRN STF SM GVL', 'silty clay, brown, stiff, some gravel'],
  ])('of %s is %s', (written, expected) => {
    expect(long(written)).toBe(expected);
    expect(long(expected)).toBe(expected);
  });

  it.each([
    ['cl w/ stns', 'clay, with stones'],
    ['brn cl & gvl', 'clay and gravel, brown'],
    ['cl brn & gvl', 'clay and gravel, brown'],
    ['fn to crs sd, tr slt', 'sand, fine to coarse, trace silt'],
    ['sh gry slty', 'silty shale, grey'],
    ['lst w/ sh strks', 'limestone, with shale streaks'],
    ['v stf gry cl', 'clay, grey, very stiff'],
    ['gry-grn sh', 'shale, grey-green'],
    ['brn & gry till', 'till, brown and grey'],
    ['lt to med gry sh', 'shale, light to medium grey'],
    ['med gry slt', 'silt, medium grey'],
    ['fn to med gry sd', 'sand, grey, fine to medium'],
    ['wtr brg sd & gvl', 'sand and gravel, water bearing'],
    ['hard-pan', 'hardpan'],
    ['cl - stns', 'clay, stones'],
    ['rdsh brn sdy till', 'sandy till, reddish brown'],
  ])('expands %s to %s', (written, expected) => {
    expect(long(written)).toBe(expected);
    expect(long(expected)).toBe(expected);
  });

  it.each([
    ['gry cl & crs gvl', 'grey clay and coarse gravel'],
    ['brn cl gry sh', 'brown clay grey shale'],
    ['fn sd, crs gvl', 'fine sand, coarse gravel'],
    ['cl, brn, sm gvl, gry', 'clay, brown, some gravel, grey'],
  ])('keeps the order of %s, where a word could belong to either material', (written, expected) => {
    expect(long(written)).toBe(expected);
    expect(long(expected)).toBe(expected);
  });

  it('keeps unknown words and names as written and where they were', () => {
    expect(long('cl zorbly brn')).toBe('clay, zorbly, brown');
    expect(long('zorbly brn cl')).toBe('zorbly brown clay');
    expect(long('Fenmarrow lst gry')).toBe('Fenmarrow limestone, grey');
    expect(long('gry lst (Fenmarrow Formation)')).toBe('limestone, grey, Fenmarrow Formation');
  });
});

describe('reading', () => {
  it('tells how each material comes in', () => {
    expect(materials('slty cl sm gvl tr bldrs')).toEqual([
      ['silt', 'adjective'],
      ['clay', null],
      ['gravel', 'some'],
      ['boulders', 'trace'],
    ]);
    expect(materials('sd & gvl w/ cbls')).toEqual([
      ['sand', null],
      ['gravel', 'and'],
      ['cobbles', 'with'],
    ]);
    expect(materials('cl, trace sand & gravel')).toEqual([
      ['clay', null],
      ['sand', 'trace'],
      ['gravel', 'trace'],
    ]);
  });

  it('takes a class symbol in brackets, or in capitals beside small letters', () => {
    expect(said(read('silty sand (SM)').symbols)).toEqual(['SM']);
    expect(said(read('silty sand SM').symbols)).toEqual(['SM']);
    expect(read('CLAY SM GRAVEL').symbols).toEqual([]);
    expect(materials('CLAY SM GRAVEL')).toEqual([
      ['clay', null],
      ['gravel', 'some'],
    ]);
    expect(long('(SM)')).toBe('(SM)');
  });

  it('gives the place of everything', () => {
    const text = 'gry Fenmarrow lst, zorble, hard (GW)';
    const description = read(text);
    const at = ({ start, end }: { start: number; end: number }): string => text.slice(start, end);
    expect(description.colours.map(at)).toEqual(['gry']);
    expect(description.names.map(at)).toEqual(['Fenmarrow']);
    expect(description.materials.map(at)).toEqual(['lst']);
    expect(description.unknown.map(at)).toEqual(['zorble']);
    expect(description.qualities.map(at)).toEqual(['hard']);
    expect(description.symbols.map(at)).toEqual(['(GW)']);
  });

  it('keeps a capitalised word as a name only where the line has small letters', () => {
    expect(said(read('Zorble sand').names)).toEqual(['Zorble']);
    expect(said(read('ZORBLE SAND').unknown)).toEqual(['ZORBLE']);
    expect(said(read('zorble formation').names)).toEqual(['zorble']);
  });

  it('leaves the principal material open where none is named', () => {
    expect(read('brown, stiff').principal).toBeNull();
    expect(read('').principal).toBeNull();
    expect(read('some gravel').principal?.id).toBe('gravel');
    expect(read('same, plus gry sh').principal?.id).toBe('shale');
  });
});

describe('reading what was written', () => {
  const word = fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(...knownWords) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        'zorble',
        'Fenmarrow',
        'ZORK',
        'of',
        'in',
        'and',
        'to',
        'or',
        'plus',
        'formation',
        'upper',
      ),
    },
    { weight: 1, arbitrary: fc.constantFrom('SM', 'CL', '(GW)', '12', '#5', 'GW-GM') },
  );
  const mark = fc.constantFrom(' ', ' ', ' ', ' ', ', ', ' & ', '&', ' w/ ', '-', ' - ', '/', ' (', ') ', '; ', ' + ');
  const line = fc
    .array(fc.tuple(word, mark), { minLength: 1, maxLength: 9 })
    .map((pairs) => pairs.map(([text, between]) => text + between).join(''));
  const cased = fc.tuple(line, fc.boolean()).map(([text, capitals]) => (capitals ? text.toUpperCase() : text));

  it('gives the same meaning, and the same text again', () => {
    fc.assert(
      fc.property(cased, (text) => {
        const description = read(text);
        const written = long(text);
        const again = read(written);
        expect(long(written)).toBe(written);
        expect(meaning(again)).toEqual(meaning(description));
      }),
      { numRuns: 3000 },
    );
  });

  it('drops no unknown word and no name', () => {
    fc.assert(
      fc.property(cased, (text) => {
        const description = read(text);
        const written = long(text);
        for (const { text: kept } of [...description.unknown, ...description.names]) expect(written).toContain(kept);
      }),
      { numRuns: 500 },
    );
  });

  it('takes any text whatever', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => long(text).length >= 0),
      { numRuns: 1000 },
    );
  });

  it('finds every long form that it writes', () => {
    for (const { id, terms } of termLists) {
      if (!descriptionLists.includes(id)) continue;
      for (const term of terms) {
        const sense = lookup(term.name).find(({ list }) => list === id);
        expect(sense && longForm(sense), `${id} ${term.name}`).toBe(term.name);
      }
    }
  });
});
