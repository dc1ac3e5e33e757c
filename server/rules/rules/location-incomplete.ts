import * as l10n from '@vscode/l10n';
import type { Rule } from '../rule.ts';

interface Part {
  /** What a location of this kind has, and what it lacks where the second is not found. */
  readonly has: RegExp;
  readonly lacks: RegExp;
  readonly message: () => string;
}

/* A lot without its concession, a concession without its lot; a township and range without the section. */
const parts: readonly Part[] = [
  {
    has: /\blot\b/i,
    lacks: /\b(con(cession)?|range|rang|block|plan)\b/i,
    message: () =>
      l10n.t('the location lacks the concession, the range or the plan; write it, or ? in its place to ask the crew'),
  },
  {
    has: /\bcon(cession)?\b/i,
    lacks: /\blot\b/i,
    message: () => l10n.t('the location lacks the lot; write it, or ? in its place to ask the crew'),
  },
  {
    has: /\bT\d+[NS]\b.*\bR\d+[EW]\b/i,
    lacks: /\bS(ec(tion)?)?\.? ?\d+\b/i,
    message: () => l10n.t('the location lacks the section; write it, or ? in its place to ask the crew'),
  },
  {
    has: /\bR\d+[EW]\b/i,
    lacks: /\bT\d+[NS]\b/i,
    message: () => l10n.t('the location lacks the township; write it, or ? in its place to ask the crew'),
  },
  {
    has: /\bT\d+[NS]\b/i,
    lacks: /\bR\d+[EW]\b/i,
    message: () => l10n.t('the location lacks the range; write it, or ? in its place to ask the crew'),
  },
];

/** A place in words that lacks one of its parts. */
export const rule: Rule = {
  id: 'location-incomplete',
  severity: 'information',
  title: 'A location that lacks its lot, its concession or its section',
  why: 'A township has hundreds of lots: without every part of it nobody finds the well again.',
  mend: 'Write the part that is missing, or `?` in its place.',
  source: 'common practice; how surveyed land is named',
  crew: 'Which lot, concession or section is it?',
  unfixed: 'Which one it is stands on the permit or the map; any number would be made up.',
  flagged: [
    { text: 'location [[lot 14, Fenmarrow Township]]' },
    { text: 'location [[con 5, Fenmarrow Township]]' },
    { text: 'location [[NW SE T30N R12E]]' },
  ],
  silent: [
    { text: 'location lot 14, con 5, Fenmarrow Township' },
    { text: 'location NW SE S14 T30N R12E' },
    { text: 'location lot 14, con ?, Fenmarrow Township' },
    { text: 'location by the old mill, Fenmarrow' },
  ],
  check: ({ log }) => {
    const location = Object.hasOwn(log.header, 'location') ? log.header.location : undefined;
    const lacking = parts.find(({ has, lacks }) => location && has.test(location.text) && !lacks.test(location.text));
    return location && lacking
      ? [
          {
            span: location.span,
            message: lacking.message(),
          },
        ]
      : [];
  },
};
