/** Input or arguments that cannot be used; the message says which, where and what to do. */
export class Unusable extends Error {}

const reasons: Readonly<{ [code: string]: string }> = {
  ENOENT: 'no such file or folder',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is not a folder',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
  ERR_FS_FILE_TOO_LARGE: 'larger than 2 GiB',
};

/** The system's error in plain words. */
export function reasonOf(error: unknown): string {
  const code = typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';
  if (Object.hasOwn(reasons, code)) return reasons[code] ?? code;
  return error instanceof Error ? error.message : String(error);
}
