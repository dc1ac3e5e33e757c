import * as l10n from '@vscode/l10n';
import { packs } from '../../packs/index.ts';
import { describeOwnPack } from '../hover/pack.ts';
import { suggestionsOf } from './items.ts';
import type { CompletionPlace } from './place.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const unitWords = (): readonly (readonly [string, string])[] => [
  ['m', l10n.t('depths in metres')],
  ['ft', l10n.t('depths in feet')],
  ['mm', l10n.t('diameters in millimetres')],
  ['cm', l10n.t('diameters in centimetres')],
  ['in', l10n.t('diameters in inches')],
  ['gal-us', l10n.t('gal and gpm are US gallons')],
  ['gal-imp', l10n.t('gal and gpm are imperial gallons')],
];

const hasSlot = ({ line }: CompletionPlace, slot: string): boolean => line.items.some((item) => item.slot === slot);

/** The grid first; behind two coordinates the datum and how good they are. */
function wordsOfPlace(place: CompletionPlace): readonly Suggestion[] {
  const isPlaced = hasSlot(place, 'longitude') || hasSlot(place, 'northing');
  if (!isPlaced) return [plain('label', 'utm', l10n.t('zone, easting and northing'), { insert: 'utm ' })];
  const accuracy = plain('label', 'accuracy', l10n.t('how good it is'), { insert: 'accuracy ' });
  return [
    ...(hasSlot(place, 'datum') ? [] : suggestionsOf('geodetic-datum')),
    ...(hasSlot(place, 'accuracy') ? [] : [accuracy]),
  ];
}

const wordsOfRow: Readonly<Record<string, (place: CompletionPlace) => readonly Suggestion[]>> = {
  units: () => unitWords().map(([word, detail]) => plain('unit', word, detail)),
  rules: ({ snapshot }) => [
    ...snapshot.ownPacks.packs.map((pack) =>
      plain('pack', pack.id, pack.title, { about: { kind: 'text', markdown: describeOwnPack(pack) } }),
    ),
    ...packs.map(({ id, title }) => plain('pack', id, title, { about: { kind: 'pack', id } })),
  ],
  place: wordsOfPlace,
};

const isTyped = ({ body }: CompletionPlace, { label }: Suggestion): boolean =>
  body
    .toLowerCase()
    .split(/[\s,]+/)
    .includes(label.toLowerCase());

/** Units after `units`, packs after `rules`, the grid, the datum and the accuracy after `place`. */
export const suggestWords: SuggestionSource = (place) => {
  if (place.where !== 'body' || place.row === null) return [];
  return (wordsOfRow[place.row.id]?.(place) ?? []).filter((suggestion) => !isTyped(place, suggestion));
};
