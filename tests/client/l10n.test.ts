import { readFileSync } from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { textsOfClient } from '../../.config/stage.mjs';
import { lookedUp } from './looked-up.ts';

const root = path.join(import.meta.dirname, '../..');
const read = (file: string): string => readFileSync(path.join(root, file), 'utf8');
const json = (file: string): Record<string, string> => JSON.parse(read(file));

/** The texts that an argument may be; what is looked up from data of the server is gathered in `looked-up.ts`. */
function textsOf(node: ts.Expression | undefined, file: string): string[] {
  if (node === undefined) return [`no text in ${file}`];
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isConditionalExpression(node)) return [node.whenTrue, node.whenFalse].flatMap((each) => textsOf(each, file));
  return file.startsWith('server/') && !ts.isTemplateExpression(node) && !ts.isBinaryExpression(node)
    ? []
    : [`not a plain text in ${file}: ${node.getText()}`];
}

/** The texts that `l10n.t` is given, anywhere in a file. */
function textsIn(file: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && /(?:^|\.)l10n\.t$/.test(node.expression.getText()))
      found.push(...textsOf(node.arguments[0], file));
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true));
  return found;
}

const clientFiles = globSync(['client/**/*.ts'], { cwd: root });
const serverFiles = globSync(['server/**/*.ts'], { cwd: root });
const shownByClient = [...new Set(clientFiles.flatMap(textsIn))].sort();
const shown = [...new Set([...shownByClient, ...serverFiles.flatMap(textsIn)])].sort();
const french = json('client/l10n/bundle.l10n.fr.json');
const manifestWords = json('client/l10n/package.nls.json');
const manifestFrench = json('client/l10n/package.nls.fr.json');

/** `{0}` of texts, and `command:` links and code of the manifest, which a translation must keep. */
const keptIn = (text: string): string[] => (text.match(/\{\d+\}|\(command:[^)]*\)|`[^`]*`/g) ?? []).sort();

/** What a file of words lacks, and what in it nobody asks for any more. */
const apart = (asked: readonly string[], held: readonly string[]) => ({
  lacking: asked.filter((each) => !held.includes(each)),
  leftOver: held.filter((each) => !asked.includes(each)),
});

const nothing = { lacking: [], leftOver: [] };

const worded =
  /"(?:title|shortTitle|description|markdownDescription|name|label|contents|displayName)": "([^%"][^"]*)"/g;

/** The walkthrough's files in a language, by the key of their step. */
const bodies = (words: Record<string, string>): Map<string, string> =>
  new Map(Object.entries(words).filter(([key]) => /^walkthrough\..*\.markdown$/.test(key)));

/** Samples, keys and short names, which are the same in every language. */
const codeIn = (text: string): string[] => (text.match(/```[\s\S]*?```|`[^`]+`|\*\*Ctrl\+\.\*\*|⌘\./g) ?? []).sort();

/** Names that are the same in every language. */
const names = new Set(['Drillhand', 'drillhand', 'firstRecord']);

describe('the words of the interface', () => {
  test('every text has its French, and none is left over', () => {
    expect(shown.length).toBeGreaterThan(0);
    expect(lookedUp.length).toBeGreaterThan(0);
    expect(apart([...new Set([...shown, ...lookedUp])].sort(), Object.keys(french))).toEqual(nothing);
  });

  test('the bundle that an editor takes for a variant of French has every text of the client, and few others', () => {
    const staged = Object.keys(textsOfClient(french, clientFiles.map(read)));
    expect(shownByClient.filter((text) => !staged.includes(text))).toEqual([]);
    expect(staged.length).toBeLessThan(shownByClient.length * 1.2);
  });

  test('French keeps what stands for something', () => {
    for (const [text, translated] of Object.entries(french)) expect(keptIn(translated), text).toEqual(keptIn(text));
  });

  test('every word of the manifest is in the files of words, and none is left over', () => {
    const asked = [...new Set([...read('package.json').matchAll(/"%([\w.-]+)%"/g)].map(([, key]) => key ?? ''))].sort();
    expect(apart(asked, Object.keys(manifestWords))).toEqual(nothing);
    expect(apart(asked, Object.keys(manifestFrench))).toEqual(nothing);
  });

  test('the French of the manifest keeps links and code', () => {
    for (const [key, text] of Object.entries(manifestWords))
      expect(keptIn(manifestFrench[key] ?? ''), key).toEqual(keptIn(text));
  });

  test('every step of the walkthrough is there in both languages, with the same samples', () => {
    const [english, inFrench] = [bodies(manifestWords), bodies(manifestFrench)];
    expect(english.size).toBeGreaterThan(3);
    for (const [key, file] of english) {
      const translated = inFrench.get(key) ?? '';
      expect(translated, key).toBe(file.replace(/\.md$/, '.fr.md'));
      expect(read(translated), key).not.toBe(read(file));
      expect(codeIn(read(translated)), key).toEqual(codeIn(read(file)));
    }
  });

  test('the manifest itself has no words of its own', () => {
    const { contributes } = JSON.parse(read('package.json'));
    const own = [...JSON.stringify(contributes, null, 1).matchAll(worded)].map(([, text]) => text ?? '');
    expect(own.filter((text) => !names.has(text))).toEqual([]);
  });
});
