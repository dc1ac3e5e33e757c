import { describe, expect, test } from 'vitest';
import type { Span } from '../../grammar/span.ts';
import { allowDefinition } from '../../server/features/allowed-lines.ts';
import { contactDefinition, contactReferences } from '../../server/features/contacts.ts';
import { documentHighlights } from '../../server/features/document-highlights.ts';
import { documentLinks } from '../../server/features/document-links.ts';
import { hover } from '../../server/features/hover.ts';
import { marked, snapshotOf } from './fixture.ts';

const log = (place: string): string =>
  `
  hole
    0 - 7.2 254
    - 61 152
  strata
    0 - 6.1 clay
    - 7.2 sand
    - 61 limestone
  casing +0.45 - 7.2 steel 168.3
    shoe 7.2
    centralizers 1.5 7.2
    grout 0 - 7.2 neat cement
  water
    7.2 fresh, 25 L/min
    level 7.2 2026-05-07
  `.replace(place.replace('|', ''), place);

const shown = (lines: readonly string[], span: Span | null): string | null =>
  span === null ? null : `${span.line}: ${lines[span.line]?.slice(span.start, span.end)}`;

describe('the definition of a depth', () => {
  const defined = (text: string): string | null => {
    const { snapshot, at, lines } = marked(text);
    return shown(lines, contactDefinition(snapshot, at));
  };

  test('is the base of the layer that ends there, from the shoe, the grout, the water', () => {
    expect(defined(log('shoe 7|.2'))).toBe('5: 7.2');
    expect(defined(log('grout 0 - 7.|2'))).toBe('5: 7.2');
    expect(defined(log('steel 168.3\n    shoe 7.2'.replace('7.2', '7.2|')))).toBe('5: 7.2');
  });

  test('without a layer it is the base of the hole, else the foot of a string', () => {
    expect(defined('hole\n  0 - 9 200\ncasing 0 - 9 steel\n  shoe |9')).toBe('1: 9');
    expect(defined('casing 0 - 9 steel\n  shoe |9')).toBe('0: 9');
  });

  test('of a top that goes on from above is the base above', () => {
    expect(defined(log('    |- 7.2 sand'))).toBe('4: 6.1');
    expect(defined(log('    -| 61 limestone'))).toBe('5: 7.2');
  });

  test('there is none of a level, of a length, and of nothing', () => {
    expect(defined(log('level 7.|2'))).toBeNull();
    expect(defined('strata\n  0 - 6.1 clay\ncasing 0 - 12.2 steel\n  joints 6.|1 6.1')).toBeNull();
    expect(defined('|')).toBeNull();
  });
});

describe('references to a contact', () => {
  const references = (text: string, withBase = true): (string | null)[] => {
    const { snapshot, at, lines } = marked(text);
    return contactReferences(snapshot, at, withBase).map((span) => shown(lines, span));
  };

  test('are what leans on it, and the layer that begins there', () => {
    const all = ['1: 7.2', '2: -', '5: 7.2', '6: -', '7: 7.2', '8: 7.2', '9: 7.2', '10: 7.2', '12: 7.2'];
    expect(references(log('    - 7.|2 sand'))).toEqual(all);
    expect(references(log('shoe 7.|2'), false)).toEqual(all.filter((each) => each !== '5: 7.2'));
  });

  test('a depth from the top of the casing is another', () => {
    expect(references('strata\n  0 - 5.|2 clay\ncasing +0.5 - 9 steel\nwater\n  5.2 fresh\n  level 5.2 toc')).toEqual([
      '1: 5.2',
      '4: 5.2',
    ]);
    const { snapshot, at } = marked('strata\n  0 - 5.|2 clay\nwater\n  level 5.2 toc');
    expect(documentHighlights(snapshot, at)).toHaveLength(1);
  });
});

describe('the lines that an allow speaks for', () => {
  const silenced = (text: string): string | null => {
    const { snapshot, at, lines } = marked(text);
    return shown(lines, allowDefinition(snapshot, at));
  };

  test('the next that says something', () => {
    expect(silenced('strata\n# allow unknown-te|rm: a name\n# allow interval-gap: so\n  0 - 3 claq')).toBe(
      '3: 0 - 3 claq',
    );
  });

  test('one behind a line leads nowhere but to what is said of the rule', () => {
    const text = 'strata\n  0 - 3 claq # allow unknown-|term: a name';
    expect(silenced(text)).toBeNull();
    const { snapshot, at } = marked(text);
    expect(documentLinks(snapshot).map(({ to, name }) => `${to} ${name}`)).toEqual(['rule unknown-term']);
    expect(hover(snapshot, at)?.markdown).toContain('Silences `unknown-term` on this line');
  });

  test('none where none follows, and none beside the name of the rule', () => {
    expect(silenced('strata\n# allow unknown-te|rm: a name')).toBeNull();
    expect(silenced('strata\n  0 - 3 claq # allow unknown-term: a na|me')).toBeNull();
  });
});

describe('links', () => {
  const links = (text: string): string[] => {
    const snapshot = snapshotOf(text);
    return documentLinks(snapshot).map(({ span, to, name }) => `${shown(snapshot.lines, span)} → ${to} ${name}`);
  };

  test('pictures, packs and rules', () => {
    expect(
      links('rules general\nphoto 38.5 pictures/IMG_0412.jpg\nstrata\n  0 - 3 claq # allow unknown-term: so'),
    ).toEqual([
      '1: pictures/IMG_0412.jpg → file pictures/IMG_0412.jpg',
      '3: unknown-term → rule unknown-term',
      '0: general → pack general',
    ]);
  });

  test('nothing leads out of the folder by its root or by a scheme', () => {
    expect(links('photo /etc/passwd\nphoto command:rm\nphoto javascript:x\nphoto C:\\x.jpg\nrules nothere')).toEqual(
      [],
    );
  });
});
