import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, test } from 'vitest';
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma';
import vscodeTextmate from 'vscode-textmate';

const { INITIAL, Registry, parseRawGrammar } = vscodeTextmate;

const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
const source = readFileSync(new URL('../../grammar/drillhand.tmLanguage.json', import.meta.url), 'utf8');

type Grammar = NonNullable<Awaited<ReturnType<InstanceType<typeof Registry>['loadGrammar']>>>;
let grammar: Grammar;

beforeAll(async () => {
  const bytes = new Uint8Array(wasm).buffer;
  await loadWASM(bytes);
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: async () => parseRawGrammar(source, 'drillhand.tmLanguage.json'),
  });
  const loaded = await registry.loadGrammar('source.drillhand');
  if (!loaded) throw new Error('the grammar did not load');
  grammar = loaded;
});

/** The innermost scope of every stretch of a line that has one of its own. */
const scopes = (line: string): [text: string, scope: string][] =>
  grammar
    .tokenizeLine(line, INITIAL)
    .tokens.filter((each) => each.scopes.length > 1)
    .map((each) => [
      line.slice(each.startIndex, each.endIndex).trim(),
      (each.scopes.at(-1) ?? '').replace('.drillhand', ''),
    ]);

describe('the TextMate grammar', () => {
  test.each<[string, [string, string][]]>([
    ['strata', [['strata', 'keyword.control.section']]],
    [
      'owner  Well #4 ; north',
      [
        ['owner', 'keyword.other.header'],
        ['Well #4 ; north', 'string.unquoted.header'],
      ],
    ],
    ['# a note', [['# a note', 'comment.line.number-sign']]],
    [
      '  - 7.2 limestone ; soft',
      [
        ['-', 'keyword.operator'],
        ['7.2', 'constant.numeric'],
        ['limestone', 'entity.name.type.material'],
        [';', 'punctuation.definition.remark'],
        ['soft', 'string.unquoted.remark'],
      ],
    ],
    [
      '  38.5? fresh, 25 L/min',
      [
        ['38.5?', 'constant.numeric'],
        ['25', 'constant.numeric'],
        ['L/min', 'keyword.other.unit'],
      ],
    ],
    [
      'finished 2026-05-06',
      [
        ['finished', 'keyword.other'],
        ['2026-05-06', 'constant.numeric.date'],
      ],
    ],
    [
      '  shoe ?',
      [
        ['shoe', 'keyword.other'],
        ['?', 'constant.language.unknown'],
      ],
    ],
  ])('colours %j', (line, expected) => {
    expect(scopes(line)).toEqual(expected);
  });
});
