import { randomBytes } from 'node:crypto';
import * as vscode from 'vscode';
import { resourceRoot } from '../preview/page.ts';
import type { Words } from '../webview/review-messages.ts';

/** The words that the page's script needs. */
export const reviewWords = (): Words => ({
  title: vscode.l10n.t('Review of field notes'),
  keys: vscode.l10n.t('Up and Down go from entry to entry; A accepts, R refuses, E edits, Escape leaves a line.'),
  original: vscode.l10n.t('Notes, line {0}', '{0}'),
  understood: vscode.l10n.t('Understood'),
  partly: vscode.l10n.t('In part'),
  not: vscode.l10n.t('Not understood'),
  accept: vscode.l10n.t('Accept'),
  refuse: vscode.l10n.t('Refuse'),
  addLine: vscode.l10n.t('Add a line'),
  part: vscode.l10n.t('Part of the log'),
  line: vscode.l10n.t('Line {0} of the log for this entry', '{0}'),
  acceptAll: vscode.l10n.t('Accept All Understood'),
  makeLog: vscode.l10n.t('Make a New Log'),
  insert: vscode.l10n.t('Insert at the Cursor'),
  commentOnly: vscode.l10n.t('A comment alone'),
  tally: vscode.l10n.t(
    '{0} accepted, {1} refused, {2} open. Open and refused entries stay comments.',
    '{0}',
    '{1}',
    '{2}',
  ),
});

export const reviewOptions = (extension: vscode.Uri): vscode.WebviewOptions & vscode.WebviewPanelOptions => ({
  enableScripts: true,
  localResourceRoots: [resourceRoot(extension)],
  retainContextWhenHidden: true,
});

/** The empty page; what it shows is sent to it as messages, and set as text. */
export function reviewPage(webview: vscode.Webview, extension: vscode.Uri): string {
  const nonce = randomBytes(16).toString('base64');
  const resource = (name: string) => webview.asWebviewUri(vscode.Uri.joinPath(resourceRoot(extension), name));
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Drillhand</title>
<link rel="stylesheet" href="${resource('review.css')}">
</head>
<body>
<main id="review">
<h1 id="title"></h1>
<p id="keys"></p>
<div id="actions" role="toolbar"></div>
<p id="tally" role="status" aria-live="polite"></p>
<p id="trouble" role="alert" hidden></p>
<ul id="file-notes"></ul>
<ol id="entries"></ol>
</main>
<script nonce="${nonce}" src="${resource('review.js')}"></script>
</body>
</html>`;
}
