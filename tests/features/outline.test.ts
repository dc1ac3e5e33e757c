import { describe, expect, test } from 'vitest';
import { documentHighlights } from '../../server/features/document-highlights.ts';
import { documentSymbols, type Outline } from '../../server/features/document-symbols.ts';
import { foldingRanges } from '../../server/features/folding-ranges.ts';
import { selectionRanges } from '../../server/features/selection-ranges.ts';
import { tokensOf } from '../../server/features/semantic-tokens.ts';
import { marked, snapshotOf } from './fixture.ts';

const log = `
  well KH-04

  hole
    0 - 7.2  254  air rotary
    - 61  152

  casing  +0.45 - 7.2  steel 168.3
    shoe  7.2
    # set on rock
    grout 0 - 7.2 neat cement
  liner 6 - 61 pvc 114.3

  strata
    0 - 61  limestone, grey
    - 62 ?
  disinfection 100 mg/L
  # one
  # two
`;

const drawn = (outlines: readonly Outline[], indent = ''): string[] =>
  outlines.flatMap(({ name, detail, children }) => [
    `${indent}${[name, detail].filter(Boolean).join(' | ')}`,
    ...drawn(children, `${indent}  `),
  ]);

describe('outline', () => {
  test('head, sections, strings with what hangs on them, layers', () => {
    expect(drawn(documentSymbols(snapshotOf(log)))).toEqual([
      'well | KH-04',
      'hole',
      '  254 air rotary | 0 - 7.2',
      '  152 | - 61',
      'casing | +0.45 - 7.2 steel 168.3',
      '  shoe | 7.2',
      '  grout | 0 - 7.2 neat cement',
      'liner | 6 - 61 pvc 114.3',
      'strata',
      '  limestone | 0 - 61',
      '  ? | - 62',
      'disinfection | 100 mg/L',
    ]);
  });

  test('a section covers its lines and no more', () => {
    const casing = documentSymbols(snapshotOf(log)).find(({ name }) => name === 'casing');
    expect([casing?.span.line, casing?.last]).toEqual([6, 9]);
  });

  test('a telescoped screen is a string, a screen on a string is part of it', () => {
    const outlines = documentSymbols(
      snapshotOf(
        'casing 0 - 20 steel\n  screen 10 - 20 stainless\nscreen 18 - 30 stainless 100, telescoped\n  pack 18 - 30 sand',
      ),
    );
    expect(drawn(outlines)).toEqual([
      'casing | 0 - 20 steel',
      '  screen | 10 - 20 stainless',
      'screen | 18 - 30 stainless 100, telescoped',
      '  pack | 18 - 30 sand',
    ]);
  });

  test('very long names are cut', () => {
    const [section] = documentSymbols(snapshotOf(`strata\n  0 - 3 ${'x'.repeat(500)}`));
    expect(section?.children[0]?.name.length).toBeLessThan(200);
  });
});

describe('folds', () => {
  test('sections, strings and runs of comments', () => {
    expect(foldingRanges(snapshotOf(log))).toEqual([
      { first: 2, last: 4, kind: 'section' },
      { first: 6, last: 9, kind: 'section' },
      { first: 12, last: 14, kind: 'section' },
      { first: 16, last: 17, kind: 'comment' },
    ]);
  });
});

describe('highlights', () => {
  const found = (text: string): string[] => {
    const { snapshot, at, lines } = marked(text);
    return documentHighlights(snapshot, at).map(({ line, start, end }) => `${line}: ${lines[line]?.slice(start, end)}`);
  };

  test('a contact wherever it is written, in whatever unit', () => {
    expect(found('hole\n  0 - 7.|2 254\ncasing 0 - 7.2 steel\n  shoe 720 cm\n  grout 0 - 7.3 neat cement')).toEqual([
      '1: 7.2',
      '2: 7.2',
      '3: 720 cm',
    ]);
  });

  test('above ground is not below it', () => {
    expect(found('casing +0.4|5 - 7.2 steel\n  grout 0.45 - 7.2 neat cement')).toEqual(['0: +0.45']);
  });

  test('a term under whatever spelling', () => {
    expect(found('strata\n  0 - 3 cl|ay\n  - 4 cl, sandy\n  - 5 sand')).toEqual(['1: clay', '2: cl']);
  });

  test('a keyword', () => {
    expect(found('cas|ing 0 - 7.2 steel\ncasing 0 - 20 steel')).toEqual(['0: casing', '1: casing']);
  });

  test('nothing on a blank', () => {
    expect(found('strata\n|\n  0 - 3 clay')).toEqual([]);
  });
});

describe('selection', () => {
  test('grows from the word to the file', () => {
    const { snapshot, at, lines } = marked('well A\nstrata\n  0 - 3 silty cl|ay, brown\n  - 4 sand\nnote x');
    const texts = selectionRanges(snapshot, at).map(({ first, last }) =>
      first.line === last.line ? lines[first.line]?.slice(first.column, last.column) : `${first.line}-${last.line}`,
    );
    expect(texts.slice(0, 3)).toEqual(['clay', 'silty clay', 'silty clay, brown']);
    expect(texts.slice(-4)).toEqual(['0 - 3 silty clay, brown', '  0 - 3 silty clay, brown', '1-3', '0-4']);
  });
});

describe('tokens', () => {
  const kinds = (text: string): string[] => {
    const line = snapshotOf(text).tree.lines.at(-1);
    return line === undefined
      ? []
      : tokensOf(line).map(({ type, start, end }) => `${line.text.slice(start, end)}=${type}`);
  };

  test('every kind of thing on a line', () => {
    expect(kinds('casing 0 - 7.2 steel\ngrout 0 - 7.2 neat cement, 9 x 40 kg bags, w/c 0.5 ; by hand # ask')).toEqual([
      'grout=keyword',
      '0=number',
      '-=operator',
      '7.2=number',
      'neat cement=enumMember',
      '9=number',
      '40 =number',
      'kg=type',
      'w/c=property',
      '0.5=number',
      expect.stringContaining('by hand'),
      expect.stringContaining('ask'),
    ]);
  });

  test('are made once for a line that stays', () => {
    const line = snapshotOf('strata\n  0 - 3 clay').tree.lines[1];
    expect(line && tokensOf(line)).toBe(line && tokensOf(line));
  });
});
