import { common, from, list } from './build.ts';

const said = from(common);

export const jointType = list('joint-type', 'Ways to join pipe', [
  said('welded', 'weld|wld|wlded|butt welded|butt weld', 'Joined by welding.'),
  said(
    'threaded and coupled',
    't&c|t and c|tc|tandc|t & c|coupled|threaded coupled',
    'Threaded ends joined by a coupling.',
  ),
  said('threaded', 'thd|thrd|thread|threads|screwed', 'Threaded ends, kind not told.'),
  said(
    'flush-threaded',
    'flush thread|flush joint|flush threads|flush jointed',
    'Threaded with no step inside or outside.',
  ),
  said(
    'solvent-welded',
    'solvent|glued|glue|solvent weld|solvent cement|solvent cemented|sw|cemented',
    'Plastic joined with solvent cement.',
  ),
  said('spline', 'splined|locking spline|spline lock', 'Joined by a spline pushed into a groove.'),
  said(
    'bell and spigot',
    'belled|bell end|bell|spigot|bell & spigot',
    'One end fits inside the widened end of the next.',
  ),
  said('gasketed', 'gasket|o ring|o rings|rubber ring', 'Sealed by a rubber ring.'),
  said('riveted', '', 'Joined by rivets or self-tapping screws.'),
  said('flanged', 'flange', 'Bolted at flanges.'),
  said('fused', 'heat fused|butt fused', 'Plastic melted together.'),
]);
