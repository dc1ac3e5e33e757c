import { common, from, list } from './build.ts';

const said = from(common);

export const pitlessKind = list('pitless-kind', 'Pitless adapters and units', [
  said('bolt-on', 'bolted|bolt on adapter|bolt', 'Bolted through a hole in the casing.'),
  said('weld-on', 'welded|weld on adapter|weld', 'Welded over a hole in the casing.'),
  said('clamp-on', 'clamp|clamped|saddle', 'Clamped round the casing.'),
  said('slide', 'slide in|slide type', 'The drop pipe slides into a fitting in the wall.'),
  said('spool', 'spool type', 'A spool seals inside the casing above and below the outlet.'),
  said('pitless unit', 'unit|whole unit', 'A factory-made top that replaces the upper casing.'),
  said(
    'pitless adapter',
    'adapter|adaptor|pitless adaptor',
    'A fitting that leads the water out through the casing wall underground.',
  ),
  said('above ground', 'above grade|surface discharge|top discharge', 'The water leaves above ground.'),
  said('none', 'no pitless|well pit', 'No pitless fitting.'),
]);
