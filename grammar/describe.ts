import { problem } from './atoms.ts';
import type { Description } from './terms/description.ts';
import { descriptionLists, longForm, nearest } from './terms/index.ts';
import type { Problem } from './tree.ts';

/** The words of a description that no list knows, each with its near names. */
export const descriptionProblems = (description: Description): Problem[] =>
  description.unknown.map((each) =>
    problem('unknown-term', each, each.text, nearest(each.text, descriptionLists, 3).map(longForm)),
  );
