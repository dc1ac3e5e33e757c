/** The lists of trade terms. A list is named by what its terms say of the thing described. */
export type ListId =
  | 'material'
  | 'colour'
  | 'shade'
  | 'amount'
  | 'consistency'
  | 'moisture'
  | 'grain-size'
  | 'grain-shape'
  | 'sorting'
  | 'fracturing'
  | 'weathering'
  | 'structure'
  | 'layer'
  | 'content'
  | 'degree'
  | 'formation'
  | 'class-symbol'
  | 'hole-method'
  | 'flush'
  | 'casing-material'
  | 'joint-type'
  | 'casing-state'
  | 'shoe-kind'
  | 'screen-kind'
  | 'fill-material'
  | 'placement'
  | 'packer-kind'
  | 'water-kind'
  | 'gas-kind'
  | 'flow-control'
  | 'test-method'
  | 'development-method'
  | 'disinfectant'
  | 'pump-kind'
  | 'cap-kind'
  | 'pitless-kind'
  | 'quality'
  | 'contaminant-source'
  | 'geodetic-datum'
  | 'extent'
  | 'weather'
  | 'use'
  | 'status';

/** One term of the trade. */
export interface Term {
  /** Kebab-case, unique within its list. */
  readonly id: string;
  /** The long form, as the formatter writes it, in lower case save for names. */
  readonly name: string;
  /** Accepted short forms and variant spellings, lower case, no full stops; a blank stands for a blank or a hyphen. */
  readonly short: readonly string[];
  /** What it means, one sentence. */
  readonly meaning: string;
  /** Where the term or its meaning comes from; "common practice, no source" where there is none. */
  readonly source: string;
  /** Materials and formations only: what the ground is made of. */
  readonly ground?: GroundFacts;
  /** Fill materials only: the family that rules and volumes go by. */
  readonly fill?: { readonly class: FillClass };
}

/** The families of what is put into an annulus or a hole. */
export type FillClass = 'cement' | 'bentonite-slurry' | 'bentonite-dry' | 'granular' | 'native' | 'concrete';

/** The families of ground; `unknown` where the log says that nothing was seen, or only points to the line above. */
export type GroundClass =
  | 'soil'
  | 'fine'
  | 'coarse'
  | 'mixed'
  | 'organic'
  | 'fill'
  | 'sedimentary'
  | 'carbonate'
  | 'crystalline'
  | 'volcanic'
  | 'rock'
  | 'void'
  | 'unknown';

/** What the record, the rules and the drawing need to know of a material. */
export interface GroundFacts {
  readonly class: GroundClass;
  /** True for bedrock, false for unconsolidated ground. */
  readonly rock: boolean;
  /** Pattern number of FGDC-STD-013-2006, where one fits. */
  readonly fgdc: number | null;
  /** The adjective that makes it a secondary material ("silty"), where there is one. */
  readonly adjective?: string;
  /** Short forms and variant spellings of the adjective. */
  readonly adjectiveShort?: readonly string[];
}

export interface TermList {
  readonly id: ListId;
  readonly title: string;
  readonly terms: readonly Term[];
}
