import { describe, expect, test } from 'vitest';
import { onEnter } from '../../server/features/on-type.ts';
import { edited, marked } from './fixture.ts';

/** The text once Enter has been pressed; the mark is where the cursor then stands. */
const afterEnter = (text: string): string => {
  const { snapshot, at, lines } = marked(text);
  return edited(lines, onEnter(snapshot, at));
};

describe('behind Enter', () => {
  test('the depths above stand in their columns, and the words stay as they were typed', () => {
    expect(afterEnter('strata\n0-.3 ts dk brn\n-3.8 slty cl ; soft\n       - |')).toBe(
      'strata\n  0    - 0.3    ts dk brn\n       - 3.8    slty cl ; soft\n       - ',
    );
  });

  test('two depths without a dash get one', () => {
    expect(afterEnter('strata\n0 12 clay\n|')).toBe('strata\n  0    - 12     clay\n');
  });

  test('the dash that waits for its depth moves under those above', () => {
    expect(afterEnter('strata\n1200.55 - 1300 clay\n       - |')).toBe('strata\n  1200.55 - 1300   clay\n          - ');
  });

  test('a dash or a whole interval typed beside the dash that was there says the same once', () => {
    expect(afterEnter('strata\n  0    - 3      clay\n       - -6 sand\n       - |')).toBe(
      'strata\n  0    - 3      clay\n       - 6      sand\n       - ',
    );
    expect(afterEnter('strata\n  0    - 3      clay\n       - 3 - 6 sand\n       - |')).toBe(
      'strata\n  0    - 3      clay\n       - 6      sand\n       - ',
    );
  });

  test('a base in another unit is not the top that is typed', () => {
    const text = 'strata\n  0    - 12 ft   clay\n       - 12 - 20 sand\n       - ';
    expect(afterEnter(`${text}|`)).toBe(text);
  });

  test('a top that is not the base above stays as it was typed, to be asked about', () => {
    const text = 'strata\n  0    - 3      clay\n       - 4 - 6 sand\n       - ';
    expect(afterEnter(`${text}|`)).toBe(text);
  });

  test('a line that is not understood stays as it is', () => {
    expect(afterEnter('hole\n0 - 9 254 152\n|')).toBe('hole\n0 - 9 254 152\n');
  });

  test.each(['casing 0 - 7.2 steel\n  shoe 7.2\n  |', 'water\n38.5 fresh\n|', 'well KH-04\n|', '|', '; a remark\n|'])(
    'nothing to do in %j',
    (text) => {
      expect(afterEnter(text)).toBe(text.replace('|', ''));
    },
  );
});

describe('Enter on a line that said nothing', () => {
  test.each([
    ['strata\n  0    - 3      clay\n       - \n       |', 'strata\n  0    - 3      clay\n\n'],
    ['water\n  38.5     fresh\n  \n  |', 'water\n  38.5     fresh\n\n'],
  ])('leaves the section: %j', (text, left) => {
    expect(afterEnter(text)).toBe(left);
  });

  test('a dash with something in it is kept', () => {
    expect(afterEnter('strata\n  0    - 3      clay\n       - 6\n|')).toContain('- 6');
  });
});

test('a long section is lined up near the cursor, by the width of all of it', () => {
  const layers = Array.from({ length: 60 }, (_, at) => `-${at + 1} cl`);
  const lines = afterEnter(`strata\n1200.55-1201 ts\n${layers.join('\n')}\n|`).split('\n');
  expect(lines.at(-2)).toBe('          - 60     cl');
  expect(lines[2]).toBe('-1 cl');
});
