/** Reads a file shipped beside the program, such as a font; rejects where there is none. */
export type Asset = (name: string) => Promise<Uint8Array>;
