import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const read = (file: string): Record<string, string> =>
  JSON.parse(readFileSync(path.join(import.meta.dirname, '../../client/l10n', file), 'utf8'));

/** A text with a mark in place of what stands in it as code or as a command. */
const proseOf = (text: string): string => text.replace(/`[^`]*`|\(command:[^)]*\)/g, '…');

/* How French is set in Canada: a no-break space before a colon and within guillemets, none before ; and !. */
const slips: Readonly<Record<string, RegExp>> = {
  'a plain space before a colon or within guillemets': / :|« | »/,
  'a space before ; or !': /\s[;!]\s/,
  'a straight apostrophe': /\p{L}'\p{L}/u,
};

test.each(['bundle.l10n.fr.json', 'package.nls.fr.json'])('%s is set as French is in Canada', (file) => {
  const texts = Object.values(read(file)).map(proseOf);
  for (const [slip, form] of Object.entries(slips))
    expect(
      texts.filter((text) => form.test(text)),
      slip,
    ).toEqual([]);
});
