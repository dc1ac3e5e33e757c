import * as l10n from '@vscode/l10n';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { Depth, Interval, WellLog } from '../../model/log.ts';
import { takenOver } from '../../rules/fixes.ts';
import { areSame } from '../depths.ts';
import { type Change, changeOf, withPiecesInColumns } from './change.ts';
import type { Refactoring } from './refactoring.ts';

interface Layer {
  readonly line: number;
  readonly interval: Interval;
}

const columnsOf = (log: WellLog): readonly (readonly Layer[])[] => [
  log.strata,
  log.hole,
  ...log.drilling.map(({ intervals }) => intervals),
];

/** A base and the top of the next layer of its column, where both are written and differ. */
interface Contact {
  readonly base: Depth;
  readonly top: Depth;
}

function partedContact(snapshot: Snapshot, line: number): Contact | null {
  for (const column of columnsOf(snapshot.log)) {
    const at = column.findIndex((layer) => layer.line === line);
    const next = column[at + 1];
    if (at < 0 || next === undefined) continue;
    const base = column[at]?.interval.bottom ?? null;
    const { top } = next.interval;
    if (base?.value == null || top?.value == null || top.span.line !== next.line || base.td) return null;
    return areSame(base.value, top.value) ? null : { base, top };
  }
  return null;
}

function changeTo({ base, top }: Contact, { lines }: Snapshot): Change {
  const { line } = top.span;
  const text = lines[line] ?? '';
  return changeOf(line, text, withPiecesInColumns(text, [{ ...top.span, text: takenOver(top, base) }]));
}

/** A base that was changed takes the top of the layer below with it. */
export const followContact: Refactoring = {
  id: 'follow-contact',
  kind: 'refactor.rewrite',
  offers: (snapshot, { first }) => {
    const contact = partedContact(snapshot, first.line);
    if (contact === null) return [];
    const { base, top } = contact;
    return [{ name: 'top', title: l10n.t('Let the next line begin at {0}', takenOver(top, base)) }];
  },
  changes: (snapshot, { first }) => {
    const contact = partedContact(snapshot, first.line);
    return contact === null ? [] : [changeTo(contact, snapshot)];
  },
  refusal: null,
};
