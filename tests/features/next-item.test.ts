import { describe, expect, test } from 'vitest';
import { type NextItem, nextItem } from '../../server/features/next-item.ts';
import { edited, marked } from './fixture.ts';

/** The text with what is selected in brackets after each press of Tab; what was offered is passed over untouched. */
function pressed(text: string, times: number): readonly string[] {
  const shown: string[] = [];
  let { snapshot, at, lines } = marked(text);
  let selected = { line: at.line, start: at.column, end: at.column };
  let offered: NextItem['offered'] = null;
  for (let press = 0; press < times; press += 1) {
    const next: NextItem | null = nextItem(snapshot, selected, offered);
    if (next === null) return [...shown, 'nothing'];
    const after = edited(lines, next.edits);
    selected = next.select;
    offered = next.offered;
    ({ snapshot, at, lines } = marked(`${after}\n|`));
    const line = lines[selected.line] ?? '';
    shown.push(
      `${line.slice(0, selected.start)}[${line.slice(selected.start, selected.end)}]${line.slice(selected.end)}`,
    );
  }
  return shown;
}

const string = 'casing +0.45 - 7.2 steel 168.3 x 6.4 welded\n';

describe('the next item that a line lacks', () => {
  test('each press offers one, in the place of one that was passed over, and the last leaves the line as it was', () => {
    expect(pressed(`${string}  grout 0 - 7.2 neat cement|`, 6)).toEqual([
      '  grout 0 - 7.2 neat cement, [?] m3',
      '  grout 0 - 7.2 neat cement, [?] bags',
      '  grout 0 - 7.2 neat cement, w/c [?]',
      '  grout 0 - 7.2 neat cement, []',
      '  grout 0 - 7.2 neat cement, []',
      '  grout 0 - 7.2 neat cement[]',
    ]);
  });

  test('what the line says is not asked for', () => {
    expect(pressed(`${string}  grout 0 - 7.2 neat cement, 0.29 m3, 9 bags, tremie|`, 1)).toEqual([
      '  grout 0 - 7.2 neat cement, 0.29 m3, 9 bags, tremie, w/c [?]',
    ]);
  });

  test('a question mark of the line comes first, and is kept when it is passed over', () => {
    expect(pressed('casing +0.45 - ? steel|  ?', 1)).toEqual(['casing +0.45 - ? steel  [?]']);
    expect(pressed('|casing +0.45 - ? steel 168.3 x 6.4 welded', 2)).toEqual([
      'casing +0.45 - [?] steel 168.3 x 6.4 welded',
      'nothing',
    ]);
  });

  test('depths first', () => {
    expect(pressed('casing|', 2)).toEqual(['casing [?] - ?', 'casing ? - [?]']);
    expect(pressed(`${string}  shoe|`, 1)).toEqual(['  shoe [?]']);
  });

  test('units are those of the file', () => {
    expect(pressed('units ft in gal-us\nwater\n  38 fresh|', 1)).toEqual(['  38 fresh, [?] gpm']);
    expect(pressed('water\n  38 fresh|', 1)).toEqual(['  38 fresh, [?] L/min']);
  });

  test('it stands before the remark', () => {
    expect(pressed('water\n  38 fresh|  ; by ear', 2)).toEqual([
      '  38 fresh, [?] L/min  ; by ear',
      '  38 fresh[]  ; by ear',
    ]);
  });

  test.each([
    '|',
    'owner Kestrel|',
    'water\n  38 fresh, 25 L/min|',
    '# a comment|',
    'water\n  38 fresh  ; by ear|',
    'zorgly|',
  ])('nothing in %j, where Tab does what it always does', (text) => {
    expect(pressed(text, 1)).toEqual(['nothing']);
  });
});
