import { describe, expect, test } from 'vitest';
import { clauseAt, keysOf, limitGiven, limitsFor, limitsGiven, packById, packs } from '../../server/packs/index.ts';
import { limitTable } from '../../server/packs/limit-names.ts';
import { type Facts, noFacts, type When } from '../../server/packs/when.ts';
import { whenText } from '../../server/packs/words.ts';
import { findingsIn } from '../rules/checked.ts';

const valueFor = (id: string, name: keyof typeof limitTable, facts: Partial<Facts>) =>
  limitGiven(limitsFor([id]).limits, name, { ...noFacts, ...facts })?.value ?? null;

const foot = 0.3048; // NIST SP 811, exact

describe('a limit that depends on what the log says', () => {
  test.each([
    [{ rock: 'sandstone' }, 30],
    [{ rock: 'crystalline' }, 40],
    [{ rock: 'limestone' }, 40],
    [{ rock: 'limestone', topOfRock: 12 * foot }, 60],
    [{ rock: 'limestone', topOfRock: 20 * foot }, 40],
    [{ rock: 'other' }, null],
    [{}, null],
  ] as const)('Wisconsin casing for %j', (facts, feet) => {
    const value = valueFor('wisconsin-nr812', 'casing-depth-least', facts);
    if (feet === null) expect(value).toBeNull();
    else expect(value).toBeCloseTo(feet * foot, 9);
  });

  test('a case takes the place of what the pack asks of every well', () => {
    const pressed = { joint: 'welded', placements: ['pressure'] } as const;
    expect(valueFor('wisconsin-nr812', 'oversize-least', {})).toBeCloseTo(0.1016, 9);
    expect(valueFor('wisconsin-nr812', 'oversize-least', pressed)).toBeCloseTo(0.0508, 9);
    expect(valueFor('michigan-r325', 'set-time-cement', { bentonite: true })).toBe(48 * 3600);
    expect(valueFor('minnesota-4725', 'set-time-cement', { fill: 'rapid-setting-cement' })).toBe(12 * 3600);
  });

  test('of two cases that hold, the stricter counts', () => {
    // Minnesota Rules 4725.4250 subp. 3: 12 in inside, and more than ten feet into limestone.
    const wide = { rock: 'limestone', topOfRock: 40 * foot, foot: 120 * foot, bore: 0.33655 } as const;
    expect(valueFor('minnesota-4725', 'oversize-least', wide)).toBeCloseTo(3.5 * 0.0254, 9);
    expect(valueFor('minnesota-4725', 'oversize-least', { ...wide, bore: 0.15405 })).toBeCloseTo(3 * 0.0254, 9);
  });

  test('casing that goes less than ten feet into limestone is not judged as casing in it', () => {
    const shallow = { rock: 'limestone', topOfRock: 40 * foot, foot: 49 * foot } as const;
    const { limits } = limitsFor(['minnesota-4725']);
    expect(limitGiven(limits, 'oversize-least', { ...noFacts, ...shallow })).toMatchObject({ pack: 'general' });
    expect(valueFor('minnesota-4725', 'oversize-least', { ...shallow, foot: 51 * foot })).toBeCloseTo(3 * 0.0254, 9);
  });

  test('where the pack is silent, general speaks', () => {
    const { limits } = limitsFor(['minnesota-4725']);
    expect(limitGiven(limits, 'oversize-least', noFacts)).toMatchObject({ pack: 'general' });
    expect(limits['bags-volume-tolerance']).toMatchObject({ pack: 'general' });
    expect(limitsFor(['wisconsin-nr812']).limits['set-time-cement']).toMatchObject({ value: 12 * 3600 });
  });

  test('facts for the whole well narrow the limits at once', () => {
    const facts: Facts = { ...noFacts, uses: ['public-supply'] };
    expect(limitsFor(['california-b74'], facts).limits['seal-depth-least']?.value).toBeCloseTo(50 * foot, 9);
    expect(limitsFor(['california-b74']).limits['seal-depth-least']).toBeUndefined();
  });
});

describe('limits of several packs', () => {
  test('the strictest wins and is named', () => {
    const { limits } = limitsFor(['maine-232', 'montana-36-21', 'texas-16-76']);
    expect(limits['stickup-least']).toMatchObject({ pack: 'montana-36-21' });
  });

  test('those counted in different ways stand side by side', () => {
    const { limits } = limitsFor(['wisconsin-nr812', 'california-b74', 'ontario-903']);
    const given = limitsGiven(limits, 'oversize-least', noFacts);
    expect(given.map(({ pack, counted }) => `${pack} ${counted}`)).toEqual([
      'wisconsin-nr812 over nominal',
      'california-b74 over outside',
    ]);
  });
});

describe('keys', () => {
  test.each(packs.map((pack) => [pack.id, pack] as const))('%s: each leads to what it names', (id, pack) => {
    const { limits } = limitsFor([id]);
    for (const key of keysOf(pack)) expect(clauseAt(limits, key)?.pack.id).toBe(id);
    expect(clauseAt(limits, `${id}/limits/nothing`)).toBeNull();
  });

  test('the name of a limit leads to the one in force', () => {
    const { limits } = limitsFor(['montana-36-21']);
    expect(clauseAt(limits, 'stickup-least')).toMatchObject({
      pack: { id: 'montana-36-21' },
      clause: { text: '18 in' },
    });
    expect(clauseAt(limits, 'wall-least')).toBeNull();
  });
});

describe('every pack', () => {
  test.each(packs.map((pack) => [pack.id, pack] as const))('%s says where each figure comes from', (_, pack) => {
    expect(pack.notice).toMatch(/^A help for checking, not the law/);
    for (const key of keysOf(pack)) {
      const clause = clauseAt(limitsFor([pack.id]).limits, key)?.clause;
      expect(clause?.text, key).not.toBe('');
      expect(clause?.source, key).not.toBe('');
      if (clause?.known === 'common practice') expect(clause.source).toMatch(/no source|plain content/);
    }
  });

  test.each(packs.map((pack) => [pack.id, pack] as const))(
    '%s gives each value in the SI unit of its limit',
    (_, pack) => {
      for (const [name, { unit }] of Object.entries(pack.limits))
        expect(unit, name).toBe(limitTable[name as keyof typeof limitTable].unit);
      for (const { limit, unit } of pack.cases) expect(unit, limit).toBe(limitTable[limit].unit);
    },
  );

  test('what is not certain of a reading is said with it', () => {
    const uncertain = packs.flatMap((pack) =>
      keysOf(pack).filter((key) => clauseAt(limitsFor([pack.id]).limits, key)?.clause.uncertain),
    );
    expect(uncertain).toEqual([
      'minnesota-4725/cases/3',
      'montana-36-21/cases/1',
      'ontario-903/cases/1',
      'oregon-690-210/limits/seal-depth-least',
    ]);
    const [told] = findingsIn(
      'rules oregon-690-210\nunits ft in\ncasing +1.5 - 60 steel 6.625 x 0.25\n  grout 0 - 15 neat cement',
    ).filter(({ rule }) => rule === 'seal-shorter-than-pack');
    expect(told?.message).toContain('(oregon-690-210, 690-210-0150(1)(a)(C), reading not certain)');
  });

  test('no event that starts a clock is given as certain', () => {
    for (const { due } of packs) for (const each of due) expect(each.assumed).toBe(true);
  });

  test('only Quebec is replaced, and says so', () => {
    expect(packs.filter(({ state }) => state === 'replaced').map(({ id }) => id)).toEqual(['quebec-q2-r6']);
    expect(packById('quebec-q2-r6')?.notice).toContain('no well passes by it');
  });
});

test.each([
  [{ rock: ['limestone'], topOfRockAbove: 6.096 }, 'in limestone, top of rock above 6.1 m'],
  [{ rock: ['any'], clay: false }, 'in rock, without clay'],
  [{ joint: ['welded'], placement: ['pressure', 'braden-head'] }, 'joints welded, placed by pressure or braden head'],
] as [When, string][])('the conditions %j in words', (when, words) => {
  expect(whenText(when)).toBe(words);
});
