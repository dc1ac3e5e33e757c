import { expect, test } from 'vitest';
import { rowsToLines } from '../../server/import/rows.ts';

test('rows of a table become lines of the ground, a heading stays a comment', () => {
  expect(rowsToLines('From\tTo\tMaterial\n0\t2\tbrn clay\n2\t9\tsand', 'strata', 'm')).toEqual({
    lines: ['# From\tTo\tMaterial', '0 - 2 clay, brown', '2 - 9 sand'],
    open: false,
    notUnderstood: [],
  });
});

test('a list without units asks for them, and keeps every row', () => {
  expect(rowsToLines('0-12 clay\n12-20 sand', 'strata', null)).toEqual({
    lines: ['# 0-12 clay', '# 12-20 sand'],
    open: true,
    notUnderstood: ['0-12 clay', '12-20 sand'],
  });
});

test('what is not understood stays in its place', () => {
  expect(rowsToLines('0-12 clay\nsee sketch\n12-20 sand', 'strata', 'ft').lines).toEqual([
    '0 - 12 clay',
    '# see sketch',
    '12 - 20 sand',
  ]);
});

test('rows of other sections take the meaning of the section', () => {
  expect(rowsToLines('0\t20\t254\n20\t61\t152', 'hole', 'm').lines).toEqual(['0 - 20 254', '20 - 61 152']);
  expect(rowsToLines('38\tfresh\n54\t15 L/min', 'water', 'm').lines).toEqual(['38 fresh', '54, 15 L/min']);
  expect(rowsToLines('0\t5.2\n1\t6.14\nstopped for rain', 'test', 'm')).toEqual({
    lines: ['0 5.2', '1 6.14', '# stopped for rain'],
    open: false,
    notUnderstood: ['stopped for rain'],
  });
});

test('a pasted row cannot silence a rule', () => {
  expect(rowsToLines('allow interval-gap: because', 'hole', 'm').lines).toEqual(['# : allow interval-gap: because']);
});
