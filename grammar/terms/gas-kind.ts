import { common, from, list } from './build.ts';

const said = from(common);

export const gasKind = list('gas-kind', 'Gases', [
  said('methane', 'ch4|natural gas|nat gas', 'A gas without smell that burns and can explode.'),
  said(
    'hydrogen sulphide',
    'h2s|hydrogen sulfide|sour gas|sulphur gas|sulfur gas',
    'A poisonous gas that smells of rotten eggs, until it dulls the nose.',
  ),
  said('carbon dioxide', 'co2', 'A heavy gas that displaces air.'),
  said('carbon monoxide', '', 'A poisonous gas without smell.'),
  said('radon', 'rn', 'A radioactive gas without smell.'),
  said('nitrogen', 'n2', 'A gas without smell that displaces air.'),
  said('unknown gas', 'gas|bubbles', 'A gas, kind not told.'),
]);
