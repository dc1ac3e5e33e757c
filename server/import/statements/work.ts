import * as l10n from '@vscode/l10n';
import { line, nothing, type Outcome } from '../draft.ts';
import { lengthText } from '../lengths.ts';
import { intervalOf, lengthsOf, notTaken, type Statement, termsIn, textsOf, wordsOf } from '../statement.ts';

const pumpIgnored = /^(?:pump|set|installed|depth|submersible-pump|put|new|hung|in)\.?:?$/i;

import { intervalText } from '../tokens.ts';

/** `pump submersible 0.5 hp, set 80` */
export function pumpSet(statement: Statement): Outcome {
  const lengths = lengthsOf(statement);
  const [depth, ...more] = lengths;
  const { terms, left } = termsIn(wordsOf(statement), ['pump-kind'], pumpIgnored);
  const said = [
    ...terms.map(({ name }) => name).slice(0, 1),
    ...textsOf(statement, 'power').slice(0, 1),
    ...textsOf(statement, 'rate').slice(0, 1),
    ...(depth ? [`set ${lengthText(depth)}`] : []),
  ];
  const why = notTaken([...left, ...more.map((each) => lengthText(each))]);
  if (said.length === 0) return { ...nothing, why: [l10n.t('nothing about the pump is told')] };
  return { items: [line('work', `pump ${said.join(', ')}`)], why, depths: depth ? [depth] : [], openDate: null };
}

const treatIgnored =
  /^(?:chlorinated|chlorine|chlorination|disinfected|disinfection|treated|well|overnight|left|contact|stood)\.?:?$/i;

/** `disinfection 100 ppm, 12 h` */
export function disinfected(statement: Statement): Outcome {
  const { terms, left } = termsIn(wordsOf(statement), ['disinfectant'], treatIgnored);
  const said = [
    ...textsOf(statement, 'strength').slice(0, 1),
    ...textsOf(statement, 'time').slice(0, 1),
    ...terms.map(({ name }) => name).slice(0, 1),
    ...textsOf(statement, 'volume', 'mass').slice(0, 1),
    ...textsOf(statement, 'date').slice(0, 1),
  ];
  return { ...nothing, items: [line('work', `disinfection ${said.join(', ') || '?'}`)], why: notTaken(left) };
}

const developIgnored = /^(?:developed|development|develop|well|by|until|till|ran|running|water)\.?:?$/i;

/** `development air, 3 h` */
export function developed(statement: Statement): Outcome {
  const { terms, left } = termsIn(wordsOf(statement), ['development-method'], developIgnored);
  const said = [
    ...terms.map(({ name }) => name),
    ...textsOf(statement, 'time').slice(0, 1),
    ...textsOf(statement, 'rate').slice(0, 1),
    ...textsOf(statement, 'date').slice(0, 1),
  ];
  return { ...nothing, items: [line('work', `development ${said.join(', ') || '?'}`)], why: notTaken(left) };
}

const fractureIgnored = /^(?:hydro-?|hydro-?frac\w*|frac\w*|yield|well|rate)\.?:?$/i;

/** `hydrofracture 200 - 400, 2000 psi, after 3 gpm` */
export function hydrofractured(statement: Statement): Outcome {
  const interval = intervalOf(statement);
  const rates = textsOf(statement, 'rate');
  const { left } = termsIn(wordsOf(statement), [], fractureIgnored);
  const labels = rates.length === 2 ? ['before', 'after'] : [/\bbefore\b/i.test(statement.text) ? 'before' : 'after'];
  const said = [
    interval ? intervalText(interval) : '? - ?',
    ...textsOf(statement, 'pressure').slice(0, 1),
    ...rates.slice(0, 2).map((rate, at) => `${labels[at]} ${rate}`),
  ];
  const why = [
    ...(interval ? [] : [l10n.t('its depths are not told')]),
    ...notTaken(left.filter((each) => !/^(?:before|after)$/i.test(each))),
  ];
  return {
    items: [line('work', `hydrofracture ${said.join(', ')}`)],
    why,
    depths: interval ? [interval.from, interval.to] : [],
    openDate: null,
  };
}
