import { about as ofGaps, widestGap } from '../../calculations/casing/centralizer-gaps.ts';
import { jointsTally, about as ofJoints } from '../../calculations/casing/joints-tally.ts';
import { type Formula, known, type Outcome, refused } from '../../calculations/formula.ts';
import type { FileUnits, PipeString } from '../../model/log.ts';
import { figureOf } from '../figure.ts';
import { nameOf } from '../geometry/strings.ts';
import { depthOf, type Ingredient, lengthOf, measured, together } from '../ingredient.ts';
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

/** `casing.N.length`, `.joints-length`, `.centralizers.widest-gap`. */
export const casingFigures: Family = ({ log }) => log.strings.flatMap((string) => figuresOf(string, log.units));

function figuresOf(string: PipeString, units: FileUnits): Figure[] {
  const figures = [lengthFigure(string, units)];
  if (string.joints) figures.push(jointsFigure(string, units));
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

function jointsFigure(string: PipeString, units: FileUnits): Figure {
  const { joints } = string;
  const lengths = (joints?.lengths ?? []).map((joint, index) => jointIngredient(string, joint, index));
  return figureOf(
    {
      id: `casing.${string.number}.joints-length`,
      title: `joints of ${nameOf(string)}, added up`,
      shown: 'length',
      formula: ofJoints,
      ingredients: [together(lengths.length > 0 ? lengths : [noJoints(string)], () => tallyOf(lengths))],
      compute: (total) => total,
      digits: 'sum',
      at: joints ?? string,
    },
    units,
  );
}

const tallyOf = (lengths: readonly Ingredient[]): number =>
  jointsTally(
    lengths.map((length) => length.value ?? 0),
    0,
  ).total;

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
  if (!gaps) return refused('the spacing of the centralizers is not above zero');
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
