import { common, from, list } from './build.ts';

const said = from(common);

export const content = list('content', 'What else is in it', [
  said(
    'fossiliferous',
    'foss|fosil|fossily|fosly|fossly|fosslif|fossilifeorus|fossilferous|fossil|fossils|few fossils',
    'With remains of old life.',
  ),
  said('shells', 'shell|shlls|shelly|marine shells', 'Remains of shells; among drillers also thin hard layers.'),
  said('oolitic', 'ool|oolites|oolite|oolith|ooliths', 'With small round grains of lime.'),
  said('calcareous', 'calc|calcar|cal', 'Fizzing with dilute acid.'),
  said('noncalcareous', 'noncalc|non calcareous|noncal', 'Not fizzing with dilute acid.'),
  said('carbonaceous', 'carb|carbon', 'With much plant carbon.'),
  said('argillaceous', 'arg|argill', 'With clay in it.'),
  said('arenaceous', 'aren', 'With sand in it.'),
  said('organic', 'org|orgs|organically', 'With plant remains.'),
  said('ferruginous', 'ferr|iron rich|irony', 'With iron in it.'),
  said('humic', 'humus|hum', 'With well decayed plant remains.'),
  said('non cherty', 'noncherty', 'Without chert.'),
  said('odour', 'odor|smell|odoriferous', 'With a smell.'),
  said('sulphur odour', 'sulfur odor|sulphur smell|sulfur smell|rotten egg smell', 'Smelling of hydrogen sulphide.'),
  said(
    'petroleum odour',
    'petroleum odor|gas odor|fuel odour|fuel odor|hydrocarbon odor|hydrocarbon odour',
    'Smelling of oil or fuel.',
  ),
  said('oil', 'oily', 'Oil met here.'),
  said('oil show', 'show of oil|oil stain|oil stained', 'A sign of oil.'),
  said('show', 'shows|showing', 'A sign of oil or gas.'),
  said('oil and gas show', 'show of oil and gas', 'A sign of oil and gas.'),
  said('gas', 'gassy', 'Gas met here.'),
  said('fluorescence', 'fluor', 'Glowing under ultraviolet light.'),
  said('iron', 'fe|iron streaked', 'Iron seen or tasted.'),
  said('sulphur', 'sulfur', 'Sulphur seen, smelt or tasted.'),
  said('salt bearing', 'salty', 'With salt in it.'),
  said('burnt', 'burned', 'Altered by fire.'),
]);
