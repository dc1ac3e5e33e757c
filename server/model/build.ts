import type { Tree } from '../../grammar/tree.ts';
import { headerParts } from './assemble-header.ts';
import {
  addCentralizers,
  addCut,
  addFill,
  addFitting,
  addJoints,
  addScreen,
  addShoe,
  addString,
} from './assemble-string.ts';
import { addObserved, addRate, addReading, addRecovery, addTest } from './assemble-test.ts';
import { type Draft, draftOf, isBare, type Place, take, takeBelow } from './draft.ts';
import { drilledFact, drillingFact, lostFact, samplesFact } from './drilling.ts';
import { fillFacts } from './fills.ts';
import { abandonmentFact, developmentFact, disinfectionFact, hydrofractureFact, pumpFact } from './finishing.ts';
import { holeFact } from './hole.ts';
import type { Abandonment, Drilling, WellLog } from './log.ts';
import { settingOf } from './setting.ts';
import { stratumFact } from './strata.ts';
import { atDepthFact } from './strings.ts';
import { surveyOf } from './survey.ts';
import { fileUnits } from './units.ts';
import { flowingFact, foundFact, levelFact, qualityFact } from './water.ts';

type Add = (draft: Draft, place: Place) => void;

/** A section whose first line may stand beside its keyword. */
const unlessBare =
  (add: Add): Add =>
  (draft, place) => {
    if (!isBare(place)) add(draft, place);
  };

const addHole: Add = (draft, place) => {
  draft.log.hole.push(takeBelow(draft, place, holeFact, 'hole'));
};

const addStratum: Add = (draft, place) => {
  draft.log.strata.push(takeBelow(draft, place, stratumFact, 'strata'));
};

const addFound: Add = (draft, place) => {
  draft.log.water.found.push(takeBelow(draft, place, foundFact, 'water'));
};

/** A bare `drilling` goes on with the one before; one that says something is a head of its own. */
const openDrilling: Add = (draft, place) => {
  if (draft.drilling && isBare(place)) return;
  const head: Drilling = { ...take(draft, place, drillingFact), intervals: [], lost: [], samples: [] };
  draft.log.drilling.push(head);
  draft.drilling = head;
};

const openAbandonment: Add = (draft, place) => {
  if (draft.abandonment && isBare(place)) return;
  const number = draft.log.abandonments.length + 1;
  const head: Abandonment = { ...take(draft, place, abandonmentFact), number, fills: [] };
  draft.log.abandonments.push(head);
  draft.abandonment = head;
};

const addSealed: Add = (draft, place) => {
  const { abandonment } = draft;
  if (!abandonment) return;
  const fill = takeBelow(draft, place, fillFacts.abandonment, 'abandonment');
  abandonment.fills.push({ ...fill, number: abandonment.fills.length + 1 });
};

const parts: ReadonlyMap<string, Add> = new Map<string, Add>([
  ...headerParts,
  ['hole', unlessBare(addHole)],
  ['hole.line', addHole],
  ['strata', unlessBare(addStratum)],
  ['strata.line', addStratum],
  ['drilling', openDrilling],
  ['drilling.line', (draft, place) => draft.drilling?.intervals.push(takeBelow(draft, place, drilledFact, 'drilling'))],
  ['lost', (draft, place) => draft.drilling?.lost.push(takeBelow(draft, place, lostFact, 'lost'))],
  ['samples', (draft, place) => draft.drilling?.samples.push(takeBelow(draft, place, samplesFact, 'samples'))],
  ['casing', addString],
  ['liner', addString],
  ['screen', addScreen],
  ['grout', addFill('grout')],
  ['seal', addFill('seal')],
  ['pack', addFill('pack')],
  ['plug', addFill('plug')],
  ['shoe', addShoe],
  ['centralizers', addCentralizers],
  ['joints', addJoints],
  ['packer', addFitting('packers')],
  ['pitless', addFitting('pitless')],
  ['cut', addCut],
  ['water', unlessBare(addFound)],
  ['water.line', addFound],
  ['level', (draft, place) => draft.log.water.levels.push(take(draft, place, levelFact))],
  ['gas', (draft, place) => draft.log.water.gas.push(take(draft, place, atDepthFact))],
  ['quality', (draft, place) => draft.log.water.quality.push(take(draft, place, qualityFact))],
  ['flowing', (draft, place) => draft.log.water.flowing.push(take(draft, place, flowingFact))],
  ['test', addTest],
  ['test.line', addReading],
  ['rate', addRate],
  ['recovery', addRecovery],
  ['observed', addObserved],
  ['abandonment', openAbandonment],
  ['abandonment.line', addSealed],
  ['disinfection', (draft, place) => draft.log.disinfections.push(take(draft, place, disinfectionFact))],
  ['development', (draft, place) => draft.log.developments.push(take(draft, place, developmentFact))],
  ['hydrofracture', (draft, place) => draft.log.hydrofractures.push(take(draft, place, hydrofractureFact))],
  ['pump', (draft, place) => draft.log.pumps.push(take(draft, place, pumpFact))],
  ['cap', (draft, place) => draft.log.caps.push(take(draft, place, atDepthFact))],
]);

/** The typed log of a tree. Values that the notes lack are null; nothing is made up, and nothing throws. */
export function buildLog(tree: Tree): WellLog {
  const units = fileUnits(tree);
  const draft = draftOf(units, surveyOf(tree, settingOf(units, 'bgs')));
  tree.lines.forEach((line, number) => {
    if (line.row !== null) parts.get(line.row)?.(draft, { line, number });
  });
  return draft.log;
}
