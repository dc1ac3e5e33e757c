import * as l10n from '@vscode/l10n';
/** The text of a file of notes, and what had to be done for it. */
export interface DecodedNotes {
  readonly text: string;
  /** A sentence for the person where the file was not plain UTF-8; null where it was. */
  readonly note: string | null;
}

/** Why bytes are no text. */
export interface NotNotes {
  readonly reason: string;
}

const marked = (bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null => {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : null;
};

/** UTF-16 without a mark: in Latin text every second byte is zero, the high one of each pair. */
function unmarked(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const pairs = Math.min(bytes.length, 4096) >> 1;
  let [first, second] = [0, 0];
  for (let at = 0; at < pairs; at++) {
    if (bytes[2 * at] === 0) first++;
    if (bytes[2 * at + 1] === 0) second++;
  }
  if (second > 0.4 * pairs && first < 0.1 * pairs) return 'utf-16le';
  return first > 0.4 * pairs && second < 0.1 * pairs ? 'utf-16be' : null;
}

function decoded(bytes: Uint8Array, encoding: string): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

const lineOfByte = (bytes: Uint8Array, fits: (byte: number) => boolean): number => {
  let line = 1;
  for (const byte of bytes) {
    if (fits(byte)) return line;
    if (byte === 0x0a) line++;
  }
  return line;
};

const inSixteen = (bytes: Uint8Array, encoding: 'utf-16le' | 'utf-16be', how: string): DecodedNotes | NotNotes => {
  const text = decoded(bytes.length % 2 === 0 ? bytes : bytes.subarray(0, -1), encoding);
  if (text === null) return { reason: l10n.t('{0}, but its bytes are not; save the file as UTF-8', how) };
  const name = encoding.toUpperCase();
  const note =
    bytes.length % 2 === 0
      ? l10n.t('read as {0}', name)
      : l10n.t('read as {0}; the last byte is half a character and was left away', name);
  return { text, note };
};

/** Windows-1252 from 0x80 to 0x9F (WHATWG Encoding, index windows-1252); Node's own decoder reads these as control characters. */
const upperControls =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

const windows1252 = (bytes: Uint8Array): string =>
  new TextDecoder('latin1')
    .decode(bytes)
    .replace(/[\u0080-\u009f]/g, (character) => upperControls.charAt(character.charCodeAt(0) - 0x80));

/**
 * The text of a file of notes: UTF-8; UTF-16 with its mark, or without one where every second byte is zero; else
 * Windows-1252, which has a character for almost every byte.
 */
export function decodeNotes(bytes: Uint8Array): DecodedNotes | NotNotes {
  const mark = marked(bytes);
  if (mark !== null) return inSixteen(bytes, mark, l10n.t('its mark says {0}', mark.toUpperCase()));
  const guessed = unmarked(bytes);
  if (guessed !== null) return inSixteen(bytes, guessed, l10n.t('it looks like {0}', guessed.toUpperCase()));
  if (bytes.includes(0))
    return {
      reason: l10n.t(
        'line {0} has a NUL byte, as in a spreadsheet or picture file; export it as text or CSV',
        lineOfByte(bytes, (byte) => byte === 0),
      ),
    };
  const text = decoded(bytes, 'utf-8');
  if (text !== null) return { text, note: null };
  const line = lineOfByte(bytes, (byte) => byte >= 0x80);
  return {
    text: windows1252(bytes),
    note: l10n.t(
      'not UTF-8, so read as Windows-1252; line {0} is the first with a letter beyond plain ASCII: check it',
      line,
    ),
  };
}
