export const stagedExtension: string;
export function stageExtension(): Promise<void>;
export function textsOfClient(bundle: Record<string, string>, files: readonly string[]): Record<string, string>;
