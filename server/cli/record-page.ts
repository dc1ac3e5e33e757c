import type { Snapshot } from '../analysis/snapshot.ts';
import { escapeText } from '../drawing/escape.ts';
import { previewBody } from '../drawing/index.ts';

const style = `
body { max-width: 60rem; margin: 2rem auto; padding: 0 1.5rem 3rem; color: #1a1a1a; background: #fff;
  font: 15px/1.45 Arial, Helvetica, "Liberation Sans", sans-serif; }
h1, h2, h3 { line-height: 1.25; }
h2 { margin: 2em 0 0.5em; font-size: 1.15em; }
table { border-collapse: collapse; }
caption { padding: 0.4em 0; color: #5a5f63; text-align: left; }
th, td { padding: 0.25em 0.9em 0.25em 0; border-bottom: 1px solid #b4b9bd; text-align: left; vertical-align: top; }
.number { font-variant-numeric: tabular-nums; text-align: right; }
svg { max-width: 100%; height: auto; }
section { overflow-x: auto; }
@media print { body { margin: 0; } section { break-inside: avoid-page; overflow: visible; } }
`;

/** A record as one page that stands alone: no script, nothing from outside. */
export function recordPage({ log, record, findings }: Snapshot): string {
  const title = escapeText(`Record of ${log.header.well?.text ?? 'a well without an id'}`);
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    `<main>${previewBody(record, findings, { theme: 'print' })}</main>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
