import { shippedFiles } from '../../.config/shipped-files.mjs';

let files: Promise<Map<string, Uint8Array>> | null = null;

/** A file as the build ships it, made once a test run. */
export async function shippedFile(name: string): Promise<Uint8Array> {
  files ??= shippedFiles();
  const bytes = (await files).get(name);
  if (bytes === undefined) throw new Error(`nothing called ${name} is shipped`);
  return bytes;
}
