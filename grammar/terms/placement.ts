import { common, from, list } from './build.ts';

const said = from(common);

export const placement = list('placement', 'Ways to place a fill', [
  said(
    'tremie',
    'tremied|trem|tremie pipe|tremmie|tremie pumped|by tremie|grout pipe',
    'Through a pipe whose end stands near the bottom of the fill.',
  ),
  said('gravity', 'poured|pour|gravity poured|dumped|free fall|by hand', 'Let fall from the surface.'),
  said(
    'gravity tremie',
    'tremie gravity|gravity fed tremie|tremie poured',
    'Let run down a tremie pipe without a pump.',
  ),
  said('pumped', 'pump|pumping', 'Pumped, path not told.'),
  said(
    'inside string',
    'inner string|stab in|stinger|through drill rods|through casing',
    'Pumped through a pipe inside the casing and out at its shoe.',
  ),
  said(
    'displacement',
    'displaced|plug displacement|wiper plug|two plug|casing method',
    'Pumped down the casing and pushed out of its foot by a plug and water.',
  ),
  said(
    'pressure',
    'pressure grouted|pressure grout|pressure grouting|under pressure|pressurised|pressurized',
    'Pushed up the annulus from below under pressure.',
  ),
  said('braden head', 'bradenhead|bradenhead method', 'Pumped down a closed casing head and up the annulus.'),
  said('dump bailer', 'bailer|dump bailed', 'Lowered in a bailer that opens at the bottom.'),
  said('driven in', 'puddled|dry driven|drawn down', 'Carried down beside casing as it is driven.'),
  said('washed in', 'circulated in', 'Carried down by water.'),
  said('tamped', 'tamped down', 'Pressed down by a tamper.'),
]);
