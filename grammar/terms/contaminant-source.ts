import { common, from, list } from './build.ts';

const said = from(common);

export const contaminantSource = list('contaminant-source', 'Sources of contamination', [
  said('septic tank', 'septic|septic system|tank septic', 'A tank that takes house sewage.'),
  said(
    'leaching bed',
    'tile bed|leach field|drain field|drainfield|septic field|tile field|weeping bed|leachfield|absorption field|soil treatment area|leaching field',
    'Where sewage from a septic tank soaks away.',
  ),
  said('sewer', 'sewer line|sanitary sewer|sewer pipe|building sewer', 'A pipe that carries sewage.'),
  said('storm sewer', 'storm drain', 'A pipe that carries rain water.'),
  said('holding tank', '', 'A tank that keeps sewage until it is pumped out.'),
  said('privy', 'outhouse|latrine|pit privy', 'A toilet over a pit.'),
  said('cesspool', 'seepage pit|dry well|soakaway', 'A pit from which waste water soaks away.'),
  said(
    'fuel tank',
    'oil tank|gas tank|fuel storage|underground tank|ust|buried tank|fuel oil tank|gasoline tank',
    'A tank for fuel.',
  ),
  said(
    'feedlot',
    'feed lot|barnyard|barn yard|livestock yard|corral|animal yard',
    'Where animals are kept close together.',
  ),
  said('manure storage', 'manure|manure pile|manure pit|lagoon manure|manure stack', 'Where manure is kept.'),
  said('barn', 'stable|animal shelter|kennel', 'A building for animals.'),
  said('landfill', 'dump|waste site|refuse site|solid waste', 'Where waste is buried.'),
  said('lagoon', 'sewage lagoon|waste pond|sewage pond', 'A pond of waste water.'),
  said('salt storage', 'road salt|salt pile|salt shed', 'Where road salt is kept.'),
  said(
    'pesticide storage',
    'pesticides|chemical storage|fertilizer storage|fertiliser storage|chemigation',
    'Where farm chemicals are kept.',
  ),
  said('cemetery', 'graveyard|graves', 'Where the dead are buried.'),
  said('surface water', 'pond|lake|river|stream|creek|ditch|brook', 'Open water.'),
  said('road', 'highway|street', 'A road.'),
  said('building', 'house|dwelling|foundation', 'A building.'),
  said('property line', 'lot line|boundary|lotline', 'The edge of the property.'),
  said('another well', 'well|neighbouring well|neighboring well|nearest well', 'Another well.'),
  said('abandoned well', 'unused well|old well', 'A well no longer used and not sealed.'),
  said('pipeline', 'gas line|petroleum pipeline', 'A pipe that carries fuel.'),
  said('mine', 'quarry|gravel pit', 'A mine or a quarry.'),
]);
