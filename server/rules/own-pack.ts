import { termLists } from '../../grammar/terms/index.ts';
import type { ListId } from '../../grammar/terms/term.ts';
import { type ReadPack, readPack, type Terms } from '../packs/read-pack.ts';
import { nearNames } from './near-names.ts';

const idsOf = (list: ListId): readonly string[] =>
  termLists.filter(({ id }) => id === list).flatMap(({ terms }) => terms.map(({ id }) => id));

let known: Terms | null = null;

const terms = (): Terms => {
  known ??= {
    use: idsOf('use'),
    method: idsOf('hole-method'),
    casing: idsOf('casing-material'),
    joint: idsOf('joint-type'),
    fill: idsOf('fill-material'),
    placement: idsOf('placement'),
    from: idsOf('contaminant-source'),
  };
  return known;
};

/** Reads a workspace's own pack, and holds its terms against those of the notation. Never throws. */
export const readOwnPack = (text: string): ReadPack => readPack(text, nearNames, terms());
