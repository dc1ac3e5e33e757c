import { common, from, list } from './build.ts';

const said = from(common);

export const disinfectant = list('disinfectant', 'Disinfectants', [
  said(
    'sodium hypochlorite',
    'bleach|liquid bleach|hypochlorite|naocl|liquid chlorine|unscented bleach',
    'A chlorine solution; never to be mixed with acid.',
  ),
  said(
    'calcium hypochlorite',
    'granules|chlorine granules|cal hypo|chlorine powder|granular chlorine',
    'Dry chlorine in grains; to be kept dry and away from anything that burns.',
  ),
  said('chlorine tablets', 'chlorine pellets|tabs', 'Dry chlorine in tablets.'),
  said('chlorine', 'cl2|chlorinated|chlorination|shock chlorination|shocked', 'Chlorine, form not told.'),
  said('chlorine dioxide', 'clo2', 'A strong disinfectant gas, made where it is used.'),
  said('hydrogen peroxide', 'peroxide|h2o2', 'A disinfectant that leaves no chlorine.'),
]);
