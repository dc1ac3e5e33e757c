import assert from 'node:assert/strict';
import { type Tests, until } from '../suite/harness.ts';
import type { Workbench } from '../workbench.ts';
import { chooseTheme, runCommand, takeScreenshot } from './driver.ts';
import { closeUnsaved, setInWorkspace, startWith, untilShown, writeMarked } from './keyboard.ts';

const well = [
  'ground 287.4 m',
  'hole',
  '  0 - 7.2 254',
  '  - 61 152',
  'strata',
  '  0 - 3.8 clay',
  '  - 61 sand',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
];

const wellWith = (more: string): string => [...well, more].join('\n');

/** What is pointed at, and what the box then says. */
const hovers: readonly (readonly [what: string, marked: string, said: RegExp])[] = [
  ['a term', 'strata\n  0 - 6.1 lime|stone, grey', /limestone.*Source: \S/s],
  ['a short form', 'strata\n  0 - 6.1 lst b|rn', /brown.*Source: \S/s],
  // NIST SP 811, appendix B: 1 ft = 0.3048 m exactly.
  [
    'a depth',
    wellWith('').replace('- 61 sand', '- 6|1 sand'),
    /61 m = 200\.13 ft.*Interval of 57\.2 m.*Elevation 226\.4 m/s,
  ],
  // ASME B36.10M: 6 in nominal pipe is 6.625 in outside.
  ['a diameter', 'casing 0 - 7.2 steel 168|.3 x 6.4', /6 in nominal/],
  // Worked by hand: π/4 (0.254² - 0.1683²) 7.2 = 0.2047 m³.
  ['a figure', wellWith('  gr|out 0 - 7.2 neat cement, 0.29 m3'), /annulus volume.*0\.205 m³.*π\/4/s],
  // 5.65 m below a casing that stands up 0.45 m is 5.2 m below ground.
  ['a level', wellWith('water\n  level 5.6|5 toc 2026-05-07'), /5\.2 m = 17\.06 ft below ground/],
  ['a pack', 'rules gen|eral', /not the law.*grout-allowance/s],
];

async function told(workbench: Workbench, marked: string, said: RegExp): Promise<void> {
  const { page } = workbench;
  await writeMarked(workbench, marked);
  const box = page.locator('.monaco-hover:not(.hidden) .hover-contents', { hasText: said }).first();
  // A person who asks before the checker has read the text asks again.
  for (let ask = 0; ask < 4 && !(await box.isVisible()); ask += 1) {
    await page.keyboard.press('Control+k');
    await page.keyboard.press('Control+i');
    await box.waitFor({ timeout: 3000 }).catch(() => page.keyboard.press('Escape'));
  }
  await box.waitFor();
  await page.keyboard.press('Escape');
}

const hinted = [
  'hole',
  '  0 - 7.2 254',
  '  - 38 ft 152',
  'casing 0 - 7.2 steel 168.3 x 6.4',
  '  grout 0 - 7.2 neat cement, 0.29 m3',
  'drilling air 21 m3/min',
  '  7.2 - 13.2 18 min',
];

/** The hints of that log by their setting: 1 ft = 0.3048 m; 0.2047 m³ and 15 % more; 6 m in 18 min. */
const hints = {
  thickness: '4.382 m',
  units: '= 11.58 m',
  requiredVolume: 'required 0.235 m³',
  penetrationRate: '0.333 m/min',
};

const kinds = Object.keys(hints) as (keyof typeof hints)[];

/** The lines of that log with the hints of the kinds that are shown; the editor sets a blank before each. */
const withHints = (shown: readonly (keyof typeof hints)[]): string[] => {
  const hint = (kind: keyof typeof hints): string => (shown.includes(kind) ? hints[kind] : '');
  return [
    ...hinted.slice(0, 2),
    `  - 38 ft${hint('units')}${hint('thickness')} 152`,
    hinted[3] ?? '',
    `${hinted[4]}${hint('requiredVolume')}`,
    hinted[5] ?? '',
    `${hinted[6]}${hint('penetrationRate')}`,
  ];
};

const settingsOfHints = (off: string | null): object => ({
  'editor.codeLens': false,
  ...(off === null ? {} : { [`drillhand.inlayHints.${off}`]: false }),
});

/** The words of a line by the class that colours them. */
const colours = (workbench: Workbench, words: RegExp): Promise<Record<string, string>> =>
  workbench.page
    .locator('.view-line', { hasText: words })
    .first()
    .locator('span > span')
    .evaluateAll((spans) =>
      Object.fromEntries(
        spans.map((span) => [(span.textContent ?? '').replaceAll('\u00a0', ' ').trim(), getComputedStyle(span).color]),
      ),
    );

/** What the editor tells of the text: boxes, hints, totals, colours. */
export const telling = (workbench: Workbench): Tests => ({
  async 'the box of the keyboard: a log is opened'() {
    await startWith(workbench, '\n');
  },

  ...Object.fromEntries(
    hovers.map(([what, marked, said]) => [
      `a box tells of ${what}`,
      async () => {
        await told(workbench, marked, said);
      },
    ]),
  ),

  async 'what a line takes is shown on being asked, the next thing marked'() {
    const { page } = workbench;
    const help = page.locator('.parameter-hints-widget.visible .signature .active');
    for (const [marked, next] of [
      ['hole\n  0 - 7 |', 'diameter'],
      ['casing 0 - 7 steel\n  grout 0 - 7 neat cement, |', 'volume'],
    ] as const) {
      await writeMarked(workbench, marked);
      await page.keyboard.press('Control+Shift+Space');
      await help.filter({ hasText: next }).waitFor();
      await page.keyboard.press('Escape');
    }
  },

  async 'words of a kind have one colour, in a theme that names no such kinds too'() {
    await writeMarked(workbench, '|strata\n  0 - 3 sand, brown, wet\n  - 9 limstone');
    for (const theme of ['Light High Contrast', 'Dark Modern']) {
      await chooseTheme(workbench.page, theme);
      await until(`one colour in ${theme}`, async () => {
        const { sand, brown, wet } = await colours(workbench, /brown/);
        return sand !== undefined && sand === brown && sand === wet;
      });
      const { sand } = await colours(workbench, /brown/);
      const { limstone } = await colours(workbench, /limstone/);
      assert.notEqual(sand, limstone, theme);
    }
  },

  async 'hints stand in the text, and each kind can be switched off'() {
    await writeMarked(workbench, `|${hinted.join('\n')}`);
    setInWorkspace(workbench, settingsOfHints(null));
    await untilShown(workbench, withHints(kinds));
    await takeScreenshot(workbench.page, 'hints');
    for (const off of kinds) {
      setInWorkspace(workbench, settingsOfHints(off));
      await untilShown(workbench, withHints(kinds.filter((kind) => kind !== off)));
    }
  },

  async 'totals stand above the sections, are reached by the keyboard, and can be switched off'() {
    const { page } = workbench;
    const total = page.locator('.codelens-decoration', { hasText: 'down to 11.58 m' }).first();
    setInWorkspace(workbench, { 'editor.inlayHints.enabled': 'off' });
    await total.waitFor();
    await writeMarked(workbench, `|${hinted.join('\n')}`);
    await runCommand(page, 'Show CodeLens Commands for Current Line');
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'down to 11.58 m' }).first().waitFor();
    await page.keyboard.press('Escape');
    setInWorkspace(workbench, { 'editor.inlayHints.enabled': 'off', 'drillhand.codeLens.totals': false });
    await total.waitFor({ state: 'detached' });
    await closeUnsaved(workbench);
  },
});
