import { plainCharacters } from '../../../grammar/characters.ts';

/** A figure however it is padded: `007` as `7`, `.3` as `0.3`, `5.` as `5`. */
const unpadded = (figure: string): string =>
  figure
    .replace(/^0+(?=\d)/, '')
    .replace(/^\./, '0.')
    .replace(/\.$/, '');

const figuresAndMarks = (text: string): string =>
  [...plainCharacters(text).matchAll(/\d+(?:\.\d*)?|\.\d+|[?~<>#]/g)]
    .map(([each]) => unpadded(each))
    .sort()
    .join(' ');

/** True where a line written anew has every figure and every mark of the typed one, and no other. */
export const keepsFigures = (typed: string, written: string): boolean =>
  figuresAndMarks(typed) === figuresAndMarks(written);
