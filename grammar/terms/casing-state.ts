import { common, from, list } from './build.ts';

const said = from(common);

export const casingState = list('casing-state', 'States of a string', [
  said('driven', 'drv|drvn|drove', 'Driven into the ground, so that no annulus is left.'),
  said('temporary', 'temp|tmp', 'In the hole during the work only.'),
  said('permanent', 'perm', 'Left in the hole.'),
  said('pulled', 'removed|withdrawn|pulled back|extracted', 'Taken out of the hole.'),
  said('left in place', 'left in|abandoned in place|left in hole', 'Could not be or was not taken out.'),
  said('telescoped', 'telescope|telescoping|tele', 'Set through a wider string and reaching below it.'),
  said('hung', 'hanging|liner hanger|suspended', 'Carried by the string above and not by the bottom.'),
  said('advanced', 'drilled in|advanced with drilling', 'Went down as the hole was drilled.'),
  said('set in open hole', 'set', 'Lowered into a hole drilled before.'),
  said('seated', 'seated in rock|landed', 'Resting firmly at its foot.'),
  said('perforated', 'perf|perfd|perforations', 'With holes cut in its wall.'),
  said('slotted', 'slot cut', 'With slots cut in its wall.'),
  said('new', '', 'Not used before.'),
  said('used', 'second hand', 'Used before.'),
  said('conductor', 'surface casing|surface string', 'The outermost string, that keeps the top of the hole open.'),
  said('split', 'cracked|collapsed|damaged', 'No longer sound.'),
]);
