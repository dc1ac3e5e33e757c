import { common, from, list } from './build.ts';

const said = from(common);

export const layer = list('layer', 'Bodies within other ground', [
  said('streaks', 'streak|strk|strks|stringers|stringer|strips|strip', 'Thin irregular bands.'),
  said('layers', 'layer|lyr|lyrs|lay', 'Sheets of any thickness.'),
  said('seams', 'seam|seems', 'Thin layers.'),
  said('bands', 'band|bnds', 'Layers that stand out.'),
  said('lenses', 'lens|lns', 'Bodies that thin out to their edges.'),
  said('partings', 'parting|ptgs|ptg', 'Thin layers along which rock splits.'),
  said('beds', 'bed|bds', 'Layers of one kind.'),
  said('ledges', 'shelf|shelves|ldgs', 'Hard layers.'),
  said('pockets', 'pocket|pkt|pkts', 'Small separate bodies.'),
  said('nodules', 'nodule|nods', 'Rounded lumps.'),
  said('concretions', 'concretion', 'Lumps cemented around a middle.'),
  said('veins', 'vein|vn|vns|veinlets', 'Sheets that fill cracks.'),
  said('fragments', 'frag|frags|fragment|pieces|piece|pcs|chips|chip|chunks', 'Broken bits.'),
  said('laminations', 'laminae|lams', 'Very thin layers.'),
  said('inclusions', 'inclusion', 'Bodies shut in by other rock.'),
  said('zone', 'zones|zn', 'A stretch of its own kind.'),
  said('crust', '', 'A hard skin.'),
  said('matrix', 'mtrx', 'The fine ground around larger grains.'),
]);
