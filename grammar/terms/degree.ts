import { common, from, list } from './build.ts';

const word = from(common);

export const degree = list('degree', 'Words of degree', [
  word('very', 'vy|vry|v', 'In a high degree.'),
  word('slightly', 'sli|sltly|sly|slgtly', 'In a low degree.'),
  word('slight', '', 'Of a low degree.'),
  word('normally', '', 'As is usual.'),
  word('well', '', 'In a good degree.'),
  word('poorly', 'prly', 'In a poor degree.'),
  word('moderately', 'mod|modly', 'In a middling degree.'),
  word('highly', 'hly', 'In a high degree.'),
  word('extremely', 'extr|extremly', 'In the highest degree.'),
  word('fairly', '', 'In a fair degree.'),
  word('somewhat', '', 'In some degree.'),
  word('partly', 'prtly|partially', 'Over a part.'),
  word('mildly', '', 'In a low degree.'),
  word('semi', '', 'Half.'),
  word('almost', 'nearly', 'Not quite.'),
  word('quite', '', 'In a good degree.'),
  word('non', '', 'Not.'),
  word('not', '', 'Absent.'),
  word('too', '', 'More than is wanted.'),
]);
