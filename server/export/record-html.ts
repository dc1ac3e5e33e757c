import { escapeText } from '../drawing/escape.ts';
import { type Noticed, previewBody } from '../drawing/preview.ts';
import { wellName } from '../drawing/title.ts';
import type { Record as WellRecord } from '../record/record.ts';

const style = `
:root { color: #1a1a1a; background: #fff; font: 10pt/1.4 Arial, Helvetica, "Liberation Sans", sans-serif; }
body { max-width: 190mm; margin: 0 auto; padding: 8mm; }
h1 { margin: 0; font-size: 20pt; }
h2 { margin: 7mm 0 2mm; font-size: 12.5pt; border-bottom: 0.4mm solid #1a1a1a; break-after: avoid; }
p { margin: 0.5mm 0; }
figure { margin: 0; }
svg { max-width: 100%; height: auto; }
table { margin: 0 0 4mm; border-collapse: collapse; }
caption { padding: 1mm 0; color: #5a5f63; text-align: left; }
th, td { padding: 0.7mm 5mm 0.7mm 0; border-bottom: 0.15mm solid #b4b9bd; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
thead th { font-size: 8.5pt; color: #5a5f63; }
tbody th { font-weight: normal; }
.number { text-align: right; font-variant-numeric: tabular-nums; overflow-wrap: normal; }
ul { margin: 0; padding-left: 5mm; }
td ul { list-style: none; padding: 0; color: #5a5f63; font-size: 8.5pt; }
.place, .waits { color: #5a5f63; font-size: 8.5pt; }
[data-severity="error"] .severity { color: #a3271b; }
[data-severity="warning"] .severity { color: #845100; }
[data-severity="information"] .severity { color: #1f5f96; }
.help { margin-bottom: 4mm; color: #5a5f63; }
@page { size: A4; margin: 14mm 12mm; }
@media print { body { max-width: none; padding: 0; } tr, li { break-inside: avoid; } thead { display: table-header-group; } [data-section="drawing"] { break-before: page; break-after: page; } }
`;

/* The page loads nothing and runs nothing, whatever the record says. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** The record as one HTML file: drawing, tables, figures, findings; no script, nothing from outside, made for A4 paper. */
export function recordHtml(record: WellRecord, findings: readonly Noticed[]): string {
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeText(`Record of ${wellName(record.log.header)}`)}</title>`,
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    '<main>',
    previewBody(record, findings, { theme: 'print' }),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
