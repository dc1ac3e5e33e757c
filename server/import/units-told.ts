import type { DepthUnit, LayerValues } from './notes.ts';

const feet = `(?:ft|feet|foot|')`;
const metres = `(?:m|met(?:re|er)s?)`;

const sentence = new RegExp(
  String.raw`^(?:all )?(?:depths?|units?|measurements?|lengths?|figures)\b[a-z ]*?(?:[:=-]|\b(?:are|is|in|given|measured)\b)[ :=a-z]*?\b(?:(?<feet>${feet})|(?<metres>${metres}))(?:[ ,].{0,40})?\.?$`,
  'i',
);

/** A heading over depths: `Depth (m)   Description`. */
const heading = new RegExp(
  String.raw`\bdepths?\b[a-z ,]*[([](?:in )?(?:(?<feet>${feet})|(?<metres>${metres}))[)\]]`,
  'i',
);

/** The unit of depths where a line says nothing but that (`Depths in metres`); null where it does not. */
export function tellsUnits(text: string): DepthUnit | null {
  if (/\d/.test(text)) return null;
  const { feet: saysFeet, metres: saysMetres } = (sentence.exec(text) ?? heading.exec(text))?.groups ?? {};
  if (saysFeet !== undefined) return 'ft';
  return saysMetres === undefined ? null : 'm';
}

const inName = /(?:^|[\s_([,/-])(?:(?<feet>ft|feet|ft\.|')|(?<metres>m|met(?:re|er)s?|mbgl|mbgs))(?:$|[\s_)\],/.-])/i;

/** The unit that a column's name gives (`Depth (ft)`, `top_m`); null where it gives none. */
export function unitInName(name: string): DepthUnit | null {
  const { feet: saysFeet, metres: saysMetres } = inName.exec(name)?.groups ?? {};
  if (saysFeet !== undefined) return 'ft';
  return saysMetres === undefined ? null : 'm';
}

/** What the one figure of each layer is, where a heading says so (`Depth to bottom (ft): material`); null where it does not. */
export function tellsLayers(text: string): LayerValues | null {
  if (/\d/.test(text)) return null;
  if (/\bdepths? (?:to|of) (?:the )?(?:bottom|base)\b/i.test(text)) return 'bases';
  if (/\bdepths? (?:to|of) (?:the )?top\b/i.test(text)) return 'tops';
  return /\bthickness(?:es)?\b/i.test(text) ? 'thickness' : null;
}
