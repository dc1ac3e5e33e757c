import { expect, test } from 'vitest';
import { parseText } from '../../grammar/index.ts';
import { readNotes } from '../../server/import/index.ts';

/** Single ways of writing, each with its lines; unlike the notes in `notes/`, these were written while the reader was. */
const ways: readonly (readonly [note: string, ...lines: string[]])[] = [
  ["0' to 2'-6\" topsoil", "0' - 2'6\" topsoil"],
  ['0\'-6" topsoil', '0\' - 6" topsoil'],
  ["14 ' - 22 ' hardpan & boulders", "14' - 22' hardpan and boulders"],
  ['GL - 1.5 m made ground', '0 - 1.5 m fill'],
  ["22' - 165' gray granite, frac @ 88' & 140'", "22' - 165' granite, grey ; frac @ 88' & 140'"],
  ['48 - 53 ft gravel, 15 gpm', '48 - 53 ft gravel', '48 - 53 ft, 15 gpm'],
  ["hit bedrock @ 31'", "31' - ? bedrock"],
  ['open hole 40-140\' 6"', '40 - 140? ft, 6? in'],
  ['bit size 8 3/4 to 45 ft, 6 1/8 to 120', '0 - 45 ft 8-3/4', '45 ft - 120 6-1/8'],
  ['Casing 200mm to 12m, grouted 1.2 m3 neat cement', 'casing ? - 12 m, 200 mm', 'grout ? - ? neat cement, 1.2 m3'],
  ['Casing: 6 1/4" steel, 31\', .188 wall, welded', "casing ? - 31'?, steel, 6-1/4 in x 0.188, welded"],
  ['Drove 50 ft of 6" steel, 2\' stickup', 'casing +2\' - ?, steel, 6"'],
  ['Set 20 feet of 6 inch casing', 'casing ? - 20? ft, 6 in'],
  ["pipe 45' 6 5/8 od", "casing ? - 45'?, 6-5/8 in"],
  ['grout: 10 bags portland, 0-35 ft, tremied', 'grout 0 - 35 ft neat cement, 10 bags, tremie'],
  ['bentonite seal 0-20 ft', 'seal 0 - 20 ft ? ; bentonite, form not told'],
  ['screen 18-24 m, 125 mm stainless, 0.5 mm slot', 'screen 18 - 24 m, stainless steel, 125 mm, slot 0.5 mm'],
  ['Groundwater struck at 3.2 m, rose to 2.9 m', '3.2 m', 'level 2.9 m'],
  ["1/2 gpm @ 65 ft, 3 1/2 gpm @ 122'", '65 ft, 1/2 gpm', "122', 3 1/2 gpm"],
  ['fractures 122 ft, 188 ft (3 gpm)', '188 ft, 3 gpm'],
  ['RWL 8.65 m bgl 13/02/2026', 'level 8.65 m bgs 2026-02-13'],
  ['static level 3 ft above ground', 'level +3 ft'],
  ["Test pumped 15 GPM 4 hrs drawdown 8'", 'test pump 15 gpm, 4 h', "4 h dd 8'"],
  ['pumping level 60 ft @ 20 gpm after 3 hrs', 'test pump 20 gpm, 3 h', '3 h 60 ft'],
  ['Hole backfilled with bentonite pellets 0-9 m', '0 - 9 m bentonite pellets'],
  ['Hydrofractured 200-400 ft at 2000 psi, yield after 3 gpm', 'hydrofracture 200 - 400 ft, 2000 psi, after 3 gpm'],
  ['Total 24 ft.', '0 - 24 ft ?'],
  ['dry hole', 'status dry'],
];

test.each(ways)('%s', (note, ...lines) => {
  const { entries, questions } = readNotes(note);
  expect(questions.filter(({ blocking }) => blocking)).toEqual([]);
  expect(entries.flatMap((entry) => entry.lines.map(({ text }) => text))).toEqual(lines);
});

test.each([
  ['casing 0-20 ft 6 in steel 17 lb', '17'],
  ['pack 17-24 m 1.0-2.0 mm sand', '1'],
  ['pumped 10 gpm for 2 hrs from 80 ft, 300 gal in all', '300'],
])('%s: a figure without a place is told', (note, figure) => {
  const [entry] = readNotes(note).entries;
  expect(entry?.status).toBe('partly');
  expect(entry?.why.join('; ')).toContain(figure);
});

test('a unit that was given against what the notes say is told', () => {
  const { troubles } = readNotes('Depths in metres\n0-4 clay', { units: 'ft' });
  expect(troubles.map(({ says }) => says)).toEqual([
    'the notes say that depths are in metres; the other unit was given, and was taken for depths without one',
  ]);
});

test('one figure a layer is asked about where its order leaves it open, and read as it is answered', () => {
  const notes = '3 ft sand\n12 ft clay\n40 ft shale';
  const open = readNotes(notes);
  expect(open.questions.map(({ about, blocking }) => ({ about, blocking }))).toEqual([
    { about: 'layers', blocking: false },
  ]);
  const linesAs = (layers: 'thickness' | 'bases' | 'tops') =>
    readNotes(notes, { layers }).entries.flatMap(({ lines }) => lines.map(({ text }) => text));
  expect(open.entries.map(({ lines }) => lines[0]?.text)).toEqual(['? - ? sand', '? - ? clay', '? - ? shale']);
  expect(linesAs('thickness')).toEqual(['0 - 3 ft sand', '3 ft - 15 ft clay', '15 ft - 55 ft shale']);
  expect(linesAs('bases')).toEqual(['0 - 3 ft sand', '3 ft - 12 ft clay', '12 ft - 40 ft shale']);
  expect(linesAs('tops')).toEqual(['3 ft - 12 ft sand', '12 ft - 40 ft clay', '40 ft - ? shale']);
});

test('dates that could be two days are asked about, and read as they are answered', () => {
  const lines = (dates: 'dmy' | 'mdy' | null) =>
    readNotes('started 5/7/2026', { dates }).entries.flatMap((entry) => entry.lines.map(({ text }) => text));
  expect(lines(null)).toEqual(['began ?']);
  expect(lines('dmy')).toEqual(['began 2026-07-05']);
  expect(lines('mdy')).toEqual(['began 2026-05-07']);
});

test('a note cannot silence a rule', () => {
  const { text } = readNotes('allow interval-gap: because\nowner: me # allow interval-gap: because\n0-4 m clay');
  expect(text).toContain('owner me');
  expect(parseText(text).lines.flatMap(({ allow }) => allow ?? [])).toEqual([]);
});
