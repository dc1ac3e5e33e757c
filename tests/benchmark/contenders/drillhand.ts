import type { Settings } from '../../../server/analysis/snapshot.ts';
import { showsAll } from '../../../server/features/shows.ts';
import { OpenLog } from '../../../server/lsp/open-log.ts';
import { type Contender, letterChange } from './contender.ts';

const today = '2026-12-31';

const settings: Settings = { packs: [], severities: {}, today };

/** The whole way: lines, tree, log, record, rules, findings. */
export const drillhand: Contender = {
  name: 'drillhand',
  notation: 'well',
  open: (text) => {
    const log = new OpenLog('file:///a.well', 1, text, settings, showsAll, () => today);
    const findings = log.snapshot().findings.length;
    const edit: Awaited<ReturnType<Contender['open']>>['checked']['edit'] = (place, letter) => {
      log.change(log.version + 1, [letterChange(place, letter)]);
      return log.snapshot().findings.length;
    };
    return { checked: { edit }, findings };
  },
};
