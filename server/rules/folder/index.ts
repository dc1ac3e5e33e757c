import type { FolderRule } from './rule.ts';
import { rule as levelUnlikeNeighbours } from './rules/level-unlike-neighbours.ts';
import { rule as placeTwice } from './rules/place-twice.ts';
import { rule as tagTwice } from './rules/tag-twice.ts';
import { rule as wellIdTwice } from './rules/well-id-twice.ts';

/** Every rule that looks at the wells of a folder together, by id. */
export const folderRules: readonly FolderRule[] = [levelUnlikeNeighbours, placeTwice, tagTwice, wellIdTwice];
