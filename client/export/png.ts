import { Buffer } from 'node:buffer';
import * as vscode from 'vscode';
import type { Previews } from '../preview/previews.ts';
import { resourceRoot } from '../webview-frame.ts';
import { drawingSize, pictureSize, withFaces } from './picture-size.ts';

const faces = [
  { weight: 'normal', file: 'arimo-regular.ttf' },
  { weight: 'bold', file: 'arimo-bold.ttf' },
];

async function readFace(extension: vscode.Uri, { weight, file }: (typeof faces)[number]) {
  const bytes = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(resourceRoot(extension), file));
  return { weight, base64: Buffer.from(bytes).toString('base64') };
}

/** The drawing as PNG, made by the page of the log's preview, which is opened for it. Rejects where that fails. */
export async function pngOf(
  svg: string,
  uri: vscode.Uri,
  extension: vscode.Uri,
  previews: Previews,
): Promise<Uint8Array> {
  const size = drawingSize(svg);
  const embedded = await Promise.all(faces.map((face) => readFace(extension, face)));
  const drawing = size && { svg: withFaces(svg, embedded), ...pictureSize(size.widthMm, size.heightMm) };
  const png = drawing && (await previews.open(uri).picture(drawing));
  if (png) return png;
  throw new Error(vscode.l10n.t('the preview could not draw the picture'));
}
