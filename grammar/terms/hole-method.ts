import { common, from, list } from './build.ts';

const said = from(common);

export const holeMethod = list('hole-method', 'Ways to make a hole', [
  said('air rotary', 'rotary air|air rot|ar|air', 'A turning bit, with air to lift the cuttings.'),
  said(
    'down-the-hole hammer',
    'dth|dthh|dhh|down hole hammer|downhole hammer|down the hole|air hammer|hammer|rotary hammer|air rotary hammer',
    'An air-driven hammer just above the bit.',
  ),
  said(
    'mud rotary',
    'rotary mud|mud rot|direct rotary|direct mud rotary|mr',
    'A turning bit, with drilling mud to lift the cuttings and hold the wall.',
  ),
  said('rotary', 'rot|conventional rotary|rotary conventional', 'A turning bit, flush not told.'),
  said(
    'tricone',
    'tri cone|roller cone|roller bit|rock bit|tricone bit|rock roller',
    'A bit of three toothed cones that roll over the bottom.',
  ),
  said('drag bit', 'blade bit|wing bit', 'A bit with fixed blades for soft ground.'),
  said('pdc bit', 'pdc|button bit', 'A bit with hard inserts that shear or crush.'),
  said('dual rotary', 'dr|dual rot', 'The casing is turned and advanced apart from the drill string.'),
  said('cable tool', 'ct|cable|churn drill|percussion|spudder|cabletool', 'A heavy bit lifted and dropped on a cable.'),
  said('reverse circulation', 'rc|reverse|reverse rotary|rev circ', 'The cuttings come up inside the drill pipe.'),
  said(
    'dual-wall reverse circulation',
    'dual wall|dual wall rc|dual tube',
    'Reverse circulation through a pipe within a pipe.',
  ),
  said(
    'casing hammer',
    'drill and drive|air rotary with casing hammer|casing driver',
    'Casing is driven as the hole is drilled below it.',
  ),
  said(
    'casing advance',
    'casing advancer|overburden drilling|eccentric bit|symmetric bit|concentric bit',
    'A bit drills ahead of the casing and wider than it, and the casing follows.',
  ),
  said(
    'auger',
    'aug|augered|solid stem auger|ssa|continuous flight auger|flight auger',
    'A screw that carries the cuttings up.',
  ),
  said('hollow-stem auger', 'hsa|hollow stem', 'An auger with an open middle, through which samples are taken.'),
  said(
    'bucket auger',
    'bucket|bored|boring machine|large diameter auger',
    'A turning bucket that is lifted out when full.',
  ),
  said('hand auger', 'ha|hand augered', 'An auger turned by hand.'),
  said('sonic', 'vibratory', 'The drill string is vibrated and turned.'),
  said('diamond core', 'coring|core|cored|diamond|rotary core|diamond drill', 'A ring-shaped bit that leaves a core.'),
  said('jetting', 'jetted|washed|wash bore|wash boring|jet', 'A jet of water makes the hole.'),
  said('driven', 'driven point|drive point|sand point|drivepoint|sandpoint', 'A point is driven into the ground.'),
  said('direct push', 'dp|push|pushed', 'A rod is pushed or hammered in without cuttings.'),
  said('dug', 'hand dug|excavated|backhoe|dug by hand', 'Dug by hand or by machine.'),
  said(
    'under-reamed',
    'ur|underreamed|under reamer|underreamer|under reaming|underreaming',
    'Widened below a narrower stretch.',
  ),
  said('reamed', 'ream|reaming|reamer|hole opener|opened up', 'Widened from a smaller hole.'),
  said('fluid rotary', 'water rotary', 'A turning bit, with water to lift the cuttings.'),
  said('scraped', 'cleaned out|cleaning out|clean out', 'An old hole cleaned of what had fallen in.'),
]);
