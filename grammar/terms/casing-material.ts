import { common, from, list } from './build.ts';

const said = from(common);

export const casingMaterial = list('casing-material', 'Casing materials', [
  said('steel', 'stl|carbon steel|black steel|st|mild steel|low carbon steel|black iron', 'Plain carbon steel.'),
  said('galvanised steel', 'galvanized steel|galv|galvanized|galvanised|galv steel', 'Steel with a coat of zinc.'),
  said('stainless steel', 'ss|stainless|sst|stn stl|304 ss|316 ss|stainless stl', 'Steel that resists rust.'),
  said('iron', 'wrought iron|cast iron|ductile iron', 'Iron pipe, mostly in old wells.'),
  said('pvc', 'upvc|polyvinyl chloride|plastic', 'Polyvinyl chloride.'),
  said('cpvc', '', 'Chlorinated polyvinyl chloride, for warm water.'),
  said('abs', '', 'Acrylonitrile butadiene styrene.'),
  said('hdpe', 'pe|polyethylene|poly', 'High-density polyethylene.'),
  said('fibreglass', 'fiberglass|fibre glass|fiber glass|frp|grp|rmp', 'Plastic with glass fibres.'),
  said('ptfe', '', 'Polytetrafluoroethylene, for monitoring wells.'),
  said(
    'concrete',
    'conc|concrete tile|concrete rings|concrete ring|cement tile',
    'Rings of concrete, for bored and dug wells.',
  ),
  said('brick', 'bricks', 'A lining of brick.'),
  said('stone', 'field stone|fieldstone|rock lined', 'A lining of stones.'),
  said('clay tile', 'tile|vitrified clay', 'A lining of fired clay pipe.'),
  said('wood', 'wood crib|cribbing|timber', 'A lining of wood.'),
]);
