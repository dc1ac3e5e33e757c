import * as l10n from '@vscode/l10n';
import type { Clause } from '../../packs/clause.ts';
import { general } from '../../packs/general.ts';
import type { LimitName } from '../../packs/limit-names.ts';
import type { Pack } from '../../packs/limits.ts';
import { whenText } from '../../packs/words.ts';
import { codeSpan, escapeMarkdown, paragraphs } from '../markdown.ts';
import { limitText, saidIn } from './pack.ts';
import type { HoverPlace } from './source.ts';

const ofFill: readonly LimitName[] = [
  'grout-allowance',
  'water-cement-most',
  'bentonite-share-most',
  'solids-least',
  'seal-depth-least',
  'gravity-depth-most',
  'tremie-foot-most',
  'chip-share-most',
  'montmorillonite-least',
  'bentonite-in-rock-most',
  'native-seal-most',
  'set-time-cement',
];

/** The limits that bear on what a line of each kind says. */
const limitsOf: Readonly<Record<string, readonly LimitName[]>> = {
  hole: ['well-depth-least', 'well-depth-never-under', 'oversize-least'],
  drilling: ['uphole-velocity-least', 'uphole-velocity-most'],
  casing: [
    'stickup-least',
    'casing-depth-least',
    'casing-size-least',
    'wall-least',
    'rock-seat-least',
    'shoe-beyond',
    'oversize-least',
  ],
  shoe: ['shoe-beyond', 'shoe-foot-difference-most'],
  centralizers: ['centralizer-string-least', 'centralizer-gap-most', 'centralizer-shoe-most', 'centralizer-set-least'],
  joints: ['joints-difference-most'],
  grout: ofFill,
  seal: ofFill,
  screen: ['entrance-velocity-most', 'pack-kept-back-least'],
  pack: ['pack-above-screen-least', 'pack-above-screen-most', 'pack-grain-ratio-least', 'pack-grain-ratio-most'],
  test: ['test-time-least'],
  disinfection: ['chlorine-least', 'chlorine-most', 'chlorine-contact-least'],
};

const asked = (name: string, pack: string, clause: Clause): string => `- ${name}: ${saidIn(clause)}, ${codeSpan(pack)}`;

const section = (asks: readonly string[]): string | null =>
  asks.length === 0
    ? null
    : paragraphs([l10n.t('What the rule packs of this log ask here, as a help and not the law:'), asks.join('\n')]);

/** What a pack asks under the name of a limit: of every well, and where the log says something that it makes a case of. */
const ofPack = (pack: Pack, name: LimitName): readonly string[] => [
  ...[pack.limits[name]].flatMap((limit) => (limit === undefined ? [] : [asked(limitText(name), pack.id, limit)])),
  ...pack.cases.flatMap((each) =>
    each.limit === name ? [asked(`${limitText(name)}, ${escapeMarkdown(whenText(each.when))}`, pack.id, each)] : [],
  ),
];

/** What the packs ask under a name; `general` speaks where none of them does. */
function asksOf(name: LimitName, packs: readonly Pack[]): readonly string[] {
  const asks = packs.flatMap((pack) => ofPack(pack, name));
  return asks.length > 0 ? asks : ofPack(general, name);
}

/** What the packs in force ask of a line of that kind; null where they are silent. */
export const limitsOfRow = (row: string, { snapshot: { limits } }: HoverPlace): string | null =>
  section((limitsOf[row] ?? []).flatMap((name) => asksOf(name, limits.packs ?? [])));

/** How far a well must stay from a source of contamination, as the packs in force say. */
export const distancesFrom = (source: string, { snapshot: { limits } }: HoverPlace): string | null =>
  section(
    (limits.packs ?? []).flatMap(({ id, distances }) =>
      distances.flatMap((distance) => (distance.from.includes(source) ? [asked(source, id, distance)] : [])),
    ),
  );
