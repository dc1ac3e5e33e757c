import { common, from, list } from './build.ts';

const said = from(common);

export const screenKind = list('screen-kind', 'Screens', [
  said(
    'wire-wound',
    'ww|wire wrap|wire wrapped|wirewound|continuous slot|cont slot|v wire|vee wire|rod base',
    'Shaped wire wound round rods, with one continuous slot.',
  ),
  said(
    'slotted',
    'slot|slotted pipe|machine slotted|mill slotted|factory slotted|saw cut',
    'Pipe with slots cut in its wall.',
  ),
  said('louvred', 'louver|louvered|louvre|shutter|shutter screen', 'Pipe with openings pressed out like shutters.'),
  said('bridge-slotted', 'bridge slot', 'Sheet with openings pressed to small bridges, rolled to pipe.'),
  said('perforated', 'perf|perforated pipe|torch cut|torch slotted|drilled holes', 'Pipe with holes made in its wall.'),
  said('pipe-based', 'pipe base|pipe size screen', 'A wire-wound jacket over perforated pipe.'),
  said('prepacked', 'pre packed|prepack|pre pack', 'A screen that carries its own sand.'),
  said(
    'telescoped',
    'telescope|telescoping|tele|k packer screen',
    'Set through the casing and sealed to it by a packer.',
  ),
  said('drive point', 'well point|wellpoint|sand point|drivepoint', 'A short screen with a point to be driven.'),
  said('stainless steel', 'ss|stainless', 'Made of stainless steel.'),
  said('pvc', 'plastic', 'Made of polyvinyl chloride.'),
  said('steel', 'stl|galvanized|galvanised', 'Made of plain or galvanised steel.'),
  said('mesh', 'gauze|wire mesh', 'Woven wire over perforated pipe.'),
  said('porous', '', 'A wall of bonded grains.'),
  said('open hole', 'none|no screen', 'No screen; the rock stands by itself.'),
]);
