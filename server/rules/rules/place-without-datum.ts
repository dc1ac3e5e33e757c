import * as l10n from '@vscode/l10n';
import type { Rule } from '../rule.ts';

/** A place in metres of which nobody says against which datum. */
export const rule: Rule = {
  id: 'place-without-datum',
  severity: 'hint',
  title: 'A place in UTM whose datum is not named',
  why: 'The same easting and northing lie some 200 m apart in the datums of 1927 and 1983, which are both still on maps.',
  mend: 'Name the datum that the receiver or the map was set to: `nad83`, `nad27`, `wgs84`.',
  source: 'common practice; the difference is from memory',
  crew: 'Which datum was the receiver set to, or does the map have?',
  unfixed: 'Which datum it was stands on the receiver or the map; any name would be a guess.',
  flagged: [{ text: '[[place utm 17 714000 4943000]]' }],
  silent: [{ text: 'place utm 17 714000 4943000 nad83' }, { text: 'place 44.6128 -78.3042' }, { text: 'place ?' }],
  check: ({ log: { place } }) =>
    place !== null && place.utm !== null && place.datum === null
      ? [
          {
            span: place.span,
            message: l10n.t('this place in UTM names no datum; write nad83, nad27, wgs84 or the one that was used'),
          },
        ]
      : [],
};
