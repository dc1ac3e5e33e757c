import * as l10n from '@vscode/l10n';
import type { Tree } from '../../grammar/tree.ts';
import type { PipeString } from '../model/log.ts';
import { fix, lineAfter } from './fixes.ts';
import type { Fix } from './rule.ts';

/** A fix that puts a seal under a string of which all is still to be asked. */
export const askForSeal = ({ line }: PipeString, { lines }: Tree): Fix =>
  fix(l10n.t('Ask the crew for the seal, with ?'), [lineAfter(line, lines[line]?.text ?? '', 'seal  ? - ?  ?')], {
    preferred: true,
  });
