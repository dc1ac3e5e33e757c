import * as vscode from 'vscode';
import { escapeHtml, webviewFrame } from '../webview-frame.ts';

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

/** The empty page of a preview; what it shows is sent to it as messages. The record itself is in English. */
export const previewPage = (webview: vscode.Webview, extension: vscode.Uri, document: vscode.Uri): string =>
  webviewFrame(webview, extension, {
    title: vscode.l10n.t('Preview'),
    style: 'preview.css',
    script: 'webview.js',
    // Those that the page makes itself of a drawing that is to be saved.
    pictures: 'blob:',
    attributes: ` data-uri="${escapeHtml(document.toString())}"${spokenAttributes()}`,
    body: `${toolbar()}
<p id="trouble" role="alert" hidden></p>
<p id="announcement" class="heard-only" role="status" aria-live="polite"></p>
<p id="part-hint" class="heard-only" hidden>${escapeHtml(vscode.l10n.t('Enter goes to its line in the text'))}</p>
<main id="body" lang="en"></main>
<div id="tooltip" role="tooltip" hidden></div>`,
  });
