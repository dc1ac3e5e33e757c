import { abandonmentFigures } from './abandonment.ts';
import { casingFigures } from './casing.ts';
import { dateFigures } from './dates.ts';
import { disinfectionFigures } from './disinfection.ts';
import { drillingFigures } from './drilling.ts';
import type { Family } from './family.ts';
import { fillMixFigures } from './fill-mix.ts';
import { fillNeedFigures } from './fill-needs.ts';
import { fillPressureFigures } from './fill-pressure.ts';
import { fillVolumeFigures } from './fill-volumes.ts';
import { holeFigures } from './hole.ts';
import { placeFigures } from './place.ts';
import { screenFigures } from './screens.ts';
import { stringLoadFigures } from './string-loads.ts';
import { testFigures } from './tests.ts';
import { waterFigures } from './water.ts';
import { shutOffFigures } from './water-shut-off.ts';

/** Every family of figures, in the order in which the record shows them. */
export const families: readonly Family[] = [
  placeFigures,
  dateFigures,
  holeFigures,
  casingFigures,
  stringLoadFigures,
  fillVolumeFigures,
  fillMixFigures,
  fillNeedFigures,
  fillPressureFigures,
  screenFigures,
  drillingFigures,
  waterFigures,
  shutOffFigures,
  testFigures,
  disinfectionFigures,
  abandonmentFigures,
];
