import { common, from, list } from './build.ts';

const said = from(common);

export const use = list('use', 'Uses', [
  said('domestic', 'dom|house|household|home|residential|private', 'Water for a household.'),
  said('public supply', 'public|pws|municipal|muni|community|town|city|public water supply', 'Water for the public.'),
  said(
    'non-community supply',
    'non community|school|church|campground|restaurant',
    'Water for people who do not live there.',
  ),
  said('irrigation', 'irr|irrig|irrigate|crops', 'Water for crops or turf.'),
  said('stock', 'livestock|stock watering|cattle|stk', 'Water for animals.'),
  said('farm', 'agricultural|agriculture|ag|dairy', 'Water for a farm, use not told.'),
  said('commercial', 'comm|com|business', 'Water for a business.'),
  said('industrial', 'ind|industry|process', 'Water for making things.'),
  said(
    'monitoring',
    'mon|mw|observation|obs|piezometer|monitor|observation well|monitoring well',
    'For levels and samples.',
  ),
  said('test', 'test hole|test well|exploration|exploratory|th', 'To learn about the ground or the yield.'),
  said('dewatering', 'dewater|dw|depressurisation|depressurization', 'To lower the water level.'),
  said(
    'geothermal',
    'heat pump|ground loop|open loop|closed loop|geoexchange|heat exchange|cooling|heating',
    'To take heat from the ground or give it back.',
  ),
  said('injection', 'recharge|inj|disposal|aquifer storage', 'To put water into the ground.'),
  said('remediation', 'recovery|extraction|recovery well', 'To clean water in the ground.'),
  said('fire protection', 'fire|hydrant', 'Water against fire.'),
  said('cathodic protection', 'cathodic|cp', 'To keep metal from rusting by a current.'),
  said('mining', 'mine', 'Water for a mine.'),
  said('aquaculture', 'fish|fish hatchery|hatchery', 'Water for fish.'),
  said('cottage', 'seasonal|recreation|recreational', 'Water for a house used part of the year.'),
  said('construction', 'drilling supply|rig supply', 'Water for building works.'),
  said('oil and gas supply', 'rig supply well', 'Water for oil and gas works.'),
  said('not used', 'none|unused', 'No use.'),
  said('other', 'oth', 'Another use.'),
]);
