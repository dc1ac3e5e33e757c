import type { Formula, Outcome } from '../calculations/formula.ts';
import type { FileUnits, Span } from '../model/log.ts';
import { type Shown, show, siUnitOf } from './display.ts';
import { type Digits, decimals, significant } from './format-number.ts';
import type { Ingredient } from './ingredient.ts';
import type { Figure } from './record.ts';

/** A line of the log that a figure is shown at. */
export interface At {
  readonly line: number;
  readonly span: Span;
}

/**
 * What a figure is made of. `compute` gets the values of the ingredients in their order, and runs only when none is
 * missing. `digits`: as many as the least sure ingredient has (`product`), as many decimals as the finest (`sum`).
 */
export interface Recipe {
  readonly id: string;
  readonly title: string;
  readonly shown: Shown;
  readonly formula: Formula;
  readonly ingredients: readonly Ingredient[];
  readonly compute: (...values: number[]) => Outcome | number;
  readonly at: At | null;
  readonly digits?: 'product' | 'sum' | Digits;
  /** The unit that the notes used for this very figure. */
  readonly preferred?: string | null;
  readonly caution?: string | null;
}

const fewestDigits = 3;
const mostDigits = 4;

/** Computes one figure, or says which facts it waits for. */
export function figureOf(recipe: Recipe, units: FileUnits): Figure {
  const { ingredients, formula } = recipe;
  const missing = ingredients.flatMap((each) => each.waitsFor);
  const outcome = missing.length > 0 ? null : outcomeOf(recipe);
  const value = outcome?.ok === true && Number.isFinite(outcome.value) ? outcome.value : null;
  const shown = value === null ? nothing : show(value, recipe.shown, units, digitsOf(recipe, units), recipe.preferred);
  return {
    id: recipe.id,
    title: recipe.title,
    value,
    unit: siUnitOf(recipe.shown),
    text: shown.text,
    otherText: shown.otherText,
    formula: formula.text,
    source: formula.source,
    inputs: ingredients.flatMap((each) => each.inputs),
    lines: linesOf(recipe),
    span: recipe.at?.span ?? null,
    waitsFor: waits(missing, outcome, value),
    doubtful: ingredients.some((each) => each.doubtful),
    caution: recipe.caution === undefined ? formula.caution : recipe.caution,
  };
}

const nothing = { text: '?', otherText: '' };

function outcomeOf({ ingredients, compute }: Recipe): Outcome {
  const result = compute(...ingredients.map((each) => each.value ?? Number.NaN));
  return typeof result === 'number' ? { ok: true, value: result } : result;
}

function waits(missing: readonly string[], outcome: Outcome | null, value: number | null): string[] {
  if (missing.length > 0) return [...new Set(missing)];
  if (value !== null) return [];
  return [`other figures (${outcome?.ok === false ? outcome.why : 'these give no number'})`];
}

function linesOf({ at, ingredients }: Recipe): number[] {
  const lines = new Set<number>();
  if (at) lines.add(at.line);
  for (const { inputs } of ingredients) for (const { line } of inputs) if (line !== null) lines.add(line);
  return [...lines];
}

function digitsOf({ digits = 'product', ingredients, shown, preferred }: Recipe, units: FileUnits): Digits {
  if (typeof digits === 'object') return digits;
  if (digits === 'product') return significant(leastSignificant(ingredients));
  const unit = preferred ?? (shown === 'diameter' ? units.diameter : units.depth);
  const sameUnit = ingredients.every((each) => each.unit === unit && each.decimals !== null);
  if (!sameUnit) return significant(mostDigits);
  return decimals(ingredients.reduce((most, each) => Math.max(most, each.decimals ?? 0), 0));
}

function leastSignificant(ingredients: readonly Ingredient[]): number {
  let least: number | null = null;
  for (const { significant: count } of ingredients) if (count !== null) least = Math.min(least ?? count, count);
  return Math.min(mostDigits, Math.max(fewestDigits, least ?? fewestDigits));
}
