import { from, list } from './build.ts';

const d2487 = from('ASTM D2487');

const symbol = (id: string, meaning: string) => ({ ...d2487(id, '', meaning), id });

export const classSymbol = list('class-symbol', 'Soil class symbols', [
  symbol('GW', 'Well-graded gravel with less than 5 % fines.'),
  symbol('GP', 'Poorly graded gravel with less than 5 % fines.'),
  symbol('GM', 'Silty gravel, over 12 % fines.'),
  symbol('GC', 'Clayey gravel, over 12 % fines.'),
  symbol('SW', 'Well-graded sand with less than 5 % fines.'),
  symbol('SP', 'Poorly graded sand with less than 5 % fines.'),
  symbol('SM', 'Silty sand, over 12 % fines.'),
  symbol('SC', 'Clayey sand, over 12 % fines.'),
  symbol('ML', 'Silt of low plasticity.'),
  symbol('CL', 'Lean clay: clay of low to medium plasticity.'),
  symbol('OL', 'Organic silt or clay with a liquid limit under 50.'),
  symbol('MH', 'Elastic silt: silt of high plasticity.'),
  symbol('CH', 'Fat clay: clay of high plasticity.'),
  symbol('OH', 'Organic silt or clay with a liquid limit of 50 or more.'),
  symbol('PT', 'Peat and other highly organic soil.'),
  symbol('GW-GM', 'Well-graded gravel with 5 to 12 % silty fines.'),
  symbol('GW-GC', 'Well-graded gravel with 5 to 12 % clayey fines.'),
  symbol('GP-GM', 'Poorly graded gravel with 5 to 12 % silty fines.'),
  symbol('GP-GC', 'Poorly graded gravel with 5 to 12 % clayey fines.'),
  symbol('GC-GM', 'Gravel with over 12 % fines of silty clay.'),
  symbol('SW-SM', 'Well-graded sand with 5 to 12 % silty fines.'),
  symbol('SW-SC', 'Well-graded sand with 5 to 12 % clayey fines.'),
  symbol('SP-SM', 'Poorly graded sand with 5 to 12 % silty fines.'),
  symbol('SP-SC', 'Poorly graded sand with 5 to 12 % clayey fines.'),
  symbol('SC-SM', 'Sand with over 12 % fines of silty clay.'),
  symbol('CL-ML', 'Silty clay: fines with a plasticity index of 4 to 7 above the A line.'),
]);
