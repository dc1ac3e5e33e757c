import { ground, list } from './build.ts';

/* A name alone tells which rock was met, not what it is made of: the kind stays `rock` unless the system's name is all there is. */

const unit = ground(
  'rock',
  true,
  'named rock unit of the Illinois Basin and its neighbours, from public geological maps',
);
const loose = ground(
  'mixed',
  false,
  'named glacial unit of the Illinois Basin and its neighbours, from public geological maps',
);
const system = ground('rock', true, 'International Chronostratigraphic Chart');

const of = (make: typeof unit, meaning: string, names: string) =>
  names.split('|').map((spelling) => {
    const [name = '', ...short] = spelling.split('=');
    return make(name, short.join('|').toLowerCase(), null, '', meaning);
  });

export const formation = list('formation', 'Named rock units', [
  ...of(
    system,
    'A system or series of the geological time scale; rock of that age.',
    'Precambrian=pre cambrian|Cambrian|Ordovician|Silurian|Devonian|Mississippian=Mississippi|Pennsylvanian=penn|Permian|Triassic|Jurassic|Cretaceous|Tertiary',
  ),
  ...of(
    unit,
    'A rock unit known by the name of the place where it was first described.',
    'Aux Vases|Barlow|False Barlow|Beech Creek|Benoist|Bethel|Blocher|Brereton|Bridgeport|Burlington|Carbondale|Carlinville|Chouteau|Clore|Cypress|Danville|Davis|Decorah|DeKoven|Degonia|Downeys Bluff|Dubuque|Dunleith|Dutch Creek|Eau Claire|Edgewood|Fort Payne|Franconia|Fredonia|Galena|Galesville|Glen Dean|Glenwood|Golconda|Grand Tower|Guttenberg|Hannibal|Hardinsburg|Herrin|Ironton|Jackson|Jordan|Kankakee|Keokuk|Kimmswick|Kinderhook|Kinkaid|Levias|Lingle|Maquoketa|McClosky|Menard|Little Menard|Mount Rorah|Mount Simon=Mt Simon|Nachusa|New Albany|Niagara=niagra=Niagaran|Ohara|Oneota|Paint Creek|Palestine|Piasa|Platteville|Potosi|Prairie du Chien|Quimbys Mill|Renault|Ridenhower|Robinson|Rosiclare|Salem|Saverton|Shakopee|Shoal Creek|Sonora|Spar Mountain|Spechts Ferry|Springfield|St Louis|St Peter=St Peters=St Pete|Ste Genevieve=St Genevieve|Survant|Tar Springs|Tradewater|Trempealeau|Trenton|Ullin|Vienna|Waltersburg|Warsaw|Weiler|West Franklin|Wise Lake|Yankeetown',
  ),
  ...of(
    loose,
    'A unit of loose ground known by the name of the place where it was first described.',
    'Batestown|Equality|Glasford|Grayslake|Haeger|Henry|Lee Center|Lemont|Sangamon|Sankoty|Tiskilwa|Wedron|Yorkville',
  ),
]);
