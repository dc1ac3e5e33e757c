import { parseLines, reparse } from '../../grammar/index.ts';
import { buildLog } from '../model/index.ts';
import { limitsFor } from '../packs/index.ts';
import { noOwnPacks } from '../packs/own-packs.ts';
import { noFacts } from '../packs/when.ts';
import { computeRecord } from '../record/index.ts';
import { ruleContext } from '../rules/context.ts';
import { runRules } from '../rules/engine.ts';
import { analysisOf } from './analysis.ts';
import type { Stages } from './stages.ts';

export type { Analysis, LineEdit } from './analysis.ts';
export type { Settings, Snapshot } from './snapshot.ts';

const stages: Stages = {
  parse: parseLines,
  reparse,
  build: buildLog,
  limits: (packs, { packs: own }) => limitsFor(packs, noFacts, own).limits,
  record: computeRecord,
  rules: (known, settings) =>
    runRules(ruleContext({ ...known, today: settings.today, ownPacks: settings.own ?? noOwnPacks }), settings),
};

export const { analyse, update } = analysisOf(stages);
