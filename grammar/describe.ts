import type { Description, DescriptionText } from './terms/description.ts';
import { descriptionLists, longForm, nearest } from './terms/index.ts';
import type { Problem } from './tree.ts';

/** A word that no list knows; its near names are looked for when someone asks for them. */
function unknownWord({ text, start, end }: DescriptionText): Problem {
  let near: readonly string[] | null = null;
  return {
    code: 'unknown-term',
    start,
    end,
    written: text,
    get meant() {
      near ??= nearest(text, descriptionLists, 3).map(longForm);
      return near;
    },
    facts: {},
  };
}

/** The words of a description that no list knows. */
export const descriptionProblems = (description: Description): Problem[] => description.unknown.map(unknownWord);
