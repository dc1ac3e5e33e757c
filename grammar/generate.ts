import { readFileSync } from 'node:fs';
import path from 'node:path';
import { enterRules } from './enter-rules.ts';
import { type Row, rowById, type Slot, table } from './table.ts';
import { snippetOf, templates } from './templates.ts';
import { termLists } from './terms/index.ts';
import type { ListId } from './terms/term.ts';
import { siUnits, units } from './units.ts';

/** A file that is made from the tables; its path counts from the project's folder. */
export interface GeneratedFile {
  readonly path: string;
  readonly text: string;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&').replace(/ /g, '[ -]');

/** One alternative for each text, the longest first, so that none hides a longer one. */
const anyOf = (texts: readonly string[]): string =>
  [...new Set(texts)]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map(escaped)
    .join('|');

const keywordsOf = (fits: (row: Row) => boolean): string => anyOf(table.filter(fits).flatMap((row) => row.keywords));

const formsOf = (lists: readonly ListId[]): string =>
  anyOf(
    termLists
      .filter((list) => lists.includes(list.id))
      .flatMap((list) => list.terms.flatMap((term) => [term.name.toLowerCase(), ...term.short, ...adjectivesOf(term)])),
  );

const adjectivesOf = (term: { ground?: { adjective?: string } }): string[] =>
  term.ground?.adjective ? [term.ground.adjective] : [];

const labels = (): string =>
  anyOf(table.flatMap((row) => row.slots.flatMap((slot) => slot.labels)).filter((label) => /^[a-z]/.test(label)));

const word = (alternatives: string): string => `(?i)(?<![\\p{L}\\p{N}_])(?:${alternatives})(?![\\p{L}\\p{N}_])`;

const lineStart = (alternatives: string): string => `(?i)^\\s*(${alternatives})(?=\\s|$)`;

/** The TextMate grammar: what an editor colours before the language server has spoken. */
function textMateGrammar(): object {
  const text = keywordsOf((row) => row.body === 'text');
  const sections = keywordsOf((row) => row.where === 'section');
  const others = keywordsOf((row) => row.where !== 'section' && row.body !== 'text');
  const number = '(?:\\d+(?:\\.\\d*)?|\\.\\d+)';
  const unit = anyOf(units.flatMap((each) => [each.id.toLowerCase(), ...each.spellings]));
  return {
    name: 'Drillhand well log',
    scopeName: 'source.drillhand',
    patterns: [
      {
        match: `(?i)^\\s*(${text})(?=\\s|$)((?:(?!\\s#\\s*allow\\s).)*)(\\s#\\s*allow\\s.*)?$`,
        captures: {
          1: { name: 'keyword.other.header.drillhand' },
          2: { name: 'string.unquoted.header.drillhand' },
          3: { name: 'comment.line.number-sign.drillhand' },
        },
      },
      { name: 'comment.line.number-sign.drillhand', match: '^\\s*#.*$|(?<=\\s)#(?!\\d).*$' },
      {
        match: '(;)((?:[^#]|#(?!\\s|$))*)',
        captures: {
          1: { name: 'punctuation.definition.remark.drillhand' },
          2: { name: 'string.unquoted.remark.drillhand' },
        },
      },
      { match: lineStart(sections), captures: { 1: { name: 'keyword.control.section.drillhand' } } },
      { match: lineStart(others), captures: { 1: { name: 'keyword.other.drillhand' } } },
      { name: 'string.quoted.double.drillhand', match: '(?<![\\d?])"[^"]*"' },
      {
        name: 'constant.numeric.date.drillhand',
        match: '\\b\\d{4}-\\d{2}-\\d{2}(?:[ T]\\d{2}:\\d{2}(?::\\d{2})?)?\\b|\\b\\d{1,2}:\\d{2}(?::\\d{2})?\\b',
      },
      {
        match: `(?i)([~<>+]*${number}(?:[ -]\\d+/\\d+|[¼½¾⅛⅜⅝⅞])?['"]*\\d*"?\\??)\\s?(?:(${unit})(?![\\p{L}\\p{N}_]))?`,
        captures: { 1: { name: 'constant.numeric.drillhand' }, 2: { name: 'keyword.other.unit.drillhand' } },
      },
      { name: 'constant.language.unknown.drillhand', match: '\\?' },
      { name: 'constant.numeric.hash.drillhand', match: '#\\d+' },
      { name: 'entity.name.type.material.drillhand', match: word(formsOf(['material'])) },
      { name: 'support.constant.colour.drillhand', match: word(formsOf(['colour', 'shade'])) },
      { name: 'variable.parameter.label.drillhand', match: word(labels()) },
      { name: 'keyword.operator.drillhand', match: '(?<=[\\s\\d?])-(?=\\s|\\d|~|\\?)|(?<=\\d|\\s)[x×](?=\\s|\\d)' },
    ],
  };
}

function languageConfiguration(): object {
  const openers = keywordsOf((row) => row.where === 'section');
  return {
    comments: { lineComment: '#' },
    brackets: [['(', ')']],
    autoClosingPairs: [{ open: '(', close: ')' }],
    surroundingPairs: [
      ['(', ')'],
      ['"', '"'],
    ],
    wordPattern: { pattern: '[\\p{L}\\p{N}_]+(?:[-/.][\\p{L}\\p{N}_]+)*', flags: 'u' },
    folding: { offSide: true },
    onEnterRules: enterRules,
    indentationRules: {
      increaseIndentPattern: `^(?:${openers})(?:\\s.*)?$`,
      decreaseIndentPattern: `^\\s+(?:${openers})(?=\\s|$)`,
    },
  };
}

/** Whole sections to be put in by name; completion offers the same where they fit. */
const editorSnippets = (): object =>
  Object.fromEntries(
    templates.map((template) => [
      template.title,
      {
        body: snippetOf(template, 'metric').split('\n'),
        description: rowById(template.row).doc,
        ...(template.row === 'well' && { isFileTemplate: true }),
      },
    ]),
  );

const json = (value: object): string => `${JSON.stringify(value, null, 2)}\n`;

const cell = (text: string): string => text.replace(/\|/g, '\\|').replace(/\n/g, ' / ');

const tableText = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((each) => `| ${each.map(cell).join(' | ')} |`).join('\n');

const depthWords: Readonly<Record<Row['depths'], string>> = {
  none: '',
  interval: 'interval',
  depth: 'depth',
  either: 'depth or interval',
  optional: 'depth, if any',
};

const slotText = ({ slot, labels: names, labelList }: Slot): string => {
  if (labelList) return `${slot} (after a term of ${labelList})`;
  return names[0] ? `${slot} (\`${names[0]}\`)` : slot;
};

function keywordTable(): string {
  const rows = table.map((row) => [
    row.keywords.map((each) => `\`${each}\``).join(', ') || `lines of \`${row.of.join(', ')}\``,
    row.where === 'under' ? `under ${row.of.join(', ')}` : row.where.replace('-', ' '),
    [depthWords[row.depths], ...row.slots.map(slotText)].filter((each) => each !== '').join('; ') || row.doc,
    `\`${row.example}\``,
  ]);
  return tableText(['keyword', 'where', 'takes', 'example'], rows);
}

const unitTable = (): string =>
  tableText(
    ['unit', 'also written', 'what it is', 'in SI'],
    units.map((unit) => [
      `\`${unit.id}\``,
      unit.spellings.filter((each) => each !== unit.id.toLowerCase()).join(', '),
      unit.name,
      unit.gallon ? 'as the file names its gallon' : `${unit.factor} ${siUnits[unit.dimension]}`,
    ]),
  );

const termTable = (): string =>
  termLists
    .map((list) => {
      const rows = list.terms.map((term) => [term.name, term.short.join(', '), term.meaning]);
      return `### ${list.title}\n\n${tableText(['term', 'short forms', 'meaning'], rows)}`;
    })
    .join('\n\n');

const sections: Readonly<Record<string, () => string>> = { keywords: keywordTable, units: unitTable, terms: termTable };

/** The reference page with its generated parts made anew; the prose between them stays. */
function referencePage(page: string): string {
  return page.replace(
    /(<!-- generated: (\w+) -->)[\s\S]*?(<!-- \/generated -->)/g,
    (whole, open: string, name: string, close: string) => {
      const made = sections[name];
      return made ? `${open}\n\n${made()}\n\n${close}` : whole;
    },
  );
}

/** The files that are made from the tables of the notation. */
export function generated(): GeneratedFile[] {
  const page = readFileSync(path.join(process.cwd(), 'grammar/README.md'), 'utf8');
  return [
    { path: 'grammar/drillhand.tmLanguage.json', text: json(textMateGrammar()) },
    { path: 'grammar/language-configuration.json', text: json(languageConfiguration()) },
    { path: 'grammar/snippets.json', text: json(editorSnippets()) },
    { path: 'grammar/README.md', text: referencePage(page) },
  ];
}
