import { randomBytes } from 'node:crypto';
import * as vscode from 'vscode';

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (mark) => escapes[mark] ?? mark);

/** The folder that a preview may load its script and its style sheet from, and nothing else. */
export const resourceRoot = (extension: vscode.Uri): vscode.Uri => vscode.Uri.joinPath(extension, 'dist');

/** What the page's own script says, with `{0}` for what it fills in. */
const spoken = (): Readonly<Record<string, string>> => ({
  'line-hint': vscode.l10n.t('Line {0}: click or press Enter to go there', '{0}'),
});

/** A button that shows a few words or a sign; a sign is read out as what it does. */
const button = (id: string, does: string, shown: string, more = ''): string => {
  const name = /[a-z0-9]/i.test(shown) ? '' : ` aria-label="${escapeHtml(does)}"`;
  return `<button type="button" id="${id}" title="${escapeHtml(does)}"${name}${more}>${escapeHtml(shown)}</button>`;
};

const toolbar =
  (): string => `<header id="toolbar"><div role="toolbar" aria-label="${escapeHtml(vscode.l10n.t('Preview'))}">
<span class="together">
${button('zoom-out', vscode.l10n.t('Make the drawing smaller'), '−')}
${button('zoom-fit', vscode.l10n.t('Fit the drawing into the width'), '100 %')}
${button('zoom-in', vscode.l10n.t('Make the drawing larger'), '+')}
</span>
<details id="columns"><summary>${escapeHtml(vscode.l10n.t('Columns'))}</summary>
<div id="column-list" role="group" aria-label="${escapeHtml(vscode.l10n.t('Columns of the drawing'))}"></div></details>
${button('tie', vscode.l10n.t('Scroll together with the text'), vscode.l10n.t('Scroll together'), ' aria-pressed="false"')}
${button('export', vscode.l10n.t('Print or export the record'), vscode.l10n.t('Print, export…'))}
</div></header>`;

const spokenAttributes = (): string =>
  Object.entries(spoken())
    .map(([name, text]) => ` data-${name}="${escapeHtml(text)}"`)
    .join('');

/** The empty page of a preview; what it shows is sent to it as messages. */
export function previewPage(webview: vscode.Webview, extension: vscode.Uri, document: vscode.Uri): string {
  const nonce = randomBytes(16).toString('base64');
  const resource = (name: string) => webview.asWebviewUri(vscode.Uri.joinPath(resourceRoot(extension), name));
  // Pictures are those that the page makes itself of a drawing that is to be saved.
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'; img-src blob:`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(vscode.l10n.t('Preview'))}</title>
<link rel="stylesheet" href="${resource('preview.css')}">
</head>
<body data-uri="${escapeHtml(document.toString())}"${spokenAttributes()}>
${toolbar()}
<p id="trouble" role="alert" hidden></p>
<p id="announcement" class="heard-only" role="status" aria-live="polite"></p>
<p id="part-hint" class="heard-only" hidden>${escapeHtml(vscode.l10n.t('Enter goes to its line in the text'))}</p>
<main id="body"></main>
<div id="tooltip" role="tooltip" hidden></div>
<script nonce="${nonce}" src="${resource('webview.js')}"></script>
</body>
</html>`;
}
