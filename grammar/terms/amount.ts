import { from, list } from './build.ts';

const d2488 = from('ASTM D2488, describing proportions');
const said = from('common practice, no source');

export const amount = list('amount', 'Words for amount', [
  d2488('trace', 'tr|trc|trace of|traces|traces of|trce', 'Present, but under 5 %.'),
  d2488('few', 'a few', 'About 5 to 10 %.'),
  d2488('little', 'ltl|lil|lttl|a little|little bit of|lit', 'About 15 to 25 %.'),
  d2488('some', 'sm|sme|som', 'About 30 to 45 %.'),
  d2488('mostly', 'mstly|mainly|predominantly|chiefly|primarily', 'About 50 to 100 %.'),
  said(
    'with',
    'wth|wi|containing|along with|including',
    'Present in an amount that matters; for class symbols, 15 to 29 %.',
  ),
  said(
    'occasional',
    'occ|occas|ocas|occasionally|scattered|scat|sctd|scattered occasional|sporadic|isolated',
    'Here and there.',
  ),
  said('abundant', 'abdt|abund|abnt|much|lots of|lot of|many|numerous', 'A great deal.'),
  said('minor', 'mnr|minor amount of', 'Present, but of little weight.'),
  said('more', '', 'More than in the interval above.'),
  said('less', '', 'Less than in the interval above.'),
  said('no', 'without|w/o', 'Looked for and not found.'),
  said('streaks of', 'strks of', 'In thin irregular bands.'),
  said('layers of', 'lyrs of|layer of|beds of', 'In layers.'),
  said('seams of', 'seam of', 'In thin layers.'),
  said('lenses of', 'lens of', 'In bodies that thin out to their edges.'),
  said('bands of', 'band of', 'In bands.'),
  said('pieces of', 'piece of|chunks of|fragments of', 'In pieces.'),
  said('pockets of', 'pocket of', 'In small separate bodies.'),
  said('mixture of', 'mix of', 'Of several materials together.'),
]);
