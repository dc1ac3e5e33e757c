// The files that are shipped beside the bundles as they are: the fonts of PDF and PNG with their licence, and the PNG maker.
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { inRoot } from './steps.mjs';

const arimo = (...parts) => inRoot('node_modules', '@expo-google-fonts', 'arimo', ...parts);

/* Unicode blocks: Latin with its extensions and marks, Greek, punctuation, raised and lowered figures, currency, letter-like
   signs, fractions, arrows, mathematical signs, geometric shapes. */
const blocks = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x2b0, 0x3ff],
  [0x1e00, 0x1eff],
  [0x2000, 0x22ff],
  [0x25a0, 0x25ff],
];

const charactersKept = () =>
  blocks
    .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, n) => String.fromCodePoint(first + n)))
    .join('');

const fonts = {
  'arimo-regular.ttf': ['400Regular', 'Arimo_400Regular.ttf'],
  'arimo-bold.ttf': ['700Bold', 'Arimo_700Bold.ttf'],
};

async function subsetOf(parts) {
  const { default: subset } = await import('subset-font');
  return subset(readFileSync(arimo(...parts)), charactersKept(), { targetFormat: 'truetype' });
}

const copied = {
  'arimo-licence.txt': arimo('LICENSE_FONT'),
  'resvg.wasm': inRoot('node_modules', '@resvg', 'resvg-wasm', 'index_bg.wasm'),
};

/** Each shipped file by its name in dist/. */
export async function shippedFiles() {
  const subsets = await Promise.all(Object.entries(fonts).map(async ([name, parts]) => [name, await subsetOf(parts)]));
  return new Map([...subsets, ...Object.entries(copied).map(([name, file]) => [name, readFileSync(file)])]);
}

export async function writeShippedFiles(folder) {
  for (const [name, bytes] of await shippedFiles()) writeFileSync(path.join(folder, name), bytes);
}
