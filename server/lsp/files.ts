export interface Entry {
  readonly name: string;
  readonly isFolder: boolean;
}

/** The files that a server can reach, by canonical address. Neither question ever rejects. */
export interface Files {
  /** What stands in a folder, sorted by name; nothing where it cannot be read. */
  readonly list: (folder: string) => Promise<readonly Entry[]>;
  /** The text of a file; null where it cannot be read. */
  readonly read: (uri: string) => Promise<string | null>;
}

/** A server that reaches no files knows the open logs alone. */
export const noFiles: Files = { list: async () => [], read: async () => null };
