import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formatText } from '../../server/features/format.ts';
import { clauseAt, keysOf, packById, packs } from '../../server/packs/index.ts';
import type { Limit, LimitName, Pack } from '../../server/packs/limits.ts';
import { contextOf, findingsIn } from '../rules/checked.ts';

const folder = new URL('../../samples/packs/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(`${name}.well`, folder), 'utf8');
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.well'))
  .map((name) => name.replace('.well', ''));

/** Packs with samples: the others hold nothing but a deadline, and are checked one by one elsewhere. */
const sampled = packs.filter(({ id }) => !id.startsWith('record-'));

/** What each sample breaks: the rule, the line counted from 1, and where in the pack the limit stands. */
const broken: Readonly<Record<string, readonly string[]>> = {
  'california-b74-breaks': [
    '11 annulus-thin limits/oversize-least',
    '14 seal-shorter-than-pack cases/0',
    '14 chips-too-large limits/chip-share-most',
  ],
  'california-b74-breaks-community': ['14 seal-shorter-than-pack cases/1'],
  'general-breaks': [
    '10 strata-short-of-bottom limits/foot-difference-most',
    '11 stickup-low limits/stickup-least',
    '11 annulus-thin limits/oversize-least',
    '12 shoe-not-at-foot limits/shoe-foot-difference-most',
    '13 joints-do-not-add-up limits/joints-difference-most',
    '14 centralizer-gap limits/centralizer-gap-most',
    '14 centralizer-none-near-shoe limits/centralizer-shoe-most',
    '15 grout-far-over limits/grout-surplus',
    '15 grout-settled limits/grout-settled-most',
    '16 grout-short limits/grout-allowance',
    '16 bags-volume-disagree limits/bags-volume-tolerance',
    '16 mix-too-wet limits/water-cement-most',
    '18 uphole-velocity-low limits/uphole-velocity-least',
    '18 drilled-on-too-soon limits/set-time-cement',
    '19 uphole-velocity-low limits/uphole-velocity-least',
    '20 rate-break limits/rate-break-ratio-least',
    '20 uphole-velocity-low limits/uphole-velocity-least',
    '21 uphole-velocity-low limits/uphole-velocity-least',
    '26 static-against-first-reading limits/static-first-reading-most',
    '27 drawdown-faster-than-pumped limits/drawdown-volume-ratio-most',
    '28 drawdown-faster-than-pumped limits/drawdown-volume-ratio-most',
    '29 drawdown-faster-than-pumped limits/drawdown-volume-ratio-most',
    '29 test-levels-wrong-way limits/test-wrong-way-level-least',
  ],
  'general-breaks-pack': [
    '14 pack-not-above-screen limits/pack-above-screen-most',
    '14 pack-grain-unlike-formation limits/pack-grain-ratio-least',
    '15 pack-grain-unlike-formation limits/pack-grain-ratio-most',
  ],
  'general-breaks-screen': [
    '11 entrance-velocity-high limits/entrance-velocity-most',
    '11 slot-wide-for-pack limits/pack-kept-back-least',
    '12 pack-not-above-screen limits/pack-above-screen-least',
  ],
  'maine-232-breaks': [
    '11 stickup-low limits/stickup-least',
    '11 shoe-required-by-pack cases/1',
    '11 wall-too-thin cases/0',
  ],
  'michigan-r325-breaks': [
    '5 record-due due/0',
    '12 annulus-thin cases/0',
    '15 mix-too-wet limits/water-cement-most',
    '15 bentonite-share-high limits/bentonite-share-most',
    '17 drilled-on-too-soon cases/1',
  ],
  'michigan-r325-breaks-pressure': [
    '11 annulus-thin limits/oversize-least',
    '14 mix-too-wet limits/water-cement-most',
    '16 drilled-on-too-soon limits/set-time-cement',
  ],
  'minnesota-4725-breaks': [
    '11 annulus-thin cases/2',
    '14 mix-too-wet limits/water-cement-most',
    '14 gravity-placement-too-deep cases/1',
    '15 bentonite-in-rock limits/bentonite-in-rock-most',
    '16 tremie-foot-high limits/tremie-foot-most',
    '18 drilled-on-too-soon cases/0',
  ],
  'minnesota-4725-breaks-wide': ['11 annulus-thin cases/3', '16 drilled-on-too-soon limits/set-time-cement'],
  'montana-36-21-breaks': [
    '6 record-due due/0',
    '13 stickup-low limits/stickup-least',
    '13 casing-too-short cases/1',
    '13 rock-seat-short limits/rock-seat-least',
    '13 annulus-thin cases/0',
    '15 seal-shorter-than-pack cases/2',
    '17 drilled-on-too-soon limits/set-time-cement',
  ],
  'ontario-903-breaks': [
    '5 record-due due/0',
    '5 record-due due/1',
    '8 well-too-shallow limits/well-depth-least',
    '12 stickup-low limits/stickup-least',
    '12 casing-too-short limits/casing-depth-least',
    '12 annulus-thin limits/oversize-least',
    '12 wall-too-thin cases/0',
    '14 solids-too-low limits/solids-least',
    '14 montmorillonite-low limits/montmorillonite-least',
    '17 drilled-on-too-soon limits/set-time-cement',
    '18 test-readings-missing testReadings',
    '21 test-too-short limits/test-time-least',
    '22 disinfection-under-strength limits/chlorine-least',
    '22 disinfection-too-short limits/chlorine-contact-least',
  ],
  'ontario-903-breaks-shallow': ['6 well-too-shallow limits/well-depth-never-under'],
  'ontario-903-breaks-strong': ['11 annulus-thin cases/1', '15 disinfection-over-strength limits/chlorine-most'],
  'oregon-690-210-breaks': [
    '11 rock-seat-short limits/rock-seat-least',
    '11 annulus-thin limits/oversize-least',
    '13 seal-shorter-than-pack limits/seal-depth-least',
  ],
  'oregon-690-210-breaks-without-clay': [
    '11 annulus-thin cases/0',
    '13 seal-shorter-than-pack limits/seal-depth-least',
  ],
  'quebec-q2-r6-breaks': [
    '11 casing-too-short cases/2',
    '11 rock-seat-short limits/rock-seat-least',
    '11 shoe-required-by-pack cases/0',
    '11 annulus-thin cases/1',
    '12 cuttings-as-seal limits/native-seal-most',
    '16 test-too-short limits/test-time-least',
  ],
  'texas-16-76-breaks': ['6 record-incomplete record/0', '6 record-due due/0', '11 stickup-low limits/stickup-least'],
  'texas-16-76-breaks-plugged': ['10 record-due due/1'],
  'washington-173-160-breaks': [
    '5 record-due due/0',
    '6 record-incomplete record/2',
    '6 record-incomplete record/4',
    '6 record-incomplete record/0',
    '6 record-incomplete record/5',
    '6 record-incomplete record/6',
    '6 record-incomplete record/1',
    '6 record-incomplete record/3',
    '7 stickup-low limits/stickup-least',
    '9 record-incomplete record/8',
    '9 record-incomplete record/9',
    '9 record-incomplete record/12',
    '9 record-incomplete record/13',
    '9 mix-too-wet limits/water-cement-most',
    '9 bentonite-share-high limits/bentonite-share-most',
  ],
  'washington-173-160-breaks-bare': ['18 record-incomplete record/11'],
  'washington-173-160-breaks-empty': [
    '4 record-incomplete record/10',
    '4 record-incomplete record/2',
    '4 record-incomplete record/8',
    '4 record-incomplete record/9',
    '4 record-incomplete record/4',
    '4 record-incomplete record/0',
    '4 record-incomplete record/12',
    '4 record-incomplete record/13',
    '4 record-incomplete record/5',
    '4 record-incomplete record/6',
    '4 record-incomplete record/7',
    '4 record-incomplete record/1',
    '4 record-incomplete record/3',
  ],
  'wisconsin-nr812-breaks': [
    '14 casing-too-short cases/3',
    '14 annulus-thin limits/oversize-least',
    '14 casing-narrow-for-rock cases/4',
    '16 centralizer-set-small limits/centralizer-set-least',
    '17 grout-short limits/grout-allowance',
    '19 drilled-on-too-soon limits/set-time-cement',
    '20 disinfection-under-strength limits/chlorine-least',
    '20 disinfection-too-short limits/chlorine-contact-least',
  ],
  'wisconsin-nr812-breaks-crystalline': ['8 casing-too-short cases/1'],
  'wisconsin-nr812-breaks-deep': [
    '11 shoe-required-by-pack limits/shoe-beyond',
    '11 annulus-thin limits/oversize-least',
    '11 annulus-thin cases/5',
    '13 gravity-placement-too-deep cases/6',
  ],
  'wisconsin-nr812-breaks-limestone': ['8 casing-too-short cases/2'],
  'wisconsin-nr812-breaks-sandstone': ['8 casing-too-short cases/0'],
};

/**
 * Limits on which no finding rests by itself: they say how another one is taken. For each a text, and what to
 * change of the limit so that the findings of that text are others; where it only stands in a message, its words.
 */
const servants: Readonly<Record<string, { readonly text: string; readonly changed: Partial<Limit> }>> = {
  'air-rating-loss': {
    text: 'hole\n  0 - 61 254\ndrilling air 10 m3/min 1000 kPa, pipe 89\n  7.2 - 13.2 18 min air',
    changed: { text: 'half of the rating' },
  },
  'bentonite-water-each': {
    text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 cement-bentonite, bentonite 2 %, w/c 0.62',
    changed: { value: 0 },
  },
  'centralizer-string-least': {
    text: 'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  grout 0 - 40 neat cement',
    changed: { value: 50 },
  },
  'rate-break-rods-least': {
    text: 'strata\n  0 - 61 limestone\ndrilling\n  6 - 12 10 min air\n  - 18 10 min air\n  - 24 30 min air\n  - 30 30 min air',
    changed: { value: 3 },
  },
  'uphole-velocity-most': {
    text: 'hole\n  0 - 61 254\ndrilling air 10 m3/min 1000 kPa, pipe 89\n  7.2 - 13.2 18 min air',
    changed: { text: '4,000 ft/min' },
  },
  'test-wrong-way-share-least': {
    text: 'test pump 40 L/min\n  0 5.2\n  1 7\n  2 6.8\n  3 9\n  4 8.8\n  60 11.9',
    changed: { value: 0.5 },
  },
};

const nameOf = (key: string): string => key.split('/').at(-1) ?? '';

describe('limits that serve others', () => {
  test.each(Object.entries(servants))('%s changes what is found', (name, { text, changed }) => {
    const general = packById('general');
    const limit = general?.limits[name as LimitName];
    if (!general || !limit) throw new Error(`general has no ${name}`);
    const own: Pack = { ...general, limits: { ...general.limits, [name]: { ...limit, ...changed } } };
    const messages = (packsOfWorkspace: readonly Pack[]) =>
      findingsIn(`rules general\n${text}`, {}, undefined, packsOfWorkspace).map(({ message }) => message);
    expect(messages([own])).not.toEqual(messages([]));
  });
});

/** The findings of a sample that rest on its pack. */
function found(name: string, pack: Pack): { line: string; key: string }[] {
  const text = read(name);
  const { limits } = contextOf(text);
  return findingsIn(text).flatMap(({ span, rule, limit }) => {
    const at = clauseAt(limits, limit ?? '');
    if (at?.pack.id !== pack.id) return [];
    return [{ line: `${span.line + 1} ${rule} ${at.key.slice(pack.id.length + 1)}`, key: at.key }];
  });
}

const breaksOf = ({ id }: Pack): string[] => names.filter((name) => name.startsWith(`${id}-breaks`));

test('every sample belongs to a pack, names it, and is formatted', () => {
  for (const name of names) {
    const id = name.replace(/-(breaks|passes).*/, '');
    expect(contextOf(read(name)).log.packs.map(({ text }) => text)).toEqual([packById(id)?.id]);
    expect(formatText(read(name)), name).toBe(read(name));
  }
});

describe.each(sampled.map((pack) => [pack.id, pack] as const))('%s', (id, pack) => {
  test.each(breaksOf(pack))('%s breaks what it is meant to', (name) => {
    expect(found(name, pack).map(({ line }) => line)).toEqual(broken[name]);
  });

  test('everything that it asks is broken by a sample', () => {
    const keys = new Set(breaksOf(pack).flatMap((name) => found(name, pack).map(({ key }) => key)));
    expect(keysOf(pack).filter((key) => !keys.has(key) && servants[nameOf(key)] === undefined)).toEqual([]);
  });

  test('its good well has no warning, and nothing of the pack', () => {
    const name = `${id}-passes`;
    const loud = findingsIn(read(name)).filter(({ severity }) => severity === 'error' || severity === 'warning');
    const replaced = pack.state === 'replaced' ? ['historical-pack'] : [];
    expect(loud.map(({ rule }) => rule)).toEqual(replaced);
    expect(found(name, pack)).toEqual([]);
  });
});
