import { Buffer } from 'node:buffer';
import { cleanText } from '../../drawing/escape.ts';

/* PNG specification (W3C, third edition), annex D: the checksum of a chunk. */
const table = Array.from({ length: 256 }, (_, n) => {
  let value = n;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value >>> 0;
});

/** CRC-32 of the bytes. */
export function checksum(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = (table[(value ^ byte) & 255] ?? 0) ^ (value >>> 8);
  return (value ^ 0xffffffff) >>> 0;
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(checksum(named), 4);
  return Buffer.concat([frame.subarray(0, 4), named, frame.subarray(4)]);
}

/* Signature of 8 bytes, then the header chunk of 13 bytes with its length, type and checksum. */
const endOfHeader = 8 + 4 + 4 + 13 + 4;

/** The picture with a title in it, as international text that is not compressed. */
export function withTitle(png: Uint8Array, title: string): Uint8Array {
  const data = Buffer.from(`Title\0\0\0\0\0${cleanText(title)}`, 'utf8');
  return Buffer.concat([png.subarray(0, endOfHeader), chunk('iTXt', data), png.subarray(endOfHeader)]);
}
