import { folderRules } from '../../rules/folder/index.ts';
import type { FolderExample, FolderRule } from '../../rules/folder/rule.ts';
import { rules as logRules } from '../../rules/index.generated.ts';
import { nearNames } from '../../rules/near-names.ts';
import type { Example, Rule, RuleWords } from '../../rules/rule.ts';
import { didYouMean } from '../arguments.ts';
import type { Arguments, Command } from '../command.ts';
import { type Exit, exit } from '../exit.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

const allRules: readonly RuleWords[] = [...logRules, ...folderRules];

const severityText = ({ off, severity }: RuleWords): string => (off ? 'off' : severity);

const widest = (texts: readonly string[]): number => texts.reduce((most, each) => Math.max(most, each.length), 0);

function catalogue(): string {
  const ids = widest(allRules.map(({ id }) => id));
  const levels = widest(allRules.map(severityText));
  return allRules
    .map((rule) => `${rule.id.padEnd(ids)}  ${severityText(rule).padEnd(levels)}  ${rule.title}\n`)
    .join('');
}

const indented = (text: string): string[] => text.split('\n').map((line) => `    ${line}`.trimEnd());

const exampleLines = (title: string, examples: readonly Example[]): string[] =>
  examples.flatMap(({ text, fixed, own }) => [
    '',
    `  ${own === undefined ? title : `with a pack ${own.id} of the workspace, ${title}`}`,
    ...indented(text),
    ...(fixed === undefined ? [] : ['  after the first fix:', ...indented(fixed)]),
  ]);

const folderExampleLines = (title: string, examples: readonly FolderExample[]): string[] =>
  examples.flatMap((example) => [
    '',
    `  ${title}`,
    ...Object.entries(example).flatMap(([name, text]) => [`  ${name}`, ...indented(text)]),
  ]);

const inFull = (rule: RuleWords, examples: readonly string[]): string =>
  [
    `${rule.id} (${rule.off ? `off until switched on, then ${rule.severity}` : rule.severity})`,
    '',
    `  ${rule.title}`,
    '',
    `  Why:     ${rule.why}`,
    `  To mend: ${rule.mend}`,
    `  Source:  ${rule.source}`,
    ...examples,
    '',
  ].join('\n');

const reported = 'reported, between [[ and ]]:';
const notReported = 'not reported:';

const ofLog = (rule: Rule): string =>
  inFull(rule, [...exampleLines(reported, rule.flagged), ...exampleLines(notReported, rule.silent)]);

const ofFolder = (rule: FolderRule): string =>
  inFull(rule, [...folderExampleLines(reported, rule.flagged), ...folderExampleLines(notReported, rule.silent)]);

function ruleNamed(written: string): string {
  const id = written.toLowerCase();
  const rule = logRules.find((each) => each.id === id);
  const folderRule = folderRules.find((each) => each.id === id);
  if (rule) return ofLog(rule);
  if (folderRule) return ofFolder(folderRule);
  const near = nearNames(
    id,
    allRules.map((each) => each.id),
  );
  throw new Unusable(`there is no rule "${written}"${didYouMean(near) || '; "drillhand rules" lists them'}`);
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const [id, more] = given.positionals;
  if (more !== undefined) throw new Unusable(`one rule at a time; "${more}" is one too many`);
  world.print(id === undefined ? catalogue() : ruleNamed(id));
  return exit.clean;
}

export const rules: Command = {
  name: 'rules',
  usage: 'drillhand rules [ID]',
  summary: 'List the rules, or tell one in full.',
  options: [],
  notes: ['The rules are a help for checking, not the law.'],
  run,
};
