import { Buffer } from 'node:buffer';
import { expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';

const crew = "0 to 12' brn clay w/ stones\n12-45 grey lime\nSWL 17\n";

const log = `units     ft in

strata
# 0 to 12' brn clay w/ stones
  0    - 12'    clay, brown, with stones
# 12-45 grey lime
  12   - 45     limestone, grey

water
# SWL 17
  level    17
`;

test('notes that are understood are printed as a log, formatted, and nothing is complained of', async () => {
  const { code, output, errors } = await drillhand(['read', 'crew.txt'], { 'crew.txt': crew });
  expect({ code, output, errors }).toEqual({ code: 0, output: log, errors: '' });
});

test('standard input is read, and -o writes a file', async () => {
  const { code, output, files } = await drillhand(['read', '-', '-o', 'new.well'], {}, { input: crew });
  expect({ code, output }).toEqual({ code: 0, output: '' });
  expect(Buffer.from(files.get('new.well') ?? []).toString('utf8')).toBe(log);
});

test('an open unit is asked for, with the command lines that answer it', async () => {
  const { code, output, errors } = await drillhand(['read', 'my notes.txt', '--pack', 'general'], {
    'my notes.txt': '0-12 clay',
  });
  expect({ code, output }).toEqual({ code: 2, output: '' });
  expect(errors).toBe(
    [
      'drillhand: my notes.txt:1: the notes do not say whether depths are in metres or in feet; say which:',
      "  drillhand read 'my notes.txt' --pack general --units m",
      "  drillhand read 'my notes.txt' --pack general --units ft",
      '',
    ].join('\n'),
  );
});

test('columns that are not certain are proposed as a command line that works', async () => {
  const table = { 'a.csv': 'A;B;C\n0;3;clay\n3;9;sand\n' };
  const { code, errors } = await drillhand(['read', 'a.csv', '--units', 'm'], table);
  expect(code).toBe(2);
  const [proposal = ''] = errors.split('\n').filter((line) => line.startsWith('  drillhand '));
  expect(proposal).toBe('  drillhand read a.csv --units m --columns from=A,to=B,description=C');
  const again = await drillhand(proposal.trim().split(' ').slice(1), table);
  expect({ code: again.code, errors: again.errors }).toEqual({ code: 0, errors: '' });
  expect(again.output).toContain('  3    - 9      sand\n');
});

test('what was not understood is told with its line and why, and ends with 1', async () => {
  const { code, output, errors } = await drillhand(['read', 'a.txt', '--units', 'ft'], {
    'a.txt': '0-9 clay\nbroke a cable\nset 20 ft 6 in csg\n',
  });
  expect(code).toBe(1);
  expect(output).toContain('# broke a cable\n');
  expect(output).toContain('casing  ? - 20? ft   6? in');
  expect(errors).toContain('a.txt:2: not understood: broke a cable\n');
  expect(errors).toContain('a.txt:3: in part: set 20 ft 6 in csg\n    "20 ft 6 in" could be');
  expect(errors).toContain('a.txt: 1 of 3 lines understood, 1 in part, 1 not\n');
});

test('a pack is written into the log; one that there is not is refused', async () => {
  expect((await drillhand(['read', 'a.txt', '--pack', 'general'], { 'a.txt': crew })).output).toContain(
    '\nrules     general\n',
  );
  const { code, errors } = await drillhand(['read', 'a.txt', '--pack', 'generl'], { 'a.txt': crew });
  expect({ code, errors }).toEqual({
    code: 2,
    errors: 'drillhand: there is no rule pack "generl"; did you mean "general"?\n',
  });
});

test('the encoding of a file is told where it is not UTF-8', async () => {
  const { code, output, errors } = await drillhand(['read', 'a.txt'], {
    'a.txt': Buffer.from('0 to 2 m: clay ½', 'latin1'),
  });
  expect(code).toBe(1);
  expect(output).toContain('# 0 to 2 m: clay ½\n');
  expect(errors).toContain('a.txt: note: not UTF-8, so read as Windows-1252; line 1 is the first');
});

test.each([
  ['', 'the file is empty'],
  ['PK\u0003\n\u0000\u0000zip', 'line 2 has a NUL byte'],
])('a file of %j is refused in words', async (text, says) => {
  const { code, errors } = await drillhand(['read', 'a.txt'], { 'a.txt': text });
  expect(code).toBe(2);
  expect(errors).toContain(says);
});

test('the notes themselves are not written over', async () => {
  const { code, errors } = await drillhand(['read', 'a.txt', '-o', 'a.txt'], { 'a.txt': crew });
  expect(code).toBe(2);
  expect(errors).toContain('name another file to write');
});
