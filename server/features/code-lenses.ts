import { type Span, spanAt } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { sectionTotals } from './section-totals.ts';
import { sectionsOf } from './sections.ts';

/** What a section comes to, to be shown above the line that it begins with. */
export interface Lens {
  readonly span: Span;
  readonly title: string;
}

/** The totals of every section of which something is known. */
export const codeLenses = (snapshot: Snapshot): readonly Lens[] =>
  sectionsOf(snapshot.tree).flatMap((section) => {
    const keyword = snapshot.tree.lines[section.first]?.keyword ?? null;
    const title = sectionTotals(snapshot, section);
    return keyword === null || title === '' ? [] : [{ span: spanAt(section.first, keyword), title }];
  });
