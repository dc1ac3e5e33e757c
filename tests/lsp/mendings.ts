/** A text with the cursor in it, what the lamp offers there, and the text after it is taken. */
export interface Mending {
  readonly does: string;
  readonly before: string;
  readonly offer: string;
  readonly after: string;
}

const gap = 'strata\n  0 - 3.8 clay\n  |4.1 - 6.1 sand';
const overlap = 'strata\n  0 - 4.1 clay\n  |3.8 - 6.1 sand';

export const mendings: readonly Mending[] = [
  {
    does: 'a gap is closed by the base above',
    before: gap,
    offer: 'Begin this line at the base',
    after: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
  },
  {
    does: 'a gap is closed by the top below',
    before: gap,
    offer: 'End the line above',
    after: 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
  },
  {
    does: 'a gap is logged as unknown',
    before: gap,
    offer: 'Log the gap as unknown',
    after: 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand',
  },
  {
    does: 'an overlap is closed by the base above',
    before: overlap,
    offer: 'Begin this line at the base',
    after: 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
  },
  {
    does: 'an overlap is closed by the top below',
    before: overlap,
    offer: 'End the line above',
    after: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
  },
  {
    does: 'an overlap is logged as unknown',
    before: overlap,
    offer: 'given twice as unknown',
    after: 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand',
  },
  {
    does: 'lines are sorted by depth',
    before: 'strata\n  9 - 12 sand\n  0 - 3| silt\n  - 9 clay',
    offer: 'Sort the lines of strata',
    after: 'strata\n  0 - 3 silt\n  - 9 clay\n  9 - 12 sand',
  },
  {
    does: 'a section that is missing is put in as questions',
    before: 'well A\nhole\n  0 - 9 200|',
    offer: 'missing: strata',
    after: 'well A\nhole\n  0 - 9 200\n\nstrata\n  - ?  ?',
  },
  {
    does: 'a remark becomes a line of its section',
    before: 'strata\n  0 - 30| sand ; water at 26.4',
    offer: 'Make the remark a line',
    after: 'strata\n  0 - 30 sand\n\nwater\n  26.4  ?',
  },
  {
    does: 'terms are written in full',
    before: 'strata\n  0 - 3 slty cl| brn',
    offer: 'terms of these lines in full',
    after: 'strata\n  0 - 3 silty clay, brown',
  },
  {
    does: 'terms are written short',
    before: 'strata\n  0 - 3 silty cl|ay, brown',
    offer: 'terms of these lines short',
    after: 'strata\n  0 - 3 slty cl, brn',
  },
  {
    does: 'the next top follows a base that was moved',
    before: 'strata\n  0 - 4.|1 clay\n  3.8 - 6.1 sand',
    offer: 'Let the next line begin at 4.1',
    after: 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
  },
  {
    does: 'a slip is mended',
    before: 'strata\n  0 - 4 limst|one',
    offer: 'limestone',
    after: 'strata\n  0 - 4 limestone',
  },
  {
    does: 'a rule is silenced on its line, the reason left open',
    before: 'strata\n  0 - 4 limst|one',
    offer: 'Allow unknown-term',
    after: 'strata\n  0 - 4 limstone  # allow unknown-term: ?',
  },
];

/** A file in metres, and the same in feet. 1 ft = 0.3048 m, 1 US gallon = 3.785412 L: NIST SP 811, appendix B. */
export const metric = 'units m mm\nstrata\n  0-3.8 slty cl brn\n  - 38 ft sand\nwater\n  6.10 fresh, 25 L/min';
export const us =
  'units ft in\nstrata\n  0-12.46719 slty cl brn\n  - 38   ft sand\nwater\n  20.013123 fresh, 6.60430 gpm-us';
