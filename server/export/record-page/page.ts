import { escapeText } from '../../drawing/escape.ts';
import { pageStyle } from './style.ts';

/* The page loads nothing and runs nothing, whatever the record says. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** One HTML file around sections that are already safe: no script, nothing from outside, made for A4 paper. */
export const htmlPage = (title: string, sections: readonly string[]): string =>
  [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeText(title)}</title>`,
    `<style>${pageStyle}</style>`,
    '</head>',
    '<body>',
    '<main>',
    ...sections,
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
