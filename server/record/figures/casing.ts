import { about as ofGaps, widestGap } from '../../calculations/casing/centralizer-gaps.ts';
import { jointsTally, about as ofJoints } from '../../calculations/casing/joints-tally.ts';
import { type Formula, known, type Outcome, refused } from '../../calculations/formula.ts';
import type { FileUnits, PipeString, WellLog } from '../../model/log.ts';
import { figureOf, type Recipe } from '../figure.ts';
import { decimals } from '../format-number.ts';
import { nameOf } from '../geometry/strings.ts';
import { depthOf, type Ingredient, lengthOf, measured, ofFigure, together, worked } from '../ingredient.ts';
import { linesInDoubt } from '../lines-in-doubt.ts';
import type { Figure } from '../record.ts';
import { footForGaps, gapsOf } from '../strings/centralizers.ts';
import type { Family } from './family.ts';

const ofLength: Formula = {
  name: 'length of a string',
  text: 'L = bottom - top, the part above ground included, m',
  source: 'subtraction',
  range: null,
  caution: null,
};

/** `casing.N.length`, `.joints-length`, `.joints-difference`, `.connections`, `.centralizers.widest-gap`. */
export const casingFigures: Family = ({ log }) => log.strings.flatMap((string) => figuresOf(string, log));

function figuresOf(string: PipeString, log: WellLog): Figure[] {
  const { units } = log;
  const length = lengthFigure(string, units);
  const figures = [length];
  if (string.joints) figures.push(...jointsFigures(string, length, log));
  if (string.centralizers) figures.push(gapFigure(string, units));
  return figures;
}

export const lengthFigure = (string: PipeString, units: FileUnits): Figure =>
  figureOf(
    {
      id: `casing.${string.number}.length`,
      title: `length of ${nameOf(string)}`,
      shown: 'length',
      formula: ofLength,
      ingredients: [lengthOf(nameOf(string), string.interval, string.line, nameOf(string))],
      compute: (length) => length,
      digits: 'sum',
      at: string,
    },
    units,
  );

/** The joints added up, their difference from the length of the string, and how many times they meet. */
function jointsFigures(string: PipeString, length: Figure, log: WellLog): Figure[] {
  const { units } = log;
  const doubtful = linesInDoubt(log).has(string.joints?.line ?? string.line);
  const joints = string.joints?.lengths ?? [];
  const each = joints.map((joint, index) => jointIngredient(string, joint, index));
  const all = { ...together(each.length > 0 ? each : [noJoints(string)], () => tallyOf(joints).total), doubtful };
  const common = { shown: 'length', formula: ofJoints, digits: 'sum', at: string.joints ?? string } as const;
  const total = figureOf(
    {
      ...common,
      id: `casing.${string.number}.joints-length`,
      title: `joints of ${nameOf(string)}, added up`,
      ingredients: [all],
      compute: (metres) => metres,
    },
    units,
  );
  const difference: Recipe = {
    ...common,
    id: `casing.${string.number}.joints-difference`,
    title: `joints of ${nameOf(string)}, longer than the string by`,
    ingredients: [
      { ...ofFigure('joints, added up', total), decimals: all.decimals, unit: all.unit },
      ofFigure(`length of ${nameOf(string)}`, length),
    ],
    compute: (metres, ofString) => metres - ofString,
    digits: all.decimals === null ? 'sum' : decimals(all.decimals),
  };
  return [total, figureOf(difference, units), connectionsFigure(string, doubtful, units)];
}

const tallyOf = (joints: readonly Joint[]) =>
  jointsTally(joints.map(({ count, length }) => ({ count, length: length.value ?? 0 })));

/** Places where two joints meet: welds, where the string is welded. */
function connectionsFigure(string: PipeString, doubtful: boolean, units: FileUnits): Figure {
  const joints = string.joints?.lengths ?? [];
  const line = string.joints?.line ?? string.line;
  const counts = joints.map(({ count }, index) =>
    worked(`joints ${index + 1}`, count, 'ratio', units, { line, doubtful }),
  );
  const welds = string.joint?.id === 'welded' ? 'welds' : 'places where joints meet';
  return figureOf(
    {
      id: `casing.${string.number}.connections`,
      title: `${welds}, ${nameOf(string)}`,
      shown: 'ratio',
      formula: ofJoints,
      ingredients: counts.length > 0 ? [together(counts, () => tallyOf(joints).connections)] : [noJoints(string)],
      compute: (connections) => connections,
      digits: decimals(0),
      at: string.joints ?? string,
    },
    units,
  );
}

type Joint = NonNullable<PipeString['joints']>['lengths'][number];

/** One joint, or several of one length together. */
function jointIngredient(string: PipeString, { count, length }: Joint, index: number): Ingredient {
  const line = string.joints?.line ?? string.line;
  const one = depthOf(`joint ${index + 1}`, length, line, `the length of joint ${index + 1}`);
  if (count === 1) return one;
  const value = one.value === null ? null : count * one.value;
  return { ...one, value, inputs: one.inputs.map((input) => ({ ...input, name: `${count} joints of` })) };
}

const noJoints = (string: PipeString): Ingredient =>
  measured('joints', null, 'm', string.joints?.line ?? string.line, 'the lengths of the joints');

function gapFigure(string: PipeString, units: FileUnits): Figure {
  const at = string.centralizers ?? string;
  const foot = footForGaps(string);
  return figureOf(
    {
      id: `casing.${string.number}.centralizers.widest-gap`,
      title: `widest gap between centralizers of ${nameOf(string)}`,
      shown: 'length',
      formula: ofGaps,
      ingredients: [
        depthOf('foot', foot, string.shoe?.line ?? string.line, `the foot of ${nameOf(string)}`),
        topIngredient(string),
        together(centralizerIngredients(string), () => 0),
      ],
      compute: () => widestOf(string),
      digits: 'sum',
      at,
    },
    units,
  );
}

/** Gaps end at the ground, so the decimals of a top above it do not show in them. */
function topIngredient(string: PipeString): Ingredient {
  const top = depthOf('top', string.interval.top, string.line, `the top of ${nameOf(string)}`);
  return (top.value ?? 1) <= 0 ? { ...top, decimals: 0 } : top;
}

function widestOf(string: PipeString): Outcome {
  const gaps = gapsOf(string);
  if (!gaps) return refused('the spacing of the centralizers is not above zero, or gives more than 10,000 of them');
  const widest = widestGap(gaps.map((gap) => ({ ...gap, length: gap.bottom - gap.top })));
  return widest.ok ? known(widest.value.length) : widest;
}

function centralizerIngredients({ centralizers, line }: PipeString): Ingredient[] {
  if (!centralizers) return [];
  const positions = centralizers.positions.map((depth, index) =>
    depthOf(`centralizer ${index + 1}`, depth, centralizers.line, `the depth of centralizer ${index + 1}`),
  );
  if (centralizers.every) {
    positions.push(depthOf('every', centralizers.every, line, 'the spacing of the centralizers'));
  }
  if (positions.length > 0) return positions;
  return [measured('centralizers', null, 'm', centralizers.line, 'the depths of the centralizers')];
}
