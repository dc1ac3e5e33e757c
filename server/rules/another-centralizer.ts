import * as l10n from '@vscode/l10n';
import type { PipeString } from '../model/log.ts';
import { writeAfter } from './fixes.ts';
import type { Fix } from './rule.ts';

/** A fix that adds one more centralizer, at a depth to ask the crew for; none where no depth is listed. */
export function anotherCentralizer({ centralizers }: PipeString): Fix[] {
  const last = centralizers?.positions.at(-1);
  return last ? [writeAfter(l10n.t('Ask the crew for one more, with ?'), last.span, ' ?', { preferred: true })] : [];
}
