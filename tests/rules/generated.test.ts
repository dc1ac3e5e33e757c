import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { generated } from '../../server/rules/generate.ts';
import { rules } from '../../server/rules/index.generated.ts';

test('the index and the catalogue are what the rules say', async () => {
  for (const { path, text } of await generated()) expect(readFileSync(path, 'utf8'), path).toBe(text);
});

test('every rule has an id of its own, in kebab-case, under which it is kept', () => {
  const ids = rules.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
});

test('every code of the grammar’s problems has its rule', () => {
  const source = readFileSync('grammar/tree.ts', 'utf8');
  const codes = /type ProblemCode =([^;]+);/.exec(source)?.[1] ?? '';
  const known = [...codes.matchAll(/'([a-z-]+)'/g)].map(([, code]) => code);
  expect(known.length).toBeGreaterThan(20);
  const ids = new Set(rules.map(({ id }) => id));
  expect(known.filter((code) => !ids.has(code ?? ''))).toEqual([]);
});
