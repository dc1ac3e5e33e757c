import { coordinatesText } from './coordinates.ts';
import { type Box, line, type Part, type Shape, stroked } from './shapes.ts';
import type { Sheet } from './sheet.ts';
import { fitted, rowHeight, type Type, textRow, types } from './text.ts';
import { capital, depthWithUnit, fieldText, listed, measureText, metresText, momentText, termText } from './words.ts';

const headerText = ({ log }: Sheet, keyword: string): string => fieldText(log.header[keyword]);

/** The well's own id, or what stands in for it. */
export const wellName = (header: { readonly [keyword: string]: { readonly text: string } }): string =>
  header.well?.text || 'Unnamed well';

function dates({ log }: Sheet): string {
  const days = [momentText(log.began), momentText(log.finished)].filter(Boolean);
  return days.join(' – ');
}

/** The facts at the head of the sheet: what they are, and what the notes say. */
function factsOf(sheet: Sheet): (readonly [string, string])[] {
  const { log, unit } = sheet;
  const level = log.water.levels.at(-1)?.level ?? null;
  const facts: (readonly [string, string])[] = [
    ['Depth of hole', log.totalDepth === null ? '?' : metresText(log.totalDepth, unit)],
    ['Ground elevation', log.ground === null ? '' : measureText(log.ground.elevation)],
    ['Static level', level === null ? '' : depthWithUnit(level, unit)],
    ['Drilled', dates(sheet)],
    ['Contractor', headerText(sheet, 'contractor')],
    ['Use', listed(log.uses.map(termText))],
  ];
  return facts.filter(([, value]) => value !== '');
}

const factsWidth = 62;
const factLabel = 24;

function factShapes(sheet: Sheet, box: Box): Shape[] {
  const left = box.x + box.width - factsWidth;
  return factsOf(sheet).flatMap(([what, value], n) => {
    const y = box.y + n * (rowHeight(types.body) + 0.5);
    return [
      textRow(what, left, y + 0.25, types.small),
      textRow(fitted(value, types.body, factsWidth - factLabel), left + factLabel, y, types.body),
    ];
  });
}

/** The rows under the well's name, and the type each is set in. */
function namesOf(sheet: Sheet): (readonly [string, Type])[] {
  const place = [headerText(sheet, 'site'), headerText(sheet, 'location')].filter(Boolean).join(' · ');
  const numbers = ['tag', 'licence', 'permit'].map((name) => [name, headerText(sheet, name)] as const);
  const rows: (readonly [string, Type])[] = [
    [wellName(sheet.log.header), types.name],
    [place, types.place],
    [headerText(sheet, 'owner'), types.body],
    [coordinatesText(sheet.log.place), types.body],
    [capital(listed(numbers.map(([name, text]) => text && `${name} ${text}`))), types.body],
  ];
  return rows.filter(([text]) => text !== '');
}

function nameShapes(sheet: Sheet, box: Box): Shape[] {
  let y = box.y;
  return namesOf(sheet).map(([text, type]) => {
    const shape = textRow(fitted(text, type, box.width - factsWidth - 6), box.x, y, type);
    y += rowHeight(type);
    return shape;
  });
}

/** Height of the title block in mm. */
export const titleHeight = (sheet: Sheet): number =>
  Math.max(
    19,
    factsOf(sheet).length * (rowHeight(types.body) + 0.5) + 2,
    namesOf(sheet).reduce((sum, [, type]) => sum + rowHeight(type), 2),
  );

/** The well's name, its place, and the first facts of the record. */
export const titlePart = (sheet: Sheet, box: Box): Part => ({
  name: 'title',
  line: null,
  title: `Log of ${wellName(sheet.log.header)}`,
  shapes: [
    ...nameShapes(sheet, box),
    ...factShapes(sheet, box),
    line(
      [
        [box.x, box.y + box.height - 0.6],
        [box.x + box.width, box.y + box.height - 0.6],
      ],
      stroked('ink', 0.6),
    ),
  ],
});
