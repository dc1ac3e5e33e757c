import { plainCharacters, vulgarFractions } from '../../grammar/characters.ts';

const ligatures: Readonly<Record<string, string>> = {
  '\ufb00': 'ff',
  '\ufb01': 'fi',
  '\ufb02': 'fl',
  '\ufb03': 'ffi',
  '\ufb04': 'ffl',
};

const fractionClass = new RegExp(`(\\d)?\\s?([${[...vulgarFractions.keys()].join('')}])`, 'g');

/** `½` as `1/2`. */
const spelledFraction = (sign: string): string => sign.normalize('NFKD').replace('\u2044', '/');

const withFractions = (text: string): string =>
  text.replace(fractionClass, (_, digit: string | undefined, sign: string) =>
    digit === undefined ? spelledFraction(sign) : `${digit}-${spelledFraction(sign)}`,
  );

/** A list's bullet or number before what it lists. */
const listMark = /^\s*(?:[\u2022\u25aa\u25e6\u2023\u25cf*]\s*|\(?\d{1,3}\)\s+|\d{1,3}\.\s+(?=\d))/;

/**
 * `2'-6"` is a length: as an interval it would run upwards. `0'-6"` is one only where an interval goes on behind it.
 */
const feetDashInches = /\b((?=[1-9])\d+|0(?='-\d+"\s*(?:to|-)\s*\d))'-((?:\d|1[01])(?:[- ]\d+\/\d+)?)"/g;

/** The ground as the top of the first interval: `GL - 0.35`. */
const groundLevel = /^\s*(?:from )?(?:g\.?l\.?|ground(?: level| surface)?|surface|grade)(?=\s*(?:-|to)\s*\d)/i;

/** Characters that show nothing, a NUL among them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const unseen = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\u200b-\u200d\u2060]/g;

/**
 * A line as a typewriter would have it: plain dashes, quotes and fractions, without bullets, dotted leaders and repeated
 * blanks. Letters that look like figures stay letters.
 */
export function tidy(line: string): string {
  const plain = plainCharacters(withFractions(line.replace(/[\ufb00-\ufb04]/g, (sign) => ligatures[sign] ?? sign)));
  return plain
    .replace(unseen, '')
    .replace(listMark, '')
    .replace(groundLevel, '0')
    .replace(/''/g, '"')
    .replace(/(\d) '(?=[\s,;)-]|$)/g, "$1'")
    .replace(feetDashInches, '$1\'$2"')
    .replace(/\s*(?:\u2026|\.{2,}|_{3,})[\s.]*/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
