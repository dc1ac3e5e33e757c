import { Buffer, isUtf8 } from 'node:buffer';

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/** A text, with what is needed to write it as it was. */
export interface Decoded {
  readonly text: string;
  readonly encoding: Encoding;
  /** True where a byte order mark stood before it. */
  readonly mark: boolean;
}

/** Why bytes are not the text of a log; line and column count from 1. */
export interface NotText {
  readonly line: number;
  readonly column: number;
  readonly reason: string;
}

const largest = 256 * 1024 * 1024;
const mark = '\ufeff';

const markOf = (bytes: Uint8Array): Encoding | null => {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'utf-8';
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : null;
};

function placeIn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}

/** The first line that is not UTF-8; a line feed is never a part of another character. */
function firstBadLine(bytes: Buffer): { line: number; from: number; to: number } {
  let from = 0;
  for (let line = 1; ; line++) {
    const feed = bytes.indexOf(0x0a, from);
    const to = feed === -1 ? bytes.length : feed;
    if (feed === -1 || !isUtf8(bytes.subarray(from, to))) return { line, from, to };
    from = to + 1;
  }
}

function notUtf8(bytes: Buffer): NotText {
  const { line, from, to } = firstBadLine(bytes);
  const good = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes.subarray(from, to));
  const column = good.indexOf('\ufffd');
  const byte = bytes[from + Buffer.byteLength(good.slice(0, column))] ?? 0;
  const hex = byte.toString(16).toUpperCase().padStart(2, '0');
  return {
    line,
    column: column + 1,
    reason: `not UTF-8 text (byte 0x${hex}); save the file as UTF-8, or check that it is a log`,
  };
}

const binary = (text: string, at: number): NotText => ({
  ...placeIn(text, at),
  reason: 'a NUL character, as in a binary file; a log is plain text',
});

function decodeMarked(bytes: Buffer, encoding: Encoding): Decoded | NotText {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    const zero = text.indexOf('\0');
    return zero === -1 ? { text, encoding, mark: true } : binary(text, zero);
  } catch {
    if (encoding === 'utf-8') return notUtf8(bytes);
    return {
      line: 1,
      column: 1,
      reason: `its mark says ${encoding.toUpperCase()}, but its bytes are not; save the file as UTF-8`,
    };
  }
}

/** The text of a file: UTF-8, or UTF-16 where its mark says so. */
export function decode(given: Uint8Array): Decoded | NotText {
  const bytes = Buffer.from(given.buffer, given.byteOffset, given.byteLength);
  if (bytes.length > largest) return { line: 1, column: 1, reason: 'larger than 256 MB; a log is never that long' };
  const marked = markOf(bytes);
  if (marked !== null) return decodeMarked(bytes, marked);
  const zero = bytes.indexOf(0);
  if (zero !== -1) return binary(bytes.toString('latin1', 0, zero), zero);
  return isUtf8(bytes) ? { text: bytes.toString('utf8'), encoding: 'utf-8', mark: false } : notUtf8(bytes);
}

/** The bytes of a text, in the encoding that it came in. */
export function encode(text: string, { encoding, mark: marked }: Omit<Decoded, 'text'>): Uint8Array {
  const whole = marked ? mark + text : text;
  if (encoding === 'utf-8') return Buffer.from(whole, 'utf8');
  const bytes = Buffer.from(whole, 'utf16le');
  return encoding === 'utf-16be' ? bytes.swap16() : bytes;
}
