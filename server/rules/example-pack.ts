import { nothingMore, notice } from '../packs/figures.ts';
import type { Pack } from '../packs/limits.ts';

const said = {
  section: null,
  source: 'made up for the examples',
  known: 'common practice',
  date: null,
  uncertain: null,
  address: null,
} as const;

/** A pack of an invented county, as a workspace might have one, for rules that no pack of the program feeds. */
export const examplePack: Pack = {
  ...nothingMore,
  id: 'fenmarrow-county',
  title: 'Fenmarrow County, an invented place',
  notice,
  limits: {},
  distances: [
    { from: ['septic-tank', 'leaching-bed'], least: 30, text: '30 m from sewage', ...said },
    { from: ['barn'], least: 15, text: '15 m from a barn', ...said },
  ],
  numbers: [{ of: 'tag', shape: 'A 99999', text: 'a letter and five digits', ...said }],
};
