import { describe, expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
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
