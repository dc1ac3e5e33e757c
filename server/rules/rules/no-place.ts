import * as l10n from '@vscode/l10n';
import { meantOrRemark, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A value that no item of the line takes. */
export const rule: Rule = {
  id: 'no-place',
  severity: 'error',
  title: 'A value that has no place',
  why: 'The value is left out of the record.',
  mend: 'Give it its unit or its label, move it, or put it in a remark after `;`.',
  source: 'the notation',
  flagged: [{ text: 'disinfection 100 mg/L, 12 h, [[17]]', fixed: 'disinfection 100 mg/L, 12 h  ; 17' }],
  silent: [{ text: 'disinfection 100 mg/L, 12 h' }],
  check: ofProblem('no-place', {
    message: ({ written }) =>
      l10n.t(
        '"{0}" has no place on this line and is left out; give it its unit or its label, or put it in a remark after ;',
        written,
      ),
    fixes: meantOrRemark,
  }),
};
