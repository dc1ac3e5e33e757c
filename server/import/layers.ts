import * as l10n from '@vscode/l10n';
import { type Described, describe } from './describe.ts';
import { afterDitto, repeated } from './ditto.ts';
import type { DraftLayer } from './draft.ts';
import { inMetres, type Length, lengthText } from './lengths.ts';
import type { DepthUnit, LayerValues } from './notes.ts';

/** A layer as a line of `strata`. */
export interface Layer {
  readonly text: string;
  /** The same line with a description that is known to be read: what may be wrong with it is its depths and its remark. */
  readonly plain: string;
  readonly why: readonly string[];
  /** Depth of its top in metres, or null where it is not known. */
  readonly top: number | null;
}

export interface Layers {
  readonly layers: readonly Layer[];
  /** True where the notes list the ground from the bottom up. */
  readonly bottomUp: boolean;
  /** Index of a layer whose single figure could be several things; null where none is open. */
  readonly openAt: number | null;
}

interface Span {
  readonly from: string;
  readonly to: string;
  readonly top: number | null;
  readonly why: readonly string[];
}

const noSpan: Span = { from: '?', to: '?', top: null, why: [] };

/** What the single figures of a list can be: all that agrees with their order. */
function singlesAre(values: readonly number[]): LayerValues | null {
  const pairs = values.slice(1).map((value, at) => value - (values[at] ?? 0));
  const rises = pairs.some((step) => step > 0);
  const falls = pairs.some((step) => step < 0);
  return pairs.some((step) => step === 0) || (rises && falls) ? 'thickness' : null;
}

const decimalsOf = ({ figure }: Length): number => /\.(\d+)$/.exec(figure)?.[1]?.length ?? 0;

const isPlain = ({ figure }: Length): boolean => /^\d+(?:\.\d+)?$/.test(figure);

const plainLength = (value: number, decimals: number, like: Length): Length => ({
  ...like,
  value,
  figure: String(Number(value.toFixed(decimals))),
  plus: false,
});

/** Feet and inches of a length in feet, to the 1/64 of an inch that the notes may have. */
function feetAndInches(feet: number, like: Length): Length | null {
  const parts = Math.round(feet * 12 * 64);
  const whole = Math.floor(parts / 768);
  const rest = parts - whole * 768;
  const inches = Math.floor(rest / 64);
  let [over, under] = [rest % 64, 64];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const fraction = over === 0 ? '' : `${inches > 0 ? '-' : ''}${over}/${under}`;
  const inchText = `${inches > 0 || over === 0 ? inches : ''}${fraction}`;
  const figure = rest === 0 ? String(whole) : `${whole}'${inchText}"`;
  return { ...like, value: feet, unit: 'ft', figure, unitText: rest === 0 ? "'" : '', plus: false, parted: false };
}

/** The base of a layer of this thickness below `top`; null where the two have no common unit. */
function below(top: Length | null, thickness: Length): Length | null {
  const about = thickness.about || (top?.about ?? false);
  const doubtful = thickness.doubtful || (top?.doubtful ?? false);
  const marks = { about, doubtful };
  if (top === null) return { ...thickness, ...marks };
  if (top.unit === thickness.unit && isPlain(top) && isPlain(thickness)) {
    const decimals = Math.max(decimalsOf(top), decimalsOf(thickness));
    return { ...plainLength(top.value + thickness.value, decimals, thickness), ...marks };
  }
  const inFeet = ({ unit, value }: Length): number | null =>
    unit === 'ft' ? value : unit === 'in' ? value / 12 : null;
  const [a, b] = [inFeet(top), inFeet(thickness)];
  const sum = a === null || b === null ? null : feetAndInches(a + b, thickness);
  return sum && { ...sum, ...marks };
}

interface Going {
  /** The base of the layer above; null above the first, `'lost'` where it is not known. */
  base: Length | null | 'lost';
}

const topText = ({ base }: Going): string => (base === null ? '0' : base === 'lost' ? '?' : lengthText(base));

function onTo(going: Going, base: Length, bare: DepthUnit): Span {
  const top = going.base === null ? 0 : going.base === 'lost' ? null : inMetres(going.base, bare);
  const rises = top !== null && inMetres(base, bare) < top;
  const span: Span = {
    from: topText(going),
    to: lengthText(base, base.doubtful || rises),
    top,
    why: rises ? [l10n.t('its base lies above the base of the layer before; it is marked ?')] : [],
  };
  going.base = base;
  return span;
}

function withThickness(going: Going, thickness: Length, bare: DepthUnit): Span {
  const base = going.base === 'lost' ? null : below(going.base, thickness);
  if (base !== null) return onTo(going, base, bare);
  const span: Span = {
    ...noSpan,
    from: topText(going),
    why: [l10n.t('its base is not known: the thickness stands on a depth that is not, or in another unit')],
  };
  going.base = 'lost';
  return span;
}

function whole(going: Going, from: Length, to: Length, bare: DepthUnit, swapAll: boolean): Span {
  const [a, b] = [inMetres(from, bare, to), inMetres(to, bare, from)];
  const isReversed = a > b;
  const [upper, lower] = isReversed ? [to, from] : [from, to];
  const doubt = isReversed && !swapAll;
  going.base =
    lower.unit === null && upper.unit !== null && isReversed
      ? { ...lower, unit: upper.unit, unitText: upper.unitText }
      : lower;
  const lowerText = going.base;
  return {
    from: lengthText(upper, upper.doubtful || doubt),
    to: lengthText(lowerText, lowerText.doubtful || doubt),
    top: Math.min(a, b),
    why: doubt ? [l10n.t('its depths stand the other way round; both are marked ?')] : [],
  };
}

const openWhy = (): string =>
  l10n.t('its figure could be a thickness, a base or a top; say which (--layers thickness, bases or tops)');

const dashless = (length: Length | null): string => (length ? lengthText(length) : '?');

/** Layers with their depths, in the order of the notes. */
export function resolveLayers(drafts: readonly DraftLayer[], bare: DepthUnit, given: LayerValues | null): Layers {
  const singles = drafts.filter(({ how }) => how === 'single');
  const mode = given ?? singlesAre(singles.flatMap(({ to }) => (to ? [inMetres(to, bare)] : [])));
  const intervals = drafts.filter(({ how }) => how === 'interval');
  const reversed = intervals.filter(
    ({ from, to }) => from && to && inMetres(from, bare, to) > inMetres(to, bare, from),
  );
  const swapAll = reversed.length > 1 && reversed.length === intervals.length;
  const going: Going = { base: null };
  let above: Described | null = null;
  let openAt: number | null = null;
  const spanOf = (draft: DraftLayer, at: number): Span => {
    const { how, from, to } = draft;
    if (how === 'interval' && from && to) return whole(going, from, to, bare, swapAll);
    if (how === 'top' || (how === 'single' && mode === 'tops')) return fromTop(draft, drafts, at, bare);
    if (to && (how === 'to' || (how === 'single' && mode === 'bases'))) return onTo(going, to, bare);
    if (to && (how === 'thick' || mode === 'thickness')) return withThickness(going, to, bare);
    if (how === 'single') {
      openAt ??= at;
      going.base = 'lost';
      return { ...noSpan, why: [openWhy()] };
    }
    return { ...noSpan, why: [l10n.t('its depths are not told')] };
  };
  const layers = drafts.map((draft, at): Layer => {
    const span = spanOf(draft, at);
    const change = afterDitto(draft.words);
    const described = change === null ? describe(draft.words) : repeated(above, change);
    above = described;
    const remark = [described.remark, draft.remark].filter((each) => each !== null && each !== '').join(', ');
    const tail = remark === '' ? '' : ` ; ${remark}`;
    return {
      text: `${span.from} - ${span.to} ${described.text}${tail}`,
      plain: `${span.from} - ${span.to} ?${tail}`,
      why: [...span.why, ...described.why],
      top: span.top,
    };
  });
  return { layers, bottomUp: isBottomUp(layers), openAt };
}

function fromTop(draft: DraftLayer, drafts: readonly DraftLayer[], at: number, bare: DepthUnit): Span {
  const top = draft.from ?? draft.to;
  const next = drafts[at + 1];
  const nextTop = next?.how === draft.how ? (next.from ?? next.to) : null;
  return {
    from: dashless(top),
    to: dashless(nextTop),
    top: top === null ? null : inMetres(top, bare),
    why: nextTop === null ? [l10n.t('its base is not told')] : [],
  };
}

const isBottomUp = (layers: readonly Layer[]): boolean =>
  layers.length > 1 &&
  layers.every(({ top }, at) => {
    const before = at === 0 ? Number.POSITIVE_INFINITY : (layers[at - 1]?.top ?? null);
    return top !== null && before !== null && top < before;
  });
