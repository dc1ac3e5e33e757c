import * as l10n from '@vscode/l10n';
import { packs } from '../packs/index.ts';

/** One thing that may be chosen for a new log: what stands in the log, and what it says. */
export interface Choice {
  readonly id: string;
  readonly title: string;
}

/** What has to be chosen before a log can be begun: its units, and the packs to check against. */
export interface NewLogChoices {
  readonly units: readonly Choice[];
  readonly packs: readonly Choice[];
}

export const newLogChoices = (): NewLogChoices => ({
  units: [
    { id: 'm mm', title: l10n.t('depths in metres, diameters in millimetres') },
    { id: 'ft in', title: l10n.t('depths in feet, diameters in inches') },
    { id: 'ft in gal-us', title: l10n.t('feet and inches, US gallons') },
    { id: 'ft in gal-imp', title: l10n.t('feet and inches, imperial gallons') },
  ],
  packs: packs.map(({ id, title }) => ({ id, title })),
});

const ask = (stop: number): string => `\${${stop}:?}`;

/** The head of a new log as a snippet: what was chosen, and a question mark for all that is not known yet. */
export const newLog = (units: string, chosen: readonly string[]): string =>
  [
    `well      ${ask(1)}`,
    `units     ${units}`,
    ...(chosen.length === 0 ? [] : [`rules     ${chosen.join(' ')}`]),
    `place     ${ask(2)}`,
    `owner     ${ask(3)}`,
    `began     ${ask(4)}`,
    '',
    'hole',
    `  0    - ${ask(5)}   ${ask(6)}`,
    '',
    'strata',
    '  0    - $0',
    '',
  ].join('\n');
