import { describe, expect, test } from 'vitest';
import { placesOfId, wellIdAt, whyNoId } from '../../server/features/well-id.ts';
import { matches, wellSymbols } from '../../server/features/well-symbols.ts';
import { marked, snapshotOf } from './fixture.ts';

describe('the id of a well', () => {
  const idAt = (text: string): string | null => {
    const { snapshot, at } = marked(text);
    return wellIdAt(snapshot, at)?.text ?? null;
  };

  test('stands on its own line and behind observed', () => {
    expect(idAt('well KH|-04')).toBe('KH-04');
    expect(idAt('test pump 40 L/min\n  observed OW|-1, r 30')).toBe('OW-1');
    expect(idAt('replaces KH|-02')).toBe('KH-02');
    expect(idAt('nested KH|-04')).toBe('KH-04');
    expect(idAt('owner KH|-04')).toBeNull();
    expect(idAt('well ?|')).toBeNull();
  });

  test('is found wherever it is named, in any letter case', () => {
    const lines = [
      'well kh-04',
      'nested KH-04',
      'test pump 40 L/min',
      '  observed KH-04, r 30',
      '  observed OW-1, r 9',
    ];
    expect(placesOfId(lines, 'KH-04').map(({ span, isOwn }) => [span.line, isOwn])).toEqual([
      [0, true],
      [1, false],
      [3, false],
    ]);
  });

  test('may not be empty, taken, or unreadable', () => {
    expect(whyNoId('KH-05', ['KH-04'])).toBeNull();
    expect(whyNoId('Well 7', [])).toBeNull();
    expect(whyNoId(' ? ', [])).toContain('needs an id');
    expect(whyNoId('kh-04', ['KH-04'])).toContain('"KH-04" already');
    expect(whyNoId('A\nB', [])).toContain('line ends');
    expect(whyNoId('A, B', [])).toContain('commas');
    expect(whyNoId('A # allow x: y', [])).toContain('# allow');
  });
});

describe('what a log is looked for by', () => {
  test('its id, people, place and formations', () => {
    const symbols = wellSymbols(
      snapshotOf(
        'well KH-04\nowner Kestrel Co-op\nsite Lot 4\ntag ?\nstrata\n  0 - 3 clay\n  - 9 Fenmarrow Formation, limestone',
      ),
    );
    expect(symbols.map(({ kind, name }) => `${kind} ${name}`)).toEqual([
      'well KH-04',
      'place Lot 4',
      'person Kestrel Co-op',
      'formation Fenmarrow',
    ]);
  });

  test('letters in their order are enough', () => {
    expect(matches('Kestrel Hollow', 'kho')).toBe(true);
    expect(matches('Kestrel Hollow', '')).toBe(true);
    expect(matches('Kestrel Hollow', 'hk')).toBe(false);
  });
});
