import * as l10n from '@vscode/l10n';
import { intervalText } from '../messages.ts';
import type { Rule } from '../rule.ts';

const kindless = new Set(['bedrock', 'rock', 'ledge-rock']);

/** Bedrock of which the log does not say what rock it is. */
export const rule: Rule = {
  id: 'bedrock-without-kind',
  severity: 'information',
  title: 'Bedrock logged without its kind',
  why: 'How deep a casing must go, and how a well behaves, depend on the rock: limestone is not granite.',
  mend: 'Name the rock, or write `?` beside it to ask the crew.',
  source: 'common practice, no source',
  crew: 'What kind of rock was it?',
  unfixed: 'The kind of rock is known only to those who saw it.',
  flagged: [{ text: 'strata\n  0 - 6 clay\n  - 61 [[bedrock, grey]]' }],
  silent: [{ text: 'strata\n  0 - 6 clay\n  - 61 limestone, grey' }],
  check: ({ log }) =>
    log.strata
      .filter((each) => each.principal !== null && kindless.has(each.principal.id) && each.names.length === 0)
      .map((each) => ({
        span: each.descriptionSpan ?? each.span,
        message: l10n.t(
          '{0} is {1}, and the log does not say of what kind; name the rock, or ask the crew',
          intervalText(each.interval, log.units),
          each.principal?.name ?? 'rock',
        ),
      })),
};
