export function shippedFiles(): Promise<Map<string, Uint8Array>>;
export function writeShippedFiles(folder: string): Promise<void>;
