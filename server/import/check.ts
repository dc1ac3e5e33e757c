import * as l10n from '@vscode/l10n';
import { type Context, readLine, startOfFile } from '../../grammar/sections.ts';
import type { Line, Problem } from '../../grammar/tree.ts';
import type { Part } from './notes.ts';

const below = (...lines: readonly string[]): Context =>
  lines.reduce((context, text) => readLine(text, context).next, startOfFile);

let contexts: Readonly<Record<Part, Context>> | null = null;

/** The context in which a line of a part is read; built when first asked for. */
function contextOf(part: Part): Context {
  contexts ??= {
    head: startOfFile,
    hole: below('hole'),
    strata: below('strata'),
    casing: below('casing 0 - 1'),
    drilling: below('drilling'),
    water: below('water'),
    test: below('test'),
    work: startOfFile,
    abandonment: below('abandonment'),
  };
  return contexts[part];
}

/** A line as the notation reads it in a part of a log. */
export const readIn = (part: Part, text: string): Line => readLine(text, contextOf(part)).line;

/** What is wrong with a line; a word that no list knows is kept and is nothing wrong. */
export const faultsOf = ({ problems }: Line): Problem[] => problems.filter(({ code }) => code !== 'unknown-term');

const codeWords: Readonly<Record<string, (written: string) => string>> = {
  'no-place': (written) => l10n.t('"{0}" has no place on this line', written),
  'wrong-kind': (written) => l10n.t('"{0}" is a value that this line does not take', written),
  'missing-depth': (written) => l10n.t('"{0}" lacks its depth', written),
  'unexpected-depth': (written) => l10n.t('"{0}" is a depth where none belongs', written),
};

const faultText = ({ code, written }: Problem): string =>
  codeWords[code]?.(written) ?? l10n.t('"{0}" is not read ({1})', written, code);

/** What is wrong with a line in words; null where nothing is. */
export function faultIn(part: Part, text: string): string | null {
  if (text.trim() === '') return null;
  const line = readIn(part, text);
  const [fault] = faultsOf(line);
  if (fault !== undefined) return faultText(fault);
  return line.row === null && !text.trimStart().startsWith('#') ? l10n.t('not a line of this part') : null;
}
