import * as l10n from '@vscode/l10n';
import type { Rule } from '../rule.ts';

/** An `# allow` of a rule that has nothing to say there. */
export const rule: Rule = {
  id: 'allow-silences-nothing',
  severity: 'warning',
  title: 'An allow that silences nothing',
  why: 'The fault that it spoke of is mended or moved; left standing, it would hide the next one.',
  mend: 'Remove the allow, or put it on the line that it is meant for, or the line above.',
  source: 'the notation',
  unfixed: 'Whether the allow is to go, or belongs to another line, only its writer knows.',
  flagged: [{ text: 'strata\n  0 - 3.8 clay # allow [[interval-gap]]: no returns\n  3.8 - 6.1 sand' }],
  silent: [
    { text: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow interval-gap: no returns' },
    { text: 'strata\n  0 - 3.8 clay\n  # allow interval-gap: no returns\n  4.1 - 6.1 sand' },
  ],
  check: () => [],
  checkAllows: (uses) =>
    uses
      .filter(({ known, off, silenced }) => known && !off && silenced === 0)
      .map(({ span, id }) => ({
        span,
        message: l10n.t(
          'nothing here is reported by {0}, neither on this line nor on the next; remove the allow, or move it to the line that it is meant for',
          id,
        ),
      })),
};
