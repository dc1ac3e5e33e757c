import { randomBytes } from 'node:crypto';
import * as vscode from 'vscode';

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (mark) => escapes[mark] ?? mark);

/** The folder that a page may load its script and its style sheet from, and nothing else. */
export const resourceRoot = (extension: vscode.Uri): vscode.Uri => vscode.Uri.joinPath(extension, 'dist');

/** What one page has of its own; attributes and body are HTML. */
export interface Frame {
  readonly title: string;
  readonly style: string;
  readonly script: string;
  /** Where pictures may come from, as the content security policy says it; null where the page has none. */
  readonly pictures: string | null;
  readonly attributes: string;
  readonly body: string;
}

function policyOf({ cspSource }: vscode.Webview, nonce: string, pictures: string | null): string {
  const own = `default-src 'none'; style-src ${cspSource}; script-src 'nonce-${nonce}'`;
  return pictures === null ? own : `${own}; img-src ${pictures}`;
}

/** An empty page of the extension, in the language of the editor; what it shows is sent to it as messages. */
export function webviewFrame(webview: vscode.Webview, extension: vscode.Uri, frame: Frame): string {
  const nonce = randomBytes(16).toString('base64');
  const resource = (name: string) => webview.asWebviewUri(vscode.Uri.joinPath(resourceRoot(extension), name));
  return `<!doctype html>
<html lang="${escapeHtml(vscode.env.language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf(webview, nonce, frame.pictures)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(frame.title)}</title>
<link rel="stylesheet" href="${resource(frame.style)}">
</head>
<body${frame.attributes}>
${frame.body}
<script nonce="${nonce}" src="${resource(frame.script)}"></script>
</body>
</html>`;
}
