import * as l10n from '@vscode/l10n';
import { type DraftItem, line, type Outcome } from '../draft.ts';
import { type Length, lengthText } from '../lengths.ts';
import type { DepthUnit } from '../notes.ts';
import {
  after,
  before,
  intervalOf,
  lengthsOf,
  notTaken,
  ofWork,
  type Statement,
  termsIn,
  textsOf,
  wordsOf,
} from '../statement.ts';

/** What the next lines must know of the string that hangs above them. */
export interface StringSoFar {
  /** Its bottom in the notation, doubts and all. */
  readonly bottom: string;
}

const ignored =
  /^(?:csg|csng|casing|casings|cased|pipe|liner|set|ran|run|installed|put|drove|landed|wall|nominal|dia|diam|diameter|bottom|top|stick|stickup|stick-up|above|ground|grade|surface|length|long|total|od|o\.d\.|hole|joint|joints|string|inner|outer|protective|w|x|pc|pcs|ags|wt|drive|shoe)\.?:?$/i;

interface Roles {
  readonly top: Length | null;
  readonly bottom: Length | null;
  /** True where the notes tell how much pipe there is, not where it ends. */
  readonly isAmount: boolean;
  readonly size: string | null;
  readonly bareSize: Length | null;
  readonly why: readonly string[];
  readonly depths: readonly Length[];
}

const isSize = ({ unit }: Length): boolean => unit === 'in' || unit === 'mm' || unit === 'cm';

const stickUp = /stick ?-?up|above (?:ground|grade|surface|land)|\bags\b/i;

function isStickUp(statement: Statement, length: Length): boolean {
  const behind = after(statement, length).slice(0, 24);
  const ahead = before(statement, length).slice(-14);
  return (
    length.plus ||
    /^ ?(?:of )?(?:stick ?-?up|above (?:ground|grade|surface|land)|ags\b)/i.test(behind) ||
    stickUp.test(ahead)
  );
}

const endsAt = (statement: Statement, length: Length): boolean =>
  /(?:\bto|\bat|@|\bset|\btd|\bdepth|\bbottom) ?(?:of )?(?:at |to )?$/i.test(before(statement, length)) &&
  !/^ ?(?:of|length)\b/i.test(after(statement, length)) &&
  !/\b(?:set|ran|run) $/i.test(before(statement, length));

/** `20 ft 6 in csg`: twenty feet of six-inch pipe, or twenty and a half feet of pipe. */
function apart(length: Length): { depth: Length; size: string } {
  const [, feet = '0', inches = '0'] = /^(\d+)'(.*)"$/.exec(length.figure) ?? [];
  return {
    depth: { ...length, figure: feet, value: Number(feet), unitText: 'ft', doubtful: true },
    size: `${inches}? in`,
  };
}

const isWall = (statement: Statement, length: Length): boolean => /^ ?wall\b/i.test(after(statement, length));

interface Sizes {
  readonly size: string | null;
  /** A size without its unit, of which the file's unit says what it is. */
  readonly bareSize: Length | null;
  /** The lengths that are no sizes. */
  readonly rest: readonly Length[];
}

function sizesOf(statement: Statement, lengths: readonly Length[], hasDepths: boolean): Sizes {
  const wall = lengths.find((each) => isWall(statement, each));
  const pipe = lengths.find((each) => each !== wall && isSize(each));
  const rest = lengths.filter((each) => each !== wall && !isSize(each));
  const [sized] = textsOf(statement, 'size');
  const size = sized ?? (pipe ? `${lengthText(pipe)}${wall ? ` x ${lengthText(wall)}` : ''}` : null);
  const bareSize = size === null ? rest.find(({ unit }, at) => unit === null && (hasDepths || at > 0)) : undefined;
  return { size, bareSize: bareSize ?? null, rest: rest.filter((each) => each !== bareSize) };
}

function rolesOf(statement: Statement): Roles {
  const interval = intervalOf(statement);
  const lengths = lengthsOf(statement);
  const top = lengths.find((each) => isStickUp(statement, each)) ?? null;
  const others = lengths.filter((each) => each !== top);
  const { size, bareSize, rest } = sizesOf(statement, others, interval !== null);
  const none = { top, bottom: null, isAmount: false, size, bareSize, why: [], depths: [] };
  if (interval) return { ...none, top: interval.from, bottom: interval.to, depths: [interval.from, interval.to] };
  const [first] = rest;
  const depths = [...(top ? [top] : []), ...(first ? [first] : [])];
  if (first === undefined) return { ...none, depths };
  if (first.parted && size === null) {
    const { depth, size: doubted } = apart(first);
    const written = statement.text.slice(first.start, first.end);
    const says = l10n.t('"{0}" could be a length of pipe, or a length and a size; both are marked ?', written);
    return { ...none, bottom: depth, isAmount: true, size: doubted, why: [says], depths };
  }
  if (endsAt(statement, first)) return { ...none, bottom: first, depths };
  if (first.doubtful) return { ...none, bottom: first, depths };
  return { ...none, bottom: { ...first, doubtful: true }, isAmount: true, depths };
}

const likely: Readonly<Record<DepthUnit, readonly [least: number, most: number, unit: string]>> = {
  ft: [1, 60, 'in'],
  m: [25, 1500, 'mm'],
};

const bareSizeText = ({ figure, value }: Length, units: DepthUnit | null): string => {
  const [least, most, unit] = likely[units ?? 'ft'];
  return value >= least && value <= most ? `${figure} ${unit}` : `${figure}?`;
};

const amountDoubt = (): string =>
  l10n.t('the notes tell how much casing, not where its foot stands; its bottom is marked ?');

/** `casing ? - 20 ft steel 6 in driven` and what else the same words say. */
export function casingSet(given: Statement): Outcome & { readonly string: StringSoFar } {
  const statement = ofWork(given);
  const roles = rolesOf(statement);
  const keyword = /\bliner\b/i.test(statement.text) ? 'liner' : 'casing';
  const { terms, left } = termsIn(wordsOf(statement), ['casing-material', 'joint-type', 'casing-state'], ignored);
  const named = (list: string) => terms.filter((term) => term.list === list).map(({ name }) => name);
  const { top, bottom, isAmount } = roles;
  const amountAndTop = isAmount && top !== null;
  const topText =
    top === null
      ? '?'
      : lengthText({ ...top, plus: top.plus || (isStickUp(statement, top) && intervalOf(statement) === null) });
  const bottomText = bottom === null || amountAndTop ? '?' : lengthText(bottom);
  const [perforated] = textsOfSecond(statement);
  const text = (units: DepthUnit | null): string => {
    const size = roles.size ?? (roles.bareSize ? bareSizeText(roles.bareSize, units) : null);
    const said = [
      ...named('casing-material').slice(0, 1),
      ...(size === null ? [] : [size]),
      ...textsOf(statement, 'schedule'),
      ...named('joint-type').slice(0, 1),
      ...named('casing-state').filter((name) => name !== 'perforated' && name !== 'slotted'),
      ...(perforated === undefined ? [] : [`perforated ${perforated}`]),
      ...textsOf(statement, 'date').slice(0, 1),
    ];
    return `${keyword} ${topText} - ${bottomText}${said.length === 0 ? ' ?' : `, ${said.join(', ')}`}`;
  };
  const doubted = lengthsOf(given).length < lengthsOf(statement).length && intervalOf(given)?.to.parted === true;
  const why = [
    ...roles.why,
    ...(doubted ? [l10n.t('its inches could belong to the depth or be the size; both are marked ?')] : []),
    ...(isAmount && roles.why.length === 0 ? [amountDoubt()] : []),
    ...(bottom === null ? [l10n.t('its depth is not told')] : []),
    ...notTaken([...left, ...textsOf(statement, 'share', 'rate', 'mass', 'open-date')]),
  ];
  const items: DraftItem[] = [line('casing', text)];
  const hasShoe = /\b(?:drive|drv|float|guide|casing)? ?shoe\b/i.exec(statement.text);
  const string = { bottom: bottomText };
  if (hasShoe) items.push(line('casing', shoeText(hasShoe[0], bottomText)));
  return { items, why, depths: roles.depths, openDate: null, string };
}

/** The second interval of a string: where it is perforated. */
const textsOfSecond = ({ tokens, text }: Statement): string[] =>
  tokens.flatMap((token, at) =>
    token.kind === 'interval' &&
    tokens.slice(0, at).some(({ kind }) => kind === 'interval') &&
    /\b(?:perf\w*|slot\w*)\.?(?: from)? ?$/i.test(text.slice(0, token.start))
      ? [token.text]
      : [],
  );

function shoeText(words: string, depth: string): string {
  const { terms } = termsIn(words.trim(), ['shoe-kind'], /^shoe$/i);
  return ['shoe', depth, ...terms.slice(0, 1).map(({ name }) => name)].join(' ');
}

/** `shoe 20 ft drive shoe`, at the foot of the string above where no depth is given. */
export function casingShoe(statement: Statement, above: StringSoFar | null): Outcome {
  const [length] = lengthsOf(statement);
  const words = wordsOf(statement);
  const depth = length ? lengthText(length) : (above?.bottom ?? '?');
  const { left } = termsIn(words, ['shoe-kind'], /^(?:shoe|w|with|on|bottom|casing|used|new)$/i);
  const [kind] = /\b(?:drive|drv|float|guide|ring|cement|grout)\b/i.exec(words) ?? [''];
  const full = kind.toLowerCase() === 'drv' ? 'drive' : kind;
  return {
    items: [line('casing', shoeText(`${full} shoe`, depth))],
    why: [
      ...(depth === '?' ? [l10n.t('its depth is not told')] : []),
      ...notTaken(left.filter((each) => !/^(?:drv|drive)$/i.test(each))),
    ],
    depths: length ? [length] : [],
    openDate: null,
  };
}
