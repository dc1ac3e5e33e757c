import * as l10n from '@vscode/l10n';
/** What a check noticed, as much of it as a question needs. */
export interface Asked {
  readonly message: string;
  readonly span: { readonly line: number; readonly start: number };
  /** The question that it means for the crew; null or left out where it means none. */
  readonly crew?: string | null;
}

/** Before the hole, down the hole, and after it. */
export const parts = ['well', 'hole', 'after'] as const;
export type Part = (typeof parts)[number];

const titles: Readonly<Record<Part, () => string>> = {
  well: () => l10n.t('The well'),
  hole: () => l10n.t('Down the hole'),
  after: () => l10n.t('Tests and finishing'),
};

export const partTitle = (part: Part): string => titles[part]();

export interface WrittenLine {
  /** From 0. */
  readonly line: number;
  readonly text: string;
}

/** One question for those who were at the well. */
export interface CrewQuestion {
  /** Place in the list, from 1. */
  readonly number: number;
  readonly part: Part;
  /** Metres below ground; null for what has no depth. */
  readonly depth: number | null;
  /** Such as `grout of casing 1, 0 – 7.2 m`. */
  readonly about: string;
  readonly written: WrittenLine;
  /** Lines that stand beside it: those above and below, the string that it belongs to. */
  readonly beside: readonly WrittenLine[];
  /** What is open or does not fit, in one or more sentences. */
  readonly says: string;
  readonly asks: string;
}
