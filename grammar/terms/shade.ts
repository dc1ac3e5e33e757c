import { from, list } from './build.ts';

const shadeOf = from('common practice, after the names of soil colour charts');

export const shade = list('shade', 'Shades', [
  shadeOf('dark', 'dk|drk|drak', 'With little light in it.'),
  shadeOf('light', 'lt|lgt|lite|lht|lgh', 'With much light in it.'),
  shadeOf('pale', 'pl', 'Weak in colour.'),
  shadeOf('bright', 'brt|brite', 'Strong in colour.'),
  shadeOf('dull', '', 'Without brightness.'),
  shadeOf('dusky', '', 'Dark and weak in colour.'),
  shadeOf('deep', '', 'Strong and dark in colour.'),
  shadeOf('medium shade', '', 'Neither dark nor light.'),
]);
