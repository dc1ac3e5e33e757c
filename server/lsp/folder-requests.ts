import * as l10n from '@vscode/l10n';
import { RequestType0 } from 'vscode-languageserver';
import { countsOf, countsTogether, type FindingCounts, type WellSummary, type YieldBasis } from '../folder/summary.ts';
import { countsText, depthOf, dueText, levelOf, placeText, stringText, yieldOf } from '../folder/summary-text.ts';
import type { Finding } from '../rules/rule.ts';
import { fileName } from './address.ts';
import { type FolderEntry, type FolderFact, type FolderWells, folderRequest } from './protocol.ts';
import type { Registration } from './registration.ts';
import type { FolderLog, Workspace } from './workspace.ts';

const fact = (sign: string, label: string, value: string | null): FolderFact[] =>
  value === null ? [] : [{ sign, label, value }];

/** A rate of water, and where it is known from. */
const yieldWords: Readonly<Record<YieldBasis, (rate: string) => string>> = {
  tested: (rate) => l10n.t('{0}, tested', rate),
  found: (rate) => l10n.t('{0}, found while drilling', rate),
  flowing: (rate) => l10n.t('{0}, flowing', rate),
};

const levelText = (summary: WellSummary): string | null => {
  const level = levelOf(summary);
  const date = summary.level?.date ?? null;
  return level === null || date === null ? level : l10n.t('{0} on {1}', level, date);
};

const yieldText = (summary: WellSummary): string | null =>
  summary.yield === null ? null : yieldWords[summary.yield.basis](yieldOf(summary) ?? '');

const factsOf = (summary: WellSummary): FolderFact[] => [
  ...fact('depth', l10n.t('Depth'), depthOf(summary)),
  ...fact('strings', l10n.t('Strings'), summary.strings.map((each) => stringText(each, summary)).join('; ') || null),
  ...fact('level', l10n.t('Static level'), levelText(summary)),
  ...fact('yield', l10n.t('Yield'), yieldText(summary)),
  ...fact('place', l10n.t('Place'), summary.place && placeText(summary.place)),
  ...fact('due', l10n.t('Due'), summary.due && dueText(summary.due)),
];

const stateOf = ({ error, warning }: FindingCounts): FolderEntry['state'] =>
  error > 0 ? 'errors' : warning > 0 ? 'warnings' : 'clean';

function entryOf({ uri, well, summary }: FolderLog, ofFolder: readonly Finding[]): FolderEntry {
  const counts = countsTogether(summary.findings, countsOf(ofFolder));
  const facts = factsOf(summary);
  const label = summary.id ?? fileName(uri);
  return {
    uri,
    label,
    description: [depthOf(summary), countsText(counts)].filter((text) => text !== null).join(' · '),
    tooltip: [
      `${label} (${well.name})`,
      ...fact('location', l10n.t('Location'), summary.location).map(({ label: name, value }) =>
        l10n.t('{0}: {1}', name, value),
      ),
      ...facts.map(({ label: name, value }) => l10n.t('{0}: {1}', name, value)),
      l10n.t('Findings: {0}', countsText(counts)),
    ].join('\n'),
    state: stateOf(counts),
    facts,
    keys: {
      id: label,
      file: well.name,
      depth: summary.depth,
      due: summary.due?.day ?? null,
      findings: counts.error * 1_000_000 + counts.warning * 1000 + counts.information,
    },
  };
}

const noteOf = ({ most }: Workspace): string | null =>
  most === null ? null : l10n.t('The first {0} logs are shown; the folder holds more.', most);

/** The wells of the open folders as a view shows them. */
export const folderWells = (folder: Workspace): FolderWells => ({
  wells: folder.logs().map((log) => entryOf(log, folder.findingsOf(log.uri))),
  isReading: folder.isReading,
  note: noteOf(folder),
});

const answerFolder: Registration = (connection, session) => {
  connection.onRequest(new RequestType0<FolderWells, void>(folderRequest), () => {
    try {
      return folderWells(session.folder);
    } catch (error) {
      session.fail(folderRequest, error);
      return { wells: [], isReading: false, note: null };
    }
  });
};

export const folderRequests: readonly Registration[] = [answerFolder];
