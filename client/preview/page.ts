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

/** The empty page of a preview; what it shows is sent to it as messages. */
export function previewPage(webview: vscode.Webview, extension: vscode.Uri, document: vscode.Uri): string {
  const nonce = randomBytes(16).toString('base64');
  const resource = (name: string) => webview.asWebviewUri(vscode.Uri.joinPath(resourceRoot(extension), name));
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${resource('preview.css')}">
</head>
<body data-uri="${escapeHtml(document.toString())}">
<p id="trouble" role="alert" hidden></p>
<p id="announcement" class="heard-only" role="status" aria-live="polite"></p>
<main id="body"></main>
<script nonce="${nonce}" src="${resource('webview.js')}"></script>
</body>
</html>`;
}
