import * as l10n from '@vscode/l10n';

type Bundle = Record<string, string>;

/** The texts that the editor is spoken to in; none for English. */
let spoken: Bundle = {};

const isBundle = (value: unknown): value is Bundle =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  Object.values(value).every((text) => typeof text === 'string');

const bundleIn = (options: unknown): unknown =>
  typeof options === 'object' && options !== null && 'l10n' in options ? (options.l10n ?? null) : null;

/**
 * Takes the texts of the editor's language, by their English, from the options that it begins with. Gives what is wrong
 * with them; an editor that sends none is spoken to in English, and so is one whose texts cannot be read.
 */
export function speakAs(options: unknown): string | null {
  const bundle = bundleIn(options);
  if (bundle === null) return null;
  if (!isBundle(bundle)) return 'the option l10n must give texts by their English; it was left out';
  spoken = bundle;
  l10n.config({ contents: spoken });
  return null;
}

/** Makes, in English whatever the editor speaks, what goes to others. What `make` waits for is not told in English. */
export function inEnglish<T>(make: () => T): T {
  l10n.config({ contents: {} });
  try {
    return make();
  } finally {
    l10n.config({ contents: spoken });
  }
}
