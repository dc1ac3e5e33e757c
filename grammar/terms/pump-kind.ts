import { common, from, list } from './build.ts';

const said = from(common);

export const pumpKind = list('pump-kind', 'Pumps', [
  said('submersible', 'sub|subm|submers|submersible pump', 'Pump and motor hang together in the water.'),
  said('jet', 'jet pump|deep well jet|shallow well jet|convertible jet', 'A pump at the surface that drives a jet.'),
  said(
    'turbine',
    'vertical turbine|line shaft|lineshaft|lst pump|line shaft turbine',
    'Impellers in the well on a shaft from the surface.',
  ),
  said('hand pump', 'hand|handpump|pitcher pump', 'Worked by hand.'),
  said('centrifugal', 'cent|suction pump', 'A pump at the surface that sucks.'),
  said('piston', 'reciprocating|cylinder pump|rod pump', 'A plunger in the well on rods.'),
  said('helical rotor', 'progressive cavity|progressing cavity', 'A screw that turns in a sleeve.'),
  said('windmill', 'wind pump', 'A piston pump driven by the wind.'),
  said('solar', 'solar pump|solar submersible', 'A pump driven by the sun.'),
  said('air lift pump', 'airlift pump', 'Air lifts the water.'),
  said('bladder', 'bladder pump', 'A gas-driven sampling pump.'),
  said('peristaltic', 'peristaltic pump', 'A sampling pump that squeezes a tube.'),
  said('no pump', 'none|not installed|pump not installed', 'No pump is fitted.'),
  said('variable speed', 'vfd|variable frequency drive|constant pressure', 'The motor speed follows the demand.'),
]);
