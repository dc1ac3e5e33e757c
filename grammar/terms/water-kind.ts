import { common, from, list } from './build.ts';

const said = from(common);

export const waterKind = list('water-kind', 'Kinds of water', [
  said('fresh', 'fr|frsh|sweet', 'Fit to drink by its taste.'),
  said('salty', 'salt|saline|slty|brine|briny', 'Tasting of salt.'),
  said('brackish', 'brack', 'Slightly salty.'),
  said('sulphur', 'sulfur|sul|sulph|sulphurous|sulfurous|rotten egg|sulphury', 'Smelling of hydrogen sulphide.'),
  said('mineral', 'mineralised|mineralized|minerals', 'With a marked taste of minerals.'),
  said('iron', 'irony|fe|rusty', 'With iron that stains or tastes.'),
  said('hard', 'hd|hrd', 'With much calcium and magnesium.'),
  said('soft', 'sft', 'With little calcium and magnesium.'),
  said('gassy', 'gas|effervescent|milky', 'With gas that bubbles out.'),
  said('clear', 'clr', 'Without colour or specks.'),
  said('cloudy', 'cldy|turbid|murky|dirty|muddy|silty', 'With fine specks that dim it.'),
  said('coloured', 'colored|tea coloured|tea colored|tannic|yellow|brown', 'With a colour of its own.'),
  said('sandy', 'sdy|sand', 'Carrying sand.'),
  said('oily', 'oil', 'With a film or smell of oil.'),
  said('odorous', 'odour|odor|smelly', 'With a smell, kind not told.'),
  said('odourless', 'odorless|no odour|no odor', 'Without a smell.'),
  said('warm', 'hot|thermal', 'Warmer than the ground near the surface.'),
  said('cold', '', 'Cold to the touch.'),
  said('not tested', 'untested', 'Its kind was not looked at.'),
]);
