const depth = '[~+]*[\\d?.][^\\s,–—-]*(?:\\s?(?:m|ft|cm|in)\\b)?';
const dash = '(?:[-–—]+|to\\b)';

/** Set in by `indent`: an interval whose top is written as `top` says, with something said of it. */
const intervalLine = (indent: string, top: string): string => `^${indent}${top}${dash}\\s*${depth}\\s+\\S.*$`;

/** Enter behind such a line: set in like the line above, so many blanks more, and a dash. */
const goOn = (indent: string, top: string, blanks: number): object => ({
  beforeText: intervalLine(indent, top),
  afterText: '^\\s*$',
  action: { indent: 'none', appendText: `${' '.repeat(blanks)}- ` },
});

/** Where the formatter puts the dash while no depth of the section is wider than most. */
const dashColumn = 7;
const itsTop = `${depth}\\s*`;
/** A dash typed beside the one that Enter has put there, or the whole interval. */
const dashAgain = `(?:[-–—]\\s+(?:${depth}\\s*)?)?`;

/** In the editor, Enter behind an interval begins the next one at its base. */
export const enterRules: readonly object[] = [
  goOn(' {3,}', dashAgain, 0),
  goOn(' {2}', '', dashColumn - 2),
  goOn('', '', dashColumn),
  goOn(' {2}', itsTop, dashColumn - 2),
  goOn('', itsTop, dashColumn),
];
