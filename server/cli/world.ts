/** What stands under a path. */
export type PathKind = 'file' | 'folder' | 'missing';

/** The outside world, as the commands see it. */
export interface World {
  /** Today as YYYY-MM-DD. */
  readonly today: string;
  /** True where the output is a terminal that shows colours. */
  readonly colour: boolean;
  readonly kindOf: (path: string) => Promise<PathKind>;
  /** Files that a pattern matches, sorted. */
  readonly matching: (pattern: string) => Promise<readonly string[]>;
  /** The `.well` files in a folder and the folders in it, sorted. */
  readonly logsIn: (folder: string) => Promise<readonly string[]>;
  /** Names of the files that stand in a folder itself, sorted; none where it cannot be read. */
  readonly namesIn: (folder: string) => Promise<readonly string[]>;
  /** Rejects with the system's own error. */
  readonly readFile: (path: string) => Promise<Uint8Array>;
  readonly readInput: () => Promise<Uint8Array>;
  /** A file shipped beside the program, such as a font. Rejects where there is none. */
  readonly asset: (name: string) => Promise<Uint8Array>;
  /** Makes a folder where there is none yet. Rejects with the system's own error. */
  readonly makeFolder: (path: string) => Promise<void>;
  /** Replaces a file as a whole or not at all. Rejects with the system's own error. */
  readonly writeFile: (path: string, bytes: Uint8Array) => Promise<void>;
  readonly print: (text: string | Uint8Array) => void;
  readonly complain: (text: string) => void;
}
