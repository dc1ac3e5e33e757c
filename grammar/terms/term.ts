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
  /** Materials only: what the ground is made of. */
  readonly ground?: GroundFacts;
}

/** What the record, the rules and the drawing need to know of a material. */
export interface GroundFacts {
  readonly class: 'soil' | 'fine' | 'coarse' | 'mixed' | 'organic' | 'fill' | 'sedimentary' | 'carbonate' | 'crystalline' | 'volcanic' | 'rock' | 'void';
  /** True for bedrock, false for unconsolidated ground. */
  readonly rock: boolean;
  /** Pattern number of FGDC-STD-013-2006, where one fits. */
  readonly fgdc: number | null;
  /** The adjective that makes it a secondary material ("silty"), where there is one. */
  readonly adjective?: string;
}

export interface TermList {
  readonly id: ListId;
  readonly title: string;
  readonly terms: readonly Term[];
}
