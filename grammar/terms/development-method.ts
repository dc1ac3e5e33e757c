import { common, from, list } from './build.ts';

const said = from(common);

export const developmentMethod = list('development-method', 'Ways to develop a well', [
  said(
    'air',
    'airlift|air lift|blown|blow|air lifted|air development|compressed air',
    'Air lifts water and fines out.',
  ),
  said(
    'surge',
    'surged|surging|surge block|surge and bail|swab|swabbing|swabbed',
    'Water is driven in and out through the screen.',
  ),
  said(
    'jet',
    'jetted|jetting|water jet|high velocity jetting',
    'Jets of water wash the screen and the ground behind it.',
  ),
  said('pump', 'pumped|pumping|overpump|overpumping|over pumping|over pumped', 'Fines are pumped out.'),
  said('bail', 'bailed|bailing|bailer', 'Fines are bailed out.'),
  said('backwash', 'backwashed|backwashing|rawhiding|rawhide', 'Water is let fall back to stir the ground.'),
  said(
    'isolation tool',
    'dual swab|double surge block|zone development',
    'A short stretch at a time is worked between seals.',
  ),
  said(
    'chemical',
    'dispersant|mud dispersant|polyphosphate|acid|acidised|acidized',
    'A chemical loosens mud or scale.',
  ),
  said('brushed', 'brush|brushing|wire brush', 'The wall or screen is brushed.'),
  said('clear', 'clr|ran clear|clean', 'The water ran clear at the end.'),
  said('cloudy', 'cldy|turbid|dirty', 'The water was not clear at the end.'),
  said('sand free', 'no sand', 'No sand came at the end.'),
]);
