import * as vscode from 'vscode';
import type { Words } from '../webview/review-messages.ts';
import { resourceRoot, webviewFrame } from '../webview-frame.ts';

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
export const reviewPage = (webview: vscode.Webview, extension: vscode.Uri): string =>
  webviewFrame(webview, extension, {
    title: vscode.l10n.t('Review of field notes'),
    style: 'review.css',
    script: 'review.js',
    pictures: null,
    attributes: '',
    body: `<main id="review">
<h1 id="title"></h1>
<p id="keys"></p>
<div id="actions" role="toolbar"></div>
<p id="tally" role="status" aria-live="polite"></p>
<p id="trouble" role="alert" hidden></p>
<ul id="file-notes"></ul>
<ol id="entries"></ol>
</main>`,
  });
