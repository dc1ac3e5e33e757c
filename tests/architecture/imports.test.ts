import { readFileSync } from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

interface Layer {
  /** Our own folders that it may import values from. */
  readonly values: readonly string[];
  /** Our own folders that it may import types from, beside those. */
  readonly types: readonly string[];
  readonly packages: readonly string[];
  /** Why it may import no more. */
  readonly why: string;
}

const untilAnalysis = ['grammar', 'server/model', 'server/record', 'server/packs', 'server/rules', 'server/analysis'];

/** The arrows of DEVELOPERS.md. A file belongs to the longest folder that its path begins with. */
const layers: Readonly<Record<string, Layer>> = {
  grammar: {
    values: [],
    types: [],
    packages: ['chevrotain'],
    why: 'the notation knows nothing of what is made of it',
  },
  'server/calculations': {
    values: [],
    types: [],
    packages: ['geodesy', 'ml-levenberg-marquardt'],
    why: 'a formula takes numbers and gives numbers, so that it can be checked by hand',
  },
  'server/packs': { values: [], types: [], packages: ['zod'], why: 'packs are data' },
  'server/model': {
    values: ['grammar', 'server/calculations'],
    types: [],
    packages: ['zod'],
    why: 'the log says what was written, not what follows from it; of the calculations it needs the table of pipe alone',
  },
  'server/record': {
    values: ['grammar', 'server/model', 'server/calculations', 'server/packs'],
    types: [],
    packages: ['zod'],
    why: 'the record is a function of the log and the limits',
  },
  'server/rules': {
    values: ['grammar', 'server/model', 'server/record', 'server/packs'],
    types: ['server/analysis'],
    packages: ['@vscode/l10n', 'fastest-levenshtein', 'zod'],
    why: 'a rule reads figures from the record and computes none',
  },
  'server/analysis': {
    values: untilAnalysis,
    types: [],
    packages: ['zod'],
    why: 'the snapshot is made without an editor',
  },
  'server/features': {
    values: [...untilAnalysis, 'server/calculations'],
    types: [],
    packages: ['@vscode/l10n'],
    why: 'a feature answers from a snapshot, in plain data that no protocol owns',
  },
  'server/folder': {
    values: [...untilAnalysis, 'server/calculations'],
    types: [],
    packages: ['@vscode/l10n', 'zod'],
    why: 'what is known of several wells together is known from their snapshots and the files beside them',
  },
  'server/import': {
    values: ['grammar'],
    types: [],
    packages: ['@vscode/l10n', 'csv-parse'],
    why: 'notes become notation, and only the notation says what they mean',
  },
  'server/drawing': {
    values: [],
    types: ['server/record', 'server/model'],
    packages: ['d3-scale'],
    why: 'a drawing depends on results, not on how they were written',
  },
  'server/export': {
    values: ['server/drawing'],
    types: ['server/record', 'server/model', 'server/folder'],
    packages: ['@vscode/l10n', 'zod', 'fast-xml-builder', 'pdf-lib', '@pdf-lib/fontkit', '@resvg/resvg-wasm'],
    why: 'an exporter sees results only',
  },
  'server/cli': {
    values: [...untilAnalysis, 'server/features', 'server/folder', 'server/import', 'server/drawing', 'server/export'],
    types: [],
    packages: ['tinyglobby', 'zod', 'fastest-levenshtein'],
    why: 'the command line is the same engine without the protocol',
  },
  'server/lsp': {
    values: [...untilAnalysis, 'server/features', 'server/folder', 'server/import', 'server/drawing', 'server/export'],
    types: [],
    packages: ['@vscode/l10n', 'vscode-languageserver', 'zod'],
    why: 'the command line is another door',
  },
  client: {
    values: [],
    types: [],
    packages: ['vscode', 'vscode-languageclient'],
    why: 'the client shows what the server says and knows nothing of wells',
  },
};

/** Single files that may take more, each with its reason. */
const exceptions: Readonly<Record<string, readonly string[]>> = {
  // The schemas of the record are published as JSON Schema; what is due is told in the same words everywhere.
  'server/export': ['server/record/record.ts', 'server/record/due.ts'],
  // The version that the command line prints.
  'server/cli': ['package.json'],
  // The names and types of our own requests.
  client: ['server/lsp/protocol.ts'],
};

const root = path.join(import.meta.dirname, '../..');
const files = globSync(['grammar/**/*.ts', 'server/**/*.ts', 'client/**/*.ts'], { cwd: root }).sort();

const folderOf = (file: string): string =>
  Object.keys(layers)
    .filter((each) => file.startsWith(`${each}/`))
    .sort((a, b) => b.length - a.length)[0] ?? '';

interface Import {
  readonly from: string;
  readonly typeOnly: boolean;
}

function importsOf(file: string): Import[] {
  const source = ts.createSourceFile(file, readFileSync(path.join(root, file), 'utf8'), ts.ScriptTarget.Latest);
  return source.statements.flatMap((statement): Import[] => {
    if (ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier))
      return [{ from: statement.moduleSpecifier.text, typeOnly: statement.importClause?.isTypeOnly ?? false }];
    if (ts.isExportDeclaration(statement) && statement.moduleSpecifier && ts.isStringLiteral(statement.moduleSpecifier))
      return [{ from: statement.moduleSpecifier.text, typeOnly: statement.isTypeOnly }];
    return [];
  });
}

/** The sentence that says why an import may not be, or null where it may. */
function objection(file: string, { from, typeOnly }: Import): string | null {
  const folder = folderOf(file);
  const layer = layers[folder];
  if (!layer) return `${file} stands in no layer: give its folder a row in tests/architecture/imports.test.ts`;
  if (from.startsWith('node:')) return null;
  if (!from.startsWith('.')) {
    const name = from
      .split('/')
      .slice(0, from.startsWith('@') ? 2 : 1)
      .join('/');
    return layer.packages.includes(name) ? null : `${file} may not import the package ${name}: ${layer.why}`;
  }
  const target = path.posix.join(path.posix.dirname(file), from);
  const other = folderOf(target);
  if (other === folder || layer.values.includes(other) || exceptions[folder]?.includes(target)) return null;
  if (typeOnly && layer.types.includes(other)) return null;
  return `${file} may not import ${typeOnly ? 'types of ' : ''}${target}: ${layer.why}`;
}

describe('the layers', () => {
  test('every file stands in one, and no arrow points the wrong way', () => {
    expect(
      files.flatMap((file) => importsOf(file).map((each) => objection(file, each))).filter((each) => each !== null),
    ).toEqual([]);
  });

  test('a wrong arrow is told with its reason', () => {
    expect(objection('grammar/table.ts', { from: '../server/model/log.ts', typeOnly: false })).toMatch(
      /may not import server\/model\/log\.ts/,
    );
    expect(objection('server/drawing/svg.ts', { from: '../record/record.ts', typeOnly: false })).toMatch(/results/);
    expect(objection('server/drawing/svg.ts', { from: '../record/record.ts', typeOnly: true })).toBeNull();
    expect(objection('server/cli/main.ts', { from: 'vscode-languageserver/node', typeOnly: false })).toMatch(/package/);
  });

  test('only the language server imports the protocol library', () => {
    const importers = files.filter((file) =>
      importsOf(file).some(({ from }) => from.startsWith('vscode-languageserver')),
    );
    expect(importers.every((file) => file.startsWith('server/lsp/'))).toBe(true);
    expect(importers.length).toBeGreaterThan(0);
  });

  test('only the editor is spoken to in its language: nothing else takes in texts for their English', () => {
    expect(files.filter((file) => /\bl10n\.config\(/.test(readFileSync(path.join(root, file), 'utf8')))).toEqual([
      'server/lsp/language.ts',
    ]);
  });
});
