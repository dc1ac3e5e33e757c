import { rules as allRules } from '../../rules/index.generated.ts';
import { nearNames } from '../../rules/near-names.ts';
import type { Example, Rule } from '../../rules/rule.ts';
import { didYouMean } from '../arguments.ts';
import type { Arguments, Command } from '../command.ts';
import { type Exit, exit } from '../exit.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

const severityText = ({ off, severity }: Rule): string => (off ? 'off' : severity);

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

const inFull = (rule: Rule): string =>
  [
    `${rule.id} (${rule.off ? `off until switched on, then ${rule.severity}` : rule.severity})`,
    '',
    `  ${rule.title}`,
    '',
    `  Why:     ${rule.why}`,
    `  To mend: ${rule.mend}`,
    `  Source:  ${rule.source}`,
    ...exampleLines('reported, between [[ and ]]:', rule.flagged),
    ...exampleLines('not reported:', rule.silent),
    '',
  ].join('\n');

function ruleNamed(id: string): Rule {
  const found = allRules.find((rule) => rule.id === id.toLowerCase());
  if (found) return found;
  const near = nearNames(
    id,
    allRules.map((rule) => rule.id),
  );
  throw new Unusable(`there is no rule "${id}"${didYouMean(near) || '; "drillhand rules" lists them'}`);
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const [id, more] = given.positionals;
  if (more !== undefined) throw new Unusable(`one rule at a time; "${more}" is one too many`);
  world.print(id === undefined ? catalogue() : inFull(ruleNamed(id)));
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
