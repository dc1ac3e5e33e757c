import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { formatText } from '../../server/features/format.ts';
import { buildLog } from '../../server/model/index.ts';

const logOf = (text: string) => buildLog(parseText(text));
const problemsOf = (text: string) => parseText(text).lines.flatMap(({ problems }) => problems);
const codesOf = (text: string) => problemsOf(text).map(({ code }) => code);

describe('a word that might count bags', () => {
  test('is the beginning of a term where it is one', () => {
    const [entry] = logOf('hole\n 0 - 12 1200 bucket auger').hole;
    expect(entry?.diameter?.value).toBeCloseTo(1.2, 9);
    expect(entry?.methods.map(({ id }) => id)).toEqual(['bucket-auger']);
    expect(logOf('hole\n 0 - 12 48 in bucket auger').hole[0]?.diameter?.value).toBeCloseTo(1.2192, 9);
  });

  test('counts where it is none', () => {
    const [fill] =
      logOf('casing 0 - 9 pvc 114.3 x 6\n seal 0 - 3 bentonite chips, 8 buckets, gravity').strings[0]?.fills ?? [];
    expect(fill?.bags?.count?.value).toBe(8);
  });
});

describe('perforations', () => {
  test('have short forms on the line of their pipe', () => {
    const [string] = logOf('liner 0 - 61 pvc 114.3 sdr 26, perf 48.8-61').strings;
    expect(string?.perforated.map(({ top, bottom }) => [top?.value, bottom?.value])).toEqual([[48.8, 61]]);
  });

  test('on a line of their own are sent to it', () => {
    const [problem] = problemsOf('casing 0 - 9 pvc 114.3 x 6\n perf 4-9');
    expect(problem).toMatchObject({ code: 'unknown-keyword', meant: [], facts: { head: 'casing' } });
    expect(problemsOf('perf 4-9')[0]?.facts).toEqual({});
  });
});

describe('a unit that goes on behind a stroke', () => {
  test.each([
    ['water\n 20 1 L/mn', 'L/mn', 'L/min'],
    ['drilling air 21 m3/mn', 'm3/mn', 'm3/min'],
  ])('%s is unknown, with the one that it is near to', (text, written, meant) => {
    expect(problemsOf(text)).toMatchObject([{ code: 'unknown-unit', written, meant: expect.arrayContaining([meant]) }]);
  });

  test('is a unit where it is known', () => expect(codesOf('water\n 20 1 L/min')).toEqual([]));
});

describe('names of the ground', () => {
  const strataOf = (text: string) => logOf(`strata\n ${text}`).strata[0];

  test('stand in quotes, whatever they look like', () => {
    const text = '0 - 5 limestone, "Caly Beds", grey';
    expect(strataOf(text)?.names).toEqual(['Caly Beds']);
    expect(strataOf(text)?.principal?.id).toBe('limestone');
    expect(codesOf(`strata\n ${text}`)).toEqual([]);
    expect(strataOf(text)?.description).toBe('limestone, "Caly Beds", grey');
  });

  test('with a capital letter are kept', () => {
    for (const text of ['Verulam limestone', 'Bobcaygeon', 'Caly Formation', 'Sandford']) {
      expect(codesOf(`strata\n 0 - 5 ${text}, grey`)).toEqual([]);
    }
    expect(strataOf('0 - 5 Verulam limestone')?.names).toEqual(['Verulam']);
  });

  test('one letter away from a term are slips', () => {
    expect(problemsOf('strata\n 0 - 5 Caly, grey')).toMatchObject([
      { code: 'unknown-term', written: 'Caly', meant: expect.arrayContaining(['clay']) },
    ]);
    expect(codesOf('strata\n 0 - 5 Limstone and Grvel')).toEqual(['unknown-term', 'unknown-term']);
    expect(strataOf('0 - 5 Caly, grey')?.names).toEqual([]);
  });

  test('one letter away from a material are kept where a unit of rock follows, a colour misspelt is not', () => {
    for (const text of ['Caly Shale', 'Caly Beds', 'Sandd Member', 'Caly Fm.']) {
      expect(codesOf(`strata\n 0 - 5 ${text}`)).toEqual([]);
    }
    expect(problemsOf('strata\n 0 - 5 Gery Shale')).toMatchObject([
      { code: 'unknown-term', meant: ['grey', 'very', 'dry'] },
    ]);
    expect(codesOf('strata\n 0 - 5 Caly shale')).toEqual(['unknown-term']);
  });

  test('are offered in the order of their nearness, whole words before short forms', () => {
    expect(problemsOf('strata\n 0 - 5 caly')[0]?.meant[0]).toBe('clay');
  });

  test.each([
    ['No. 6 coal, black', 'No. 6', 'coal', 'No. 6 coal, black'],
    ['no 2 sd', 'no 2', 'sand', 'no 2 sand'],
    ['Herrin No. 6? coal', 'No. 6', 'coal', 'Herrin No. 6? coal'],
    ['shale, #4 seam', '#4', 'shale', 'shale, #4 seams'],
  ])('%s has the number of a seam', (text, name, principal, long) => {
    const stratum = strataOf(`0 - 5 ${text}`);
    expect(stratum?.names).toContain(name);
    expect(stratum?.principal?.id).toBe(principal);
    expect(stratum?.materials.map(({ amount }) => amount)).toEqual([null]);
    expect(stratum?.description).toBe(long);
    expect(stratum?.grain).toBeNull();
    expect(codesOf(`strata\n 0 - 5 ${text}`)).toEqual([]);
  });

  test('are no numbers of seams where a size or the lack of something is meant', () => {
    expect(strataOf('0 - 5 shale, no coal')?.materials.map(({ id, amount }) => [id, amount])).toEqual([
      ['shale', null],
      ['coal', 'no'],
    ]);
    expect(strataOf('0 - 5 gravel, no 60 mm')?.names).toEqual([]);
    expect(strataOf('0 - 5 gravel, no 60 mm')?.grain?.value).toBeCloseTo(0.06, 9);
  });
});

describe('a mass', () => {
  const fillOf = (text: string) => logOf(`casing 0 - 20 pvc 114.3 x 6\n ${text}`).strings[0]?.fills[0];

  test('is of all that was placed where no bags are counted', () => {
    expect(fillOf('pack 10 - 20 filter sand, 400 kg')).toMatchObject({ mass: { value: 400 }, bags: null });
    expect(fillOf('pack 10 - 20 filter sand, total 400 kg')).toMatchObject({ mass: { value: 400 }, bags: null });
  });

  test('is of one bag beside their number, on either side of it', () => {
    for (const bags of ['16 bags 25 kg', '25 kg, 16 bags', '16 x 25 kg bags']) {
      const fill = fillOf(`pack 10 - 20 filter sand, ${bags}`);
      expect([fill?.mass, fill?.bags?.count?.value, fill?.bags?.massEach?.value]).toEqual([null, 16, 25]);
    }
    expect(fillOf('pack 10 - 20 filter sand, 16 bags, 25 kg, total 400 kg')).toMatchObject({ mass: { value: 400 } });
  });
});

describe('a lone question mark', () => {
  test('behind pump asks for its kind', () => {
    expect(codesOf('pump ?')).toEqual([]);
    expect(logOf('pump ?').questions).toMatchObject([{ kind: 'unknown' }]);
  });
});

describe('a question mark in a description', () => {
  const questionsOf = (text: string) =>
    logOf(`strata\n 0 - 10 ${text}`).questions.map(({ kind, span }) => [
      kind,
      text.slice(span.start - 8, span.end - 8),
    ]);

  test('doubts the word that it is glued to, and else asks what nobody wrote down', () => {
    expect(questionsOf('brn? clay')).toEqual([['doubtful', '?']]);
    expect(questionsOf('clay ?')).toEqual([['unknown', '?']]);
    expect(questionsOf('clay?, ?, wet')).toEqual([
      ['doubtful', '?'],
      ['unknown', '?'],
    ]);
  });

  test('stays in the long form and takes nothing from what is read', () => {
    const stratum = logOf('strata\n 0 - 10 brn? slty cl ?').strata[0];
    expect(stratum?.description).toBe('silty clay, brown?, ?');
    expect(stratum?.principal?.id).toBe('clay');
  });

  test('is the size of its grains behind their label', () => {
    expect(logOf('strata\n 0 - 10 gravel to ?').strata[0]?.grain).toMatchObject({ value: null });
  });
});

describe('another well', () => {
  test('is named by its id, kept as written, and formatted as the head is', () => {
    const text = 'well KH-07\nreplaces kh 02; west\nnested KH-04';
    const { header } = logOf(text);
    expect([header.replaces?.text, header.nested?.text]).toEqual(['kh 02; west', 'KH-04']);
    expect(codesOf(text)).toEqual([]);
    expect(formatText(text).split('\n')).toEqual(['well      KH-07', 'replaces  kh 02; west', 'nested    KH-04']);
  });
});

describe('the text of a header', () => {
  const ownerOf = (text: string) => logOf(text).header.owner?.text;

  test.each([
    ['owner? Larkspur Fold', '? Larkspur Fold', []],
    ['owner, Larkspur Fold', 'Larkspur Fold', []],
    ['owner: Larkspur Fold', 'Larkspur Fold', ['stray-mark']],
    ['onwer Larkspur Fold', 'Larkspur Fold', ['near-keyword']],
  ])('%s is kept', (text, owner, codes) => {
    expect(ownerOf(text)).toBe(owner);
    expect(codesOf(text)).toEqual(codes);
  });
});

describe('a size of pipe', () => {
  test.each([
    ['od 6.625 x 0.25', 6.625, null],
    ['outside 6.625 x 0.25', 6.625, null],
    ['nominal 6 x 0.25', null, 6],
  ])('%s has its wall behind it', (text, outside, nominal) => {
    const log = logOf(`units ft in\ncasing 0 - 20 steel ${text}`);
    const size = log.strings[0]?.size;
    expect([size?.outside?.number ?? null, size?.nominal?.number ?? null]).toEqual([outside, nominal]);
    expect(size?.outsideDiameter).toBeCloseTo(6.625 * 0.0254, 9);
    expect(size?.insideDiameter).toBeCloseTo(6.125 * 0.0254, 9);
  });
});

describe('a grade of pipe', () => {
  test.each([
    ['A53 B, welded', 'A53 B'],
    ['A53 gr. B welded', 'A53 gr. B'],
    ['welded J55', 'J55'],
    ['API X42, welded', 'API X42'],
    ['grade B, welded', 'B'],
  ])('%s is read with its label or without', (text, grade) => {
    const [string] = logOf(`casing 0 - 9 steel 168.3 x 6.4 ${text}`).strings;
    expect(string?.grade?.text).toBe(grade);
    if (text.includes('welded')) expect(string?.joint?.id).toBe('welded');
  });
});
