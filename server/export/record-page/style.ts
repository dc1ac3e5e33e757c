/** The look of the record page, on the screen at any width and on A4 paper. */
export const pageStyle = `
:root { color: #1a1a1a; background: #fff; font: 9.5pt/1.4 Arimo, Arial, Helvetica, "Liberation Sans", sans-serif; }
body { max-width: 190mm; margin: 0 auto; padding: 6mm; }
h1 { margin: 0; font-size: 20pt; line-height: 1.2; overflow-wrap: anywhere; }
h2 { margin: 7mm 0 2mm; font-size: 12pt; border-bottom: 0.4mm solid #1a1a1a; break-after: avoid; }
h3 { margin: 4mm 0 1mm; font-size: 10pt; break-after: avoid; }
p { margin: 0.5mm 0; }
figure { margin: 0; }
svg { display: block; max-width: 100%; height: auto; }
table { width: 100%; margin: 0 0 4mm; border-collapse: collapse; }
caption { padding: 1mm 0; color: #55595d; text-align: left; break-after: avoid; }
th, td { padding: 0.6mm 4mm 0.6mm 0; border-bottom: 0.15mm solid #b4b9bd; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
thead th { font-size: 8.5pt; color: #55595d; overflow-wrap: normal; }
tbody th { font-weight: normal; }
.number { font-variant-numeric: tabular-nums; }
ul { margin: 0; padding: 0; list-style: none; }
td ul, .other, .place, .waits { color: #55595d; font-size: 8.5pt; }
.number, .check { overflow-wrap: normal; }
.check { white-space: nowrap; }
.checks { columns: 2; margin-bottom: 2mm; font-size: 8.5pt; }
.checks .check { display: inline-block; min-width: 18mm; }
.findings li, .cautions li { margin: 0 0 1.5mm; padding-left: 3mm; border-left: 0.8mm solid #55595d; }
[data-severity="error"] { --severity: #a3271b; }
[data-severity="warning"] { --severity: #845100; }
[data-severity="information"] { --severity: #1f5f96; }
[data-severity="hint"] { --severity: #55595d; }
.findings li { border-color: var(--severity); }
.severity { color: var(--severity); }
.cautions li, .caution { border-color: #a3271b; }
td .caution { padding-left: 2mm; border-left: 0.6mm solid #a3271b; }
[data-check="finding"] .check { color: #a3271b; }
[data-check="doubtful"] .check, [data-check="waits"] .check { color: #845100; }
.facts { margin: 2mm 0 0; color: #55595d; }
.signature { display: flex; flex-wrap: wrap; gap: 4mm 8mm; margin: 8mm 0 0; break-inside: avoid; }
.signature .line { flex: 3 1 45mm; }
.signature .line:last-child { flex: 1 1 25mm; }
.line span { display: block; min-height: 1.4em; font-weight: normal; border-bottom: 0.25mm solid #1a1a1a; }
.line small { color: #55595d; }
.reckoning { font-size: 7.5pt; line-height: 1.3; }
.reckoning th:nth-child(1) { width: 20%; }
.reckoning th:nth-child(2) { width: 32%; }
.reckoning th:nth-child(3) { width: 24%; }
.questions { margin: 0; padding-left: 6mm; list-style: decimal; }
.questions li { margin: 0 0 3mm; }
.questions code { font-size: 8.5pt; }
.questions .answer { border-bottom: 0.2mm solid #1a1a1a; }
.answer { display: block; min-width: 30mm; height: 1.4em; }
.sheet + .sheet { margin-top: 4mm; }
@page { size: A4; margin: 14mm 12mm 16mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt Arimo, Arial, sans-serif; color: #55595d; } }
@page sheet { margin: 0; @bottom-right { content: none; } }
@media print {
  body { max-width: none; padding: 0; }
  tr, li, figure, table:not(:has(tbody tr:nth-child(15))) { break-inside: avoid; }
  thead { display: table-header-group; }
  [data-section="drawing"] h2 { display: none; }
  .sheet { page: sheet; break-before: page; break-after: page; }
  .sheet svg { max-height: 297mm; }
  .sheet + .sheet { margin-top: 0; }
  [data-section="reckoning"] { break-before: page; }
  [data-section="signatures"] { break-inside: avoid; }
}
@media screen and (max-width: 34rem) {
  table, tbody, tr, th, td, caption { display: block; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  tr { padding: 1.5mm 0; border-bottom: 0.2mm solid #b4b9bd; }
  th, td { padding: 0.3mm 0; border: 0; }
  tbody th { font-weight: bold; }
  td:empty { display: none; }
  td[data-label]::before { content: attr(data-label) ": "; color: #55595d; }
  .checks { columns: 1; }
}
`;
