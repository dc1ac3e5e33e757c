import { type DocumentLink, DocumentLinkRequest, RequestType } from 'vscode-languageserver';
import { documentLinks, type Link } from '../features/document-links.ts';
import { packPage, rulePage } from '../features/page.ts';
import { canonical, folderOf } from './address.ts';
import { rangeOf } from './convert.ts';
import { pageAddress } from './page-address.ts';
import { type PageParams, pageRequest } from './protocol.ts';
import { onDocument, type Registration } from './registration.ts';
import type { Session } from './session.ts';

/** The address of a path that is written relative to a folder. */
function addressOf(folder: string, path: string): string {
  const parts = folder.split('/');
  for (const part of path.split(/[\\/]/)) {
    if (part === '..' && parts.length > 4) parts.pop();
    else if (part !== '.' && part !== '' && part !== '..') parts.push(encodeURIComponent(part));
  }
  return parts.join('/');
}

/** Where a link leads; null for a page that this editor does not show. */
function targetOf({ to, name }: Link, uri: string, session: Session): string | null {
  if (to === 'file') return addressOf(folderOf(canonical(uri)) ?? canonical(uri), name);
  const file = to === 'pack' ? session.folder.files.packFile(canonical(uri), name) : null;
  return file ?? (session.showsPages ? pageAddress(to, name) : null);
}

const page = new RequestType<PageParams, string | null, void>(pageRequest);

const answerPage: Registration = (connection, session) => {
  connection.onRequest(page, ({ kind, id }) => {
    try {
      return kind === 'rule' ? rulePage(id) : packPage(id);
    } catch (error) {
      session.fail(pageRequest, error);
      return null;
    }
  });
};

/** What leads out of a log, and the pages that it leads to. */
export const linkRequests: readonly Registration[] = [
  onDocument(DocumentLinkRequest.type, null, (snapshot, { textDocument: { uri } }, session) =>
    documentLinks(snapshot).flatMap((link): DocumentLink[] => {
      const target = targetOf(link, uri, session);
      return target === null ? [] : [{ range: rangeOf(link.span), target, tooltip: link.tooltip }];
    }),
  ),
  answerPage,
];
