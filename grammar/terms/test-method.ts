import { common, from, list } from './build.ts';

const said = from(common);

export const testMethod = list('test-method', 'Ways to test the yield', [
  said(
    'pump',
    'pumped|pumping|test pump|submersible pump|pump test|pumping test',
    'Water is pumped out and the level followed.',
  ),
  said(
    'blow',
    'airlift|air lift|blown|air|blow test|air test|air lifted|airlifted|blowing',
    'Air lifts the water out; levels are rough.',
  ),
  said('bail', 'bailer|bailed|bailing|bail test', 'Water is lifted out with a bailer.'),
  said('flowing', 'flow|free flow|artesian flow', 'Water flows out by itself.'),
  said('slug', 'slug test|slug in|slug out', 'The level is changed at once and its return followed.'),
  said('step', 'step test|step drawdown|stepped', 'Pumping at rates that rise in steps.'),
  said('constant rate', 'constant|const rate', 'Pumping at one rate.'),
  said('packer test', 'packer|lugeon', 'Water is pressed into a stretch between packers.'),
  said('estimated', 'est|estimate|by eye', 'The rate was judged, not measured.'),
  said('bucket', 'bucket and stopwatch|timed bucket', 'The rate was measured with a bucket and a watch.'),
  said('weir', 'v notch|v notch weir|orifice|orifice weir', 'The rate was measured at a weir or an orifice.'),
  said('meter', 'flow meter|flowmeter|metre', 'The rate was measured with a meter.'),
]);
