import type { Snapshot } from '../analysis/snapshot.ts';
import type { TextField, WellLog } from '../model/log.ts';
import type { Figure } from '../record/record.ts';
import { staticLevelOf } from '../record/water/static-level.ts';
import { allowedLines } from '../rules/allows.ts';
import { folderRules } from '../rules/folder/index.ts';
import type { FolderWell } from '../rules/folder/well.ts';

const folderRuleIds: ReadonlySet<string> = new Set(folderRules.map(({ id }) => id));

/** A header text that says something: `?` says that nobody knows. */
export const saidText = ({ header }: WellLog, keyword: string): TextField | null => {
  const field = Object.hasOwn(header, keyword) ? header[keyword] : undefined;
  return field === undefined || /^[\s?]*$/.test(field.text) ? null : field;
};

/** The value of a figure of the record; null where it is missing or waits for something. */
export const figureValue = (figures: readonly Figure[], id: string): number | null =>
  figures.find((figure) => figure.id === id)?.value ?? null;

function placeOf({ log, record }: Snapshot): FolderWell['place'] {
  const latitude = figureValue(record.figures, 'place.latitude');
  const longitude = figureValue(record.figures, 'place.longitude');
  if (log.place === null || latitude === null || longitude === null) return null;
  return { latitude, longitude, span: log.place.span };
}

function groundOf({ ground }: WellLog): FolderWell['ground'] {
  const elevation = ground?.elevation?.value ?? null;
  return elevation === null ? null : { elevation, datum: ground?.datum?.id ?? null };
}

function levelOf(log: WellLog): FolderWell['level'] {
  const level = staticLevelOf(log)?.level;
  return level?.value == null ? null : { depth: level.value, span: level.span };
}

const kindsOf = ({ uses, status }: WellLog): string[] =>
  [...uses, ...(status === null ? [] : [status])].flatMap((each) => ('id' in each ? [each.id] : []));

/** What the rules of a folder look at of one log. */
export function folderWellOf(snapshot: Snapshot, file: string, name: string): FolderWell {
  const { log } = snapshot;
  const kinds = kindsOf(log);
  return {
    file,
    name,
    units: log.units,
    id: saidText(log, 'well'),
    tag: saidText(log, 'tag'),
    place: placeOf(snapshot),
    kinds,
    continues: log.existing.length > 0 || kinds.includes('deepened') || kinds.includes('altered'),
    ground: groundOf(log),
    level: levelOf(log),
    allowed: allowedLines(snapshot.tree, folderRuleIds),
  };
}
