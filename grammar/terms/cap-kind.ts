import { common, from, list } from './build.ts';

const said = from(common);

export const capKind = list('cap-kind', 'Well caps', [
  said(
    'vermin-proof',
    'vermin|vermin proof cap|verminproof|bug proof|insect proof',
    'Kept shut against insects and small animals.',
  ),
  said('vented', 'vent|screened vent|with vent', 'With a screened opening for air.'),
  said('unvented', 'not vented|no vent', 'Without an opening for air.'),
  said(
    'sanitary seal',
    'sanitary|sanitary well seal|well seal|sanitary well cap',
    'Sealed by a ring squeezed against the casing.',
  ),
  said('locking', 'lock|locked|lockable|locking cap', 'Can be locked.'),
  said('watertight', 'water tight|sealed|gasketed', 'Keeps water out.'),
  said('welded', 'weld|welded cap|welded plate|steel plate', 'A plate welded on.'),
  said('threaded', 'screwed|threaded cap', 'Screwed on.'),
  said('bolted', 'bolt down|bolt on', 'Held by bolts.'),
  said('flush mount', 'flush mounted|flushmount|road box|manhole', 'Under a cover level with the ground.'),
  said('slip', 'slip on|slip cap|push on', 'Pushed on.'),
  said('temporary', 'temp', 'Only until the well is finished.'),
  said('flanged', 'flange|blind flange', 'A plate bolted to a flange.'),
  said('none', 'no cap|open', 'No cap is fitted.'),
]);
