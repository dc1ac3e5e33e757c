import * as l10n from '@vscode/l10n';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Selection } from './code-actions.ts';
import type { Change } from './refactorings/change.ts';
import { convertUnits } from './refactorings/convert-units.ts';
import { followContact } from './refactorings/follow-contact.ts';
import { missingSection } from './refactorings/missing-section.ts';
import type { Refactoring } from './refactorings/refactoring.ts';
import { remarkToLine } from './refactorings/remark-to-line.ts';
import { rewriteTerms } from './refactorings/rewrite-terms.ts';
import { sortLines } from './refactorings/sort-lines.ts';

const all: readonly Refactoring[] = [
  followContact,
  remarkToLine,
  sortLines,
  convertUnits,
  rewriteTerms,
  missingSection,
];

/** A change that is offered; what it comes to is worked out when it is chosen. */
export interface Refactored {
  readonly id: string;
  readonly name: string;
  readonly title: string;
  readonly kind: Refactoring['kind'];
}

/** What is offered at a selection: to one who asks everything, else only what the place itself suggests. */
export const refactorings = (snapshot: Snapshot, selection: Selection, asked: boolean): readonly Refactored[] =>
  all.flatMap(({ id, kind, offers }) =>
    offers(snapshot, selection, asked).map(({ name, title }) => ({ id, name, title, kind })),
  );

/** The change of one that was offered; none where there is nothing to do. */
export const refactoringChanges = (
  snapshot: Snapshot,
  selection: Selection,
  id: string,
  name: string,
): readonly Change[] => all.find((each) => each.id === id)?.changes(snapshot, selection, name) ?? [];

/** Why one that was offered comes to no change, for the user. */
export const refactoringRefusal = (snapshot: Snapshot, selection: Selection, id: string, name: string): string =>
  all.find((each) => each.id === id)?.refusal?.(snapshot, selection, name) ?? l10n.t('There is nothing to change.');
