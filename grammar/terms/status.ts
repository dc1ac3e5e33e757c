import { common, from, list } from './build.ts';

const said = from(common);

export const status = list('status', 'Statuses', [
  said('in use', 'active|water supply|producing|operational|used', 'The well is used.'),
  said('new', 'new well|completed|finished', 'The well is finished and not yet used.'),
  said('standby', 'stand by|backup|emergency', 'Kept for need.'),
  said('replacement', 'replaces|replacement well', 'Takes the place of another well.'),
  said('deepened', 'deepening', 'An old well made deeper.'),
  said('altered', 'reconstructed|rehabilitated|repaired|modified', 'An old well changed.'),
  said('not in use', 'unused|inactive|out of service|capped', 'The well is not used now.'),
  said('dry', 'dry hole|dry well', 'No water, or too little.'),
  said('low yield', 'insufficient|insufficient supply|poor yield|not enough', 'Too little water.'),
  said('poor quality', 'bad water|abandoned poor quality', 'Water not fit for its use.'),
  said('abandoned', 'abnd|abd|decommissioned|sealed|plugged|decom|plugged and abandoned', 'Given up and sealed.'),
  said('abandoned unsealed', 'not sealed', 'Given up and not sealed.'),
  said('unfinished', 'in progress|incomplete|not finished|drilling', 'The work is not finished.'),
  said('test hole', 'test', 'Drilled to learn, not to be used.'),
  said('observation', 'monitoring', 'Used for levels and samples.'),
  said('flowing', 'artesian|flowing artesian', 'Water flows out by itself.'),
  said('destroyed', 'lost|collapsed', 'No longer there.'),
  said('unknown', 'unk|not known', 'Not known.'),
]);
