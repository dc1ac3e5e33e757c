import { line, nothing, type Outcome } from '../draft.ts';
import { lengthText } from '../lengths.ts';
import { lengthsOf, notTaken, type Statement, termsIn, textsOf, wordsOf } from '../statement.ts';

const pumpIgnored = /^(?:pump|set|installed|depth|submersible-pump|put|new|hung|in)\.?:?$/i;

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
  if (said.length === 0) return { ...nothing, why: ['nothing about the pump is told'] };
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
