import * as l10n from '@vscode/l10n';
import { type DraftItem, line, type Outcome } from '../draft.ts';
import { type Length, lengthsIn, lengthText } from '../lengths.ts';
import { intervalOf, lengthsOf, notTaken, ofWork, type Statement, termsIn, wordsOf } from '../statement.ts';
import { intervalText } from '../tokens.ts';

const ignored =
  /^(?:hole|holes|borehole|bore|bored|bit|drilled|drill|dia|diam|diameter|size|od|finished|open|then|with|used|method)\.?:?$/i;

const isSize = ({ unit }: Length): boolean => unit === 'in' || unit === 'mm' || unit === 'cm';

/** `bit size 8 3/4 to 45`: a size without its unit, and how deep it went. */
const bareSize =
  /^(?:bit|hole)(?: size| dia\w*)?:? (?<size>\d+(?:[- ]\d+\/\d+|\.\d+)?) to (?<depth>\d+(?:\.\d+)? ?(?:'|ft|feet|m)?)$/i;

function bitByNumber(statement: Statement, above: string | null): HoleOutcome | null {
  const { size, depth } = bareSize.exec(statement.text)?.groups ?? {};
  const [length] = depth === undefined ? [] : lengthsIn(depth);
  if (size === undefined || length === undefined) return null;
  const text = `${above ?? '0'} - ${lengthText(length)} ${size.replace(' ', '-')}`;
  return { items: [line('hole', text)], why: [], depths: [length], openDate: null, bottom: lengthText(length) };
}

type HoleOutcome = Outcome & { readonly bottom: string | null };

/** `0 - 40 10"`, from the bottom of the hole so far where only its end is told. */
export function holeDrilled(given: Statement, above: string | null): HoleOutcome {
  const statement = ofWork(given);
  const byNumber = bitByNumber(statement, above);
  if (byNumber !== null) return byNumber;
  const interval = intervalOf(statement);
  const lengths = lengthsOf(statement);
  const size = lengths.find(isSize);
  const end = interval?.to ?? lengths.find((each) => !isSize(each)) ?? null;
  const { terms, left } = termsIn(wordsOf(statement), ['hole-method'], ignored);
  const depth = interval ? intervalText(interval) : `${above ?? '0'} - ${end ? lengthText(end) : '?'}`;
  const said = [...(size ? [lengthText(size)] : ['?']), ...terms.map(({ name }) => name).slice(0, 1)];
  const items: DraftItem[] = [line('hole', `${depth}, ${said.join(', ')}`)];
  const doubted = lengthsOf(given).length < lengths.length && (size?.doubtful ?? false);
  const why = [
    ...(doubted ? [l10n.t('its inches could belong to the depth or be the diameter; both are marked ?')] : []),
    ...(end ? [] : [l10n.t('its depth is not told')]),
    ...(size ? [] : [l10n.t('its diameter is not told')]),
    ...notTaken(left),
  ];
  const depths = interval ? [interval.from, interval.to] : end ? [end] : [];
  return { items, why, depths, openDate: null, bottom: end ? lengthText(end) : above };
}

/** The total depth. */
export function totalDepth(statement: Statement): Outcome {
  const [depth] = lengthsOf(statement);
  if (depth === undefined)
    return { items: [], why: [l10n.t('the total depth is not told')], depths: [], openDate: null };
  return { items: [{ kind: 'total', depth }], why: [], depths: [depth], openDate: null };
}
