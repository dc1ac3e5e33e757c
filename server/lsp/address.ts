const decoded = (segment: string): string => {
  try {
    return decodeURIComponent(segment);
  } catch {
    return segment;
  }
};

/** One spelling of an address: editors differ in which characters they write as percent signs and digits. */
export function canonical(uri: string): string {
  const at = uri.indexOf(':');
  const rest = uri.slice(at + 1).split(/[?#]/)[0] ?? '';
  const segments = rest.split('/').map((segment) => encodeURIComponent(decoded(segment)));
  return `${uri.slice(0, at).toLowerCase()}:${segments.join('/')}`.replace(/\/+$/, '');
}

/** The folder that a canonical address stands in; null for the topmost. */
export function folderOf(uri: string): string | null {
  const at = uri.lastIndexOf('/');
  return at <= uri.indexOf('//') + 1 ? null : uri.slice(0, at);
}

export const inFolder = (folder: string, name: string): string => `${folder}/${encodeURIComponent(name)}`;

export const isWithin = (uri: string, folder: string): boolean => uri.startsWith(`${folder}/`);

/** The last part of an address, as a person writes it. */
export const fileName = (uri: string): string => decoded(uri.slice(uri.lastIndexOf('/') + 1));

/** A canonical address as it is called within a folder. */
export const nameWithin = (uri: string, folder: string): string =>
  uri
    .slice(folder.length + 1)
    .split('/')
    .map(decoded)
    .join('/');

/** The folders above a canonical address, the nearest first. */
export function foldersAbove(uri: string): readonly string[] {
  const folder = folderOf(uri);
  return folder === null ? [] : [folder, ...foldersAbove(folder)];
}
