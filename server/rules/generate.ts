import { readdirSync } from 'node:fs';
import path from 'node:path';
import { folderRules } from './folder/index.ts';
import type { FolderExample, FolderRule } from './folder/rule.ts';
import type { Example, Rule, RuleWords } from './rule.ts';

const folder = 'server/rules/rules';

/** Ids of the rules: the names of their files. Read from the project's folder, which is the current one. */
const ruleIds = (): string[] =>
  readdirSync(path.resolve(folder))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => name.slice(0, -'.ts'.length))
    .sort();

const nameOf = (id: string): string => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

const indexText = (ids: readonly string[]): string =>
  [
    '// Made by server/rules/generate.ts from the files in server/rules/rules; do not edit.',
    "import type { Rule } from './rule.ts';",
    ...ids.map((id) => `import { rule as ${nameOf(id)} } from './rules/${id}.ts';`),
    '',
    '/** Every rule, by id. */',
    'export const rules: readonly Rule[] = [',
    ...ids.map((id) => `  ${nameOf(id)},`),
    '];',
    '',
  ].join('\n');

const shownWidth = 160;

/** Very long lines are cut on the page. */
const shortened = (text: string): string =>
  text.replace(new RegExp(`^(.{${shownWidth}}).+$`, 'gm'), (_, kept: string) => `${kept}…`);

const block = (text: string): string[] => ['```', shortened(text), '```', ''];

const exampleText = ({ text, fixed, own }: Example): string[] => [
  ...(own === undefined ? [] : [`with a pack \`${own.id}\` of the workspace:`, '']),
  ...block(text),
  ...(fixed === undefined ? [] : ['after the first fix, or the one that is preferred:', '', ...block(fixed)]),
];

const folderExampleText = (example: FolderExample): string[] => [
  'together:',
  '',
  ...Object.entries(example).flatMap(([name, text]) => [`\`${name}\``, '', ...block(text)]),
];

const examplesText = <E>(title: string, examples: readonly E[], textOf: (example: E) => string[]): string[] =>
  examples.length === 0 ? [] : [`*${title}*`, '', ...examples.flatMap(textOf)];

const wordsText = (rule: RuleWords): string[] => [
  `## ${rule.id}`,
  '',
  `**${rule.title}** · ${rule.off ? `off until switched on (${rule.severity})` : rule.severity}`,
  '',
  rule.why,
  '',
  `*To mend it:* ${rule.mend}`,
  '',
  ...(rule.unfixed === undefined ? [] : [`*No fix is offered:* ${rule.unfixed}`, '']),
  ...(rule.crew === undefined ? [] : [`*Asked of the crew:* ${rule.crew}`, '']),
  `*Source:* ${rule.source}`,
  '',
];

const ruleText = (rule: Rule): string[] => [
  ...wordsText(rule),
  ...examplesText('Reported; the marks show where', rule.flagged, exampleText),
  ...examplesText('Not reported', rule.silent, exampleText),
];

const folderRuleText = (rule: FolderRule): string[] => [
  ...wordsText(rule),
  ...examplesText('Reported; the marks show where', rule.flagged, folderExampleText),
  ...examplesText('Not reported', rule.silent, folderExampleText),
];

const tableText = (rules: readonly RuleWords[]): string[] => [
  '| rule | severity | what it looks for |',
  '|---|---|---|',
  ...rules.map(
    ({ id, severity, off, title }) =>
      `| [${id}](#${id}) | ${off ? 'off' : severity} | ${title.replaceAll('|', '\\|')} |`,
  ),
  '',
];

const catalogueText = (rules: readonly Rule[]): string =>
  [
    '<!-- Made by server/rules/generate.ts from the rules; do not edit. -->',
    '# The rules',
    '',
    'A rule looks for one fault of a log. This page is made from the rules themselves, and its examples are run as tests.',
    'The rules are a help for checking, not the law: read the current code, and ask the authority.',
    '',
    '- `[[` and `]]` mark what is reported; they are not part of the notation.',
    '- `# allow RULE: reason` on a line, or on the line above it, silences one rule for that line.',
    '- A `drillhand.json` beside or above the log, or the settings of the editor, give a rule another severity, or switch it on or off.',
    '- A rule that fails is reported as `internal-error`; the others still run.',
    '',
    ...tableText(rules),
    'These rules look at the logs of a folder together:',
    '',
    ...tableText(folderRules),
    ...rules.flatMap(ruleText),
    ...folderRules.flatMap(folderRuleText),
  ].join('\n');

const load = async (id: string): Promise<Rule> => ((await import(`./rules/${id}.ts`)) as { rule: Rule }).rule;

/** The index and the catalogue of the rules. Needs the project's folder as the current one. */
export async function generated(): Promise<{ path: string; text: string }[]> {
  const ids = ruleIds();
  const rules = await Promise.all(ids.map(load));
  return [
    { path: 'server/rules/index.generated.ts', text: indexText(ids) },
    { path: 'server/rules/README.md', text: catalogueText(rules) },
  ];
}
