import { isAbsolute } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Span } from '../../../grammar/span.ts';
import { folderRules } from '../../rules/folder/index.ts';
import { rules as logRules } from '../../rules/index.generated.ts';
import type { Finding, RuleWords, Severity } from '../../rules/rule.ts';
import { version } from '../version.ts';
import type { FileFindings } from './report.ts';

const rules: readonly RuleWords[] = [...logRules, ...folderRules];

const levels: Readonly<{ [severity in Severity]: 'error' | 'warning' | 'note' }> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'note',
};

/** A relative path as a relative URI, an absolute one as a file URI (RFC 3986). */
const uriOf = (file: string): string =>
  isAbsolute(file) ? pathToFileURL(file).href : file.replaceAll('\\', '/').split('/').map(encodeURIComponent).join('/');

/** SARIF counts lines and columns from 1, the end column being the one after the last. */
const locationOf = (file: string, { line, start, end }: Span) => ({
  physicalLocation: {
    artifactLocation: { uri: uriOf(file) },
    region: { startLine: line + 1, startColumn: start + 1, endLine: line + 1, endColumn: end + 1 },
  },
});

const ruleJson = ({ id, title, why, mend, severity, off }: RuleWords) => ({
  id,
  shortDescription: { text: title },
  fullDescription: { text: why },
  help: { text: mend },
  defaultConfiguration: { level: levels[severity], enabled: off !== true },
});

const indexes = new Map(rules.map(({ id }, index) => [id, index]));

const resultJson = (file: string, { rule, severity, message, span, related = [] }: Finding) => ({
  ruleId: rule,
  ...(indexes.has(rule) ? { ruleIndex: indexes.get(rule) } : {}),
  level: levels[severity],
  message: { text: message },
  locations: [locationOf(file, span)],
  ...(related.length === 0
    ? {}
    : {
        relatedLocations: related.map((each, index) => ({
          id: index,
          message: { text: each.message },
          ...locationOf(each.file ?? file, each.span),
        })),
      }),
});

/** The findings as a SARIF 2.1.0 log (OASIS Standard, 27 March 2020) of one run. */
export const sarifReport = (files: readonly FileFindings[]): string =>
  `${JSON.stringify(
    {
      $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
      version: '2.1.0',
      runs: [
        {
          tool: { driver: { name: 'Drillhand', version, rules: rules.map(ruleJson) } },
          columnKind: 'utf16CodeUnits',
          artifacts: files.map(({ file }) => ({ location: { uri: uriOf(file) }, sourceLanguage: 'drillhand' })),
          results: files.flatMap(({ file, findings }) => findings.map((each) => resultJson(file, each))),
        },
      ],
    },
    null,
    2,
  )}\n`;
