import { OpenLog } from '../../../server/lsp/open-log.ts';
import { defaultSettings } from '../../../server/lsp/settings.ts';
import { type Contender, letterChange } from './contender.ts';

/** The whole way: lines, tree, log, record, rules, findings. */
export const drillhand: Contender = {
  name: 'drillhand',
  notation: 'well',
  open: (text) => {
    const log = new OpenLog('file:///a.well', 1, text, defaultSettings, () => '2026-12-31');
    const findings = log.snapshot().findings.length;
    const edit: Awaited<ReturnType<Contender['open']>>['checked']['edit'] = (place, letter) => {
      log.change(log.version + 1, [letterChange(place, letter)]);
      return log.snapshot().findings.length;
    };
    return { checked: { edit }, findings };
  },
};
