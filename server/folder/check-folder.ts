import * as l10n from '@vscode/l10n';
import { internalError } from '../rules/engine.ts';
import { folderRules } from '../rules/folder/index.ts';
import type { FolderContext, FolderReport, FolderRule } from '../rules/folder/rule.ts';
import type { FolderWell } from '../rules/folder/well.ts';
import type { Finding, Severity } from '../rules/rule.ts';
import { neighboursAmong } from './neighbours.ts';

type Severities = Readonly<Record<string, Severity | 'off'>>;

/** Findings of the folder's rules, by the file that they stand in. */
export type FolderFindings = ReadonlyMap<string, readonly Finding[]>;

const isAllowed = ({ allowed }: FolderWell, rule: string, line: number): boolean =>
  allowed.some((each) => each.rule === rule && each.lines.includes(line));

/** How strongly a rule speaks of a file; the severity may be set for each folder. */
const levelOf = ({ id, off, severity }: FolderRule, said: Severities): Severity | 'off' =>
  (Object.hasOwn(said, id) ? said[id] : undefined) ?? (off ? 'off' : severity);

interface Found {
  readonly file: string;
  readonly finding: Finding;
}

const failureOf = ({ id }: FolderRule, { file }: FolderWell, error: unknown): Found => ({
  file,
  finding: {
    rule: internalError,
    severity: 'warning',
    span: { line: 0, start: 0, end: 0 },
    message: l10n.t(
      'the rule {0} failed and was left out: {1}; the other rules were run',
      id,
      error instanceof Error ? error.message : String(error),
    ),
  },
});

function reportsOf(rule: FolderRule, context: FolderContext): { reports: FolderReport[]; failure: Found[] } {
  try {
    return { reports: [...rule.check(context)], failure: [] };
  } catch (error) {
    return { reports: [], failure: context.wells.slice(0, 1).map((well) => failureOf(rule, well, error)) };
  }
}

function byFile(found: readonly Found[]): FolderFindings {
  const groups = new Map<string, Finding[]>();
  for (const { file, finding } of found) {
    const group = groups.get(file);
    if (group) group.push(finding);
    else groups.set(file, [finding]);
  }
  return groups;
}

/** What the rules of a folder say of its wells. `severitiesOf` gives what the settings say for a file. Never throws. */
export function checkFolder(
  wells: readonly FolderWell[],
  severitiesOf: (file: string) => Severities,
  rules: readonly FolderRule[] = folderRules,
): FolderFindings {
  const known = new Map(wells.map((well) => [well.file, { well, said: severitiesOf(well.file) }]));
  const context: FolderContext = { wells, near: neighboursAmong(wells) };
  const foundBy = (rule: FolderRule, { file, ...report }: FolderReport): Found[] => {
    const about = known.get(file);
    const level = about ? levelOf(rule, about.said) : 'off';
    if (!about || level === 'off' || isAllowed(about.well, rule.id, report.span.line)) return [];
    return [{ file, finding: { ...report, rule: rule.id, severity: report.severity ?? level } }];
  };
  const isOn = (rule: FolderRule): boolean => [...known.values()].some(({ said }) => levelOf(rule, said) !== 'off');
  return byFile(
    rules.filter(isOn).flatMap((rule) => {
      const { reports, failure } = reportsOf(rule, context);
      return [...failure, ...reports.flatMap((report) => foundBy(rule, report))];
    }),
  );
}
