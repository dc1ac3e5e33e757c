/** What an editor shows of its own accord beside the text, each of which a user may switch off. */
export interface Shows {
  readonly inlayHints: {
    readonly thickness: boolean;
    readonly units: boolean;
    readonly requiredVolume: boolean;
    readonly penetrationRate: boolean;
  };
  readonly codeLens: boolean;
}

export const showsAll: Shows = {
  inlayHints: { thickness: true, units: true, requiredVolume: true, penetrationRate: true },
  codeLens: true,
};
